using CalcService.Api.Hosting;
using CalcService.Api.Problems;
using CalcService.Api.Writing;

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

        using var answer = ShapeWriter.WriteAnswer(processed.Body);
        http.Response.ContentType = MediaType;
        http.Response.ContentLength = answer.Written.Length;
        await http.Response.Body.WriteAsync(answer.Written, http.RequestAborted);
    }

    /// <summary>Reads and computes a body; null where the problem has been written instead.</summary>
    public static async Task<Processed?> ProcessAsync(HttpContext http, ICapability capability, bool full, Problem? refused,
        Readiness readiness)
    {
        var problem = readiness.ComputesRight ? refused ?? HttpBody.CheckHeaders(http.Request, MediaType) : ProblemKinds.Unavailable.With();
        if (problem is null)
        {
            var work = http.RequestServices.GetRequiredService<WorkConditions>();
            using var time = CancellationTokenSource.CreateLinkedTokenSource(http.RequestAborted, work.Drain.Over);
            time.CancelAfter(work.Settings.Time(ServiceSettings.BodySeconds));
            (var body, problem) = await HttpBody.ReadAsync(http.Request, capability.BodyBytes, time.Token);
            if (problem is null)
            {
                time.CancelAfter(work.Settings.Time(ServiceSettings.CalculationSeconds));
                using var lane = await work.Lanes.EnterAsync(time.Token);
                var processed = work.Measurements.ProcessSingle(capability, body, full, time.Token);
                problem = processed.Body as Problem;
                if (problem is null)
                {
                    return processed;
                }
            }
        }

        await ProblemWriter.WriteAsync(http, problem);
        return null;
    }
}
