using CalcService.Api.Calculations;
using CalcService.Api.Hosting;
using CalcService.Api.Problems;

namespace CalcService.Api.Batches;

/// <summary>
/// POST of many requests, one a line; one line of output for each, in order, then a summary. A batch that ends without
/// its summary proves nothing.
/// </summary>
public static class BatchEndpoint
{
    public const string MediaType = "application/x-ndjson";

    /// <summary>Tells the client that it must read while it sends.</summary>
    public const string ModeHeader = "Batch-Mode";

    public static async Task HandleAsync(HttpContext http, ICapability capability, Readiness readiness)
    {
        var (full, problem) = RequestHead.ReadDetail(http.Request);
        problem ??= RequestHead.CheckAccept(http.Request, MediaType) ?? HttpBody.CheckHeaders(http.Request, MediaType);
        if (!readiness.ComputesRight)
        {
            problem = ProblemKinds.Unavailable.With();
        }

        if (problem is not null)
        {
            await ProblemWriter.WriteAsync(http, problem);
            return;
        }

        var conditions = http.RequestServices.GetRequiredService<WorkConditions>();
        await using var stream = HttpBody.Open(http.Request);
        await using var head = new HeadStream(stream);
        var unreadable = await ReadHeadAsync(http, head, conditions.Drain.Over);
        if (unreadable is not null)
        {
            await ProblemWriter.WriteAsync(http, unreadable);
            return;
        }

        http.Response.ContentType = MediaType;
        http.Response.Headers[ModeHeader] = head.IsWhole ? "buffered" : "streaming";
        var logger = http.RequestServices.GetRequiredService<ILoggerFactory>().CreateLogger(typeof(BatchEndpoint));
        using var run = new BatchRun(http, capability, full, head, conditions, logger);
        await run.WriteAsync();
    }

    private static async Task<Problem?> ReadHeadAsync(HttpContext http, HeadStream head, CancellationToken stopping)
    {
        using var given = CancellationTokenSource.CreateLinkedTokenSource(http.RequestAborted, stopping);
        try
        {
            await head.ReadHeadAsync(Limits.BufferedBatchBytes, given.Token);
            return null;
        }
        catch (Exception failure) when (HttpBody.IsBadEncoding(failure))
        {
            return HttpBody.BadEncoding();
        }
    }
}
