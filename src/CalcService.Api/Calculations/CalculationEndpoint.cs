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
        problem ??= RequestHead.CheckAccept(http.Request, MediaType) ?? HttpBody.CheckHeaders(http.Request, MediaType);
        if (!readiness.IsReady)
        {
            problem = ProblemKinds.Unavailable.With();
        }

        if (problem is not null)
        {
            await ProblemWriter.WriteAsync(http, problem);
            return;
        }

        var (body, unread) = await HttpBody.ReadAsync(http.Request, Limits.BodyBytes, http.RequestAborted);
        if (unread is not null)
        {
            await ProblemWriter.WriteAsync(http, unread);
            return;
        }

        using var time = CancellationTokenSource.CreateLinkedTokenSource(http.RequestAborted);
        time.CancelAfter(Limits.CalculationTime);
        var processed = capability.Process(body, full, time.Token);
        if (processed.Body is Problem refused)
        {
            await ProblemWriter.WriteAsync(http, refused);
            return;
        }

        var answer = JsonSerializer.SerializeToUtf8Bytes(processed.Body, capability.AnswerType, ApiJson.Options);
        http.Response.ContentType = MediaType;
        http.Response.ContentLength = answer.Length;
        await http.Response.Body.WriteAsync(answer, http.RequestAborted);
    }
}
