using CalcService.Api.Hosting;
using CalcService.Api.Problems;
using CalcService.Api.Writing;

namespace CalcService.Api.Calculations;

/// <summary>POST of a single calculation.</summary>
public static class CalculationEndpoint
{
    public const string MediaType = "application/json";

    public static Task HandleAsync(HttpContext http, ICapability capability, Readiness readiness)
    {
        var (full, problem) = RequestHead.ReadDetail(http.Request);
        problem ??= RequestHead.CheckAccept(http.Request, MediaType);
        return AnswerAsync(http, capability, full, problem, readiness, processed =>
        {
            using var answer = ShapeWriter.WriteAnswer(processed.Body);
            http.Response.ContentType = MediaType;
            return answer.Written.ToArray();
        });
    }

    /// <summary>Reads and computes a body, and sends what is written of the answer or the problem.</summary>
    public static async Task AnswerAsync(HttpContext http, ICapability capability, bool full, Problem? refused, Readiness readiness,
        Func<Processed, byte[]> write)
    {
        var conditions = http.RequestServices.GetRequiredService<WorkConditions>();
        using var held = conditions.Held.Open();
        var problem = readiness.ComputesRight ? refused ?? HttpBody.CheckHeaders(http.Request, MediaType) : ProblemKinds.Unavailable.With();
        byte[] answer = [];
        if (problem is null)
        {
            (answer, problem) = await ComputeAsync(http, capability, full, conditions, held, write);
        }

        if (problem is not null)
        {
            await ProblemWriter.WriteAsync(http, problem);
            return;
        }

        http.Response.ContentLength = answer.Length;
        var output = new AnswerOutput(http, conditions.Settings);
        await output.WriteAsync(answer);
        await output.SendAsync();
    }

    /// <summary>The lane is left with the bytes of the answer: what it was made from is much larger, and is no longer needed.</summary>
    private static async Task<(byte[] Answer, Problem? Problem)> ComputeAsync(HttpContext http, ICapability capability, bool full,
        WorkConditions conditions, HeldShare held, Func<Processed, byte[]> write)
    {
        using var time = CancellationTokenSource.CreateLinkedTokenSource(http.RequestAborted, conditions.Drain.Over);
        time.CancelAfter(conditions.Settings.Time(ServiceSettings.BodySeconds));
        var (body, problem) = await HttpBody.ReadAsync(http.Request, capability.BodyBytes, held, time.Token);
        if (problem is not null)
        {
            return ([], problem);
        }

        time.CancelAfter(conditions.Settings.Time(ServiceSettings.CalculationSeconds));
        using var lane = await conditions.Lanes.EnterSingleAsync(body.Length > HeldShare.FreeBytes, time.Token);
        if (lane is null)
        {
            return ([], ProblemKinds.Unavailable.With(
                "As many calculations as this instance takes at once are in work; send the request again as Retry-After says."));
        }

        var processed = conditions.Measurements.ProcessSingle(capability, body.Span, full, time.Token);
        if (processed.Body is Problem refused)
        {
            return ([], refused);
        }

        var answer = write(processed);
        return held.TryHold(body.Length + answer.Length) ? (answer, null) : ([], HttpBody.NoRoom());
    }
}
