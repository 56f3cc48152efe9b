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
        using var time = new BatchTime(http, conditions);
        using var held = conditions.Held.Open();
        await using var bytes = new SentBytes(http.Request);
        await using var sent = new HeadStream(bytes, held);
        problem = await ReadHeadAsync(http, sent, new(conditions.Settings), time);
        using var place = problem is null ? conditions.Lanes.TryEnterBatch() : null;
        if (place is null)
        {
            await ProblemWriter.WriteAsync(http, problem ?? ProblemKinds.Unavailable.With(
                "As many batches as this instance takes at once are in work; send it again as Retry-After says."));
            return;
        }

        http.Response.ContentType = MediaType;
        http.Response.Headers[ModeHeader] = sent.IsWhole ? "buffered" : "streaming";
        var logger = http.RequestServices.GetRequiredService<ILoggerFactory>().CreateLogger(typeof(BatchEndpoint));
        await using var input = HttpBody.Decode(http.Request, sent);
        using var run = new BatchRun(http, capability, full, new DecodedStream(input, sent), time, conditions, logger);
        await run.WriteAsync();
    }

    private static async Task<Problem?> ReadHeadAsync(HttpContext http, HeadStream sent, Patience patience, BatchTime time)
    {
        try
        {
            return await sent.ReadHeadAsync(Limits.BufferedBatchBytes, patience, time.Over)
                ?? await CheckEncodingAsync(http, sent, time.Over.Token);
        }
        catch (OperationCanceledException) when (!http.RequestAborted.IsCancellationRequested)
        {
            return time.Problem;
        }
    }

    /// <summary>
    /// Decodes the beginning once for nothing: what isn't packed as it says is refused before an answer begins, not within it.
    /// </summary>
    private static async Task<Problem?> CheckEncodingAsync(HttpContext http, HeadStream sent, CancellationToken cancellationToken)
    {
        try
        {
            await using var decoded = HttpBody.Decode(http.Request, sent);
            if (decoded == sent)
            {
                return null;
            }

            var piece = new byte[64 << 10];
            for (int left = sent.IsWhole ? Limits.BufferedBatchBytes : 1, read = 1; left > 0 && read > 0; left -= read)
            {
                read = await decoded.ReadAsync(piece, cancellationToken);
            }

            sent.Rewind();
            return null;
        }
        catch (Exception failure) when (HttpBody.IsBadEncoding(failure))
        {
            return HttpBody.BadEncoding();
        }
    }
}
