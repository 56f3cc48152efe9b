using System.Text.Json;
using CalcService.Api.Hosting;
using CalcService.Api.Problems;

namespace CalcService.Api.Calculations;

/// <summary>POST of a single calculation.</summary>
public static class CalculationEndpoint
{
    public const string MediaType = "application/json";

    public static async Task HandleAsync(HttpContext http, ICapability capability, Readiness readiness)
    {
        var (full, problem) = RequestHead.ReadDetail(http.Request);
        problem ??= RequestHead.CheckAccept(http.Request, MediaType);
        if (await ProcessAsync(http, capability, full, problem, readiness) is not { } processed)
        {
            return;
        }

        var answer = JsonSerializer.SerializeToUtf8Bytes(processed.Body, capability.AnswerType, ApiJson.Options);
        http.Response.ContentType = MediaType;
        http.Response.ContentLength = answer.Length;
        await http.Response.Body.WriteAsync(answer, http.RequestAborted);
    }

    /// <summary>Reads and computes a body; null where the problem has been written instead.</summary>
    public static async Task<Processed?> ProcessAsync(HttpContext http, ICapability capability, bool full, Problem? refused, Readiness readiness)
    {
        var problem = readiness.IsReady ? refused ?? HttpBody.CheckHeaders(http.Request, MediaType) : ProblemKinds.Unavailable.With();
        byte[] body = [];
        if (problem is null)
        {
            (body, problem) = await HttpBody.ReadAsync(http.Request, Limits.BodyBytes, http.RequestAborted);
        }

        if (problem is null)
        {
            using var time = CancellationTokenSource.CreateLinkedTokenSource(http.RequestAborted);
            time.CancelAfter(http.RequestServices.GetRequiredService<CalculationTime>().Longest);
            var processed = capability.Process(body, full, time.Token);
            problem = processed.Body as Problem;
            if (problem is null)
            {
                return processed;
            }
        }

        await ProblemWriter.WriteAsync(http, problem);
        return null;
    }
}
