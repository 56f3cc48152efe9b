using System.Buffers;
using System.Text.Json;
using CalcService.Api.Calculations;
using CalcService.Api.Canonical;
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

    /// <summary>So much is gathered before it is sent, unless the service has to wait for the client.</summary>
    private const int FlushBytes = 64 << 10;

    // The serializer checks what it writes itself.
    private static readonly JsonWriterOptions WriterOptions = new() { Encoder = ApiJson.Options.Encoder, SkipValidation = true };

    public static async Task HandleAsync(HttpContext http, ICapability capability, Readiness readiness, IHostApplicationLifetime lifetime)
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

        using var stopping = CancellationTokenSource.CreateLinkedTokenSource(http.RequestAborted, lifetime.ApplicationStopping);
        var stream = HttpBody.Open(http.Request);
        await using (stream == http.Request.Body ? null : stream)
        {
            await using var head = new HeadStream(stream);
            var unreadable = await ReadHeadAsync(head, stopping.Token);
            if (unreadable is not null)
            {
                await ProblemWriter.WriteAsync(http, unreadable);
                return;
            }

            http.Response.ContentType = MediaType;
            http.Response.Headers[ModeHeader] = head.IsWhole ? "buffered" : "streaming";
            await WriteLinesAsync(http, capability, full, head, stopping.Token);
        }
    }

    private static async Task<Problem?> ReadHeadAsync(HeadStream head, CancellationToken cancellationToken)
    {
        try
        {
            await head.ReadHeadAsync(Limits.BufferedBatchBytes, cancellationToken);
            return null;
        }
        catch (Exception failure) when (HttpBody.IsBadEncoding(failure))
        {
            return BadEncoding();
        }
    }

    private static async Task WriteLinesAsync(HttpContext http, ICapability capability, bool full, Stream input, CancellationToken stopping)
    {
        long lines = 0, answered = 0;
        using var reader = new LineReader(input, Limits.LineBytes, Limits.BatchLines, beforeRead: () => FlushAsync(http, 1));
        Problem? aborted = null;
        try
        {
            while (true)
            {
                (var line, aborted) = await NextAsync(reader, stopping);
                if (line is not { } next)
                {
                    break;
                }

                var processed = Process(next, capability, full, stopping);
                lines++;
                answered += processed.Status == 200 ? 1 : 0;
                Write(http, new BatchLine
                {
                    Line = next.Number,
                    Id = processed.Reference,
                    Status = processed.Status,
                    Answer = processed.Status == 200 ? processed.Body : null,
                    Problem = processed.Body as Problem,
                });
                await FlushAsync(http, FlushBytes);
            }
        }
        catch (OperationCanceledException) when (!http.RequestAborted.IsCancellationRequested)
        {
            aborted = ProblemKinds.Unavailable.With("The service is stopping; send the batch again.");
        }

        object end = aborted is null
            ? new BatchEnd { Summary = new() { Lines = lines, Answered = answered, Rejected = lines - answered, InputDigest = Digest.Of(reader.Digest) } }
            : new BatchAborted { Aborted = aborted };
        Write(http, end);
        await FlushAsync(http, 1);
    }

    /// <summary>The next line, or why there is none before the end.</summary>
    private static async ValueTask<(Line? Line, Problem? Aborted)> NextAsync(LineReader reader, CancellationToken cancellationToken)
    {
        try
        {
            var line = await reader.NextAsync(cancellationToken);
            return (line, reader.HasMore ? ProblemKinds.TooLarge.With($"More than {Limits.BatchLines} lines.") : null);
        }
        catch (Exception failure) when (HttpBody.IsBadEncoding(failure))
        {
            return (null, BadEncoding());
        }
    }

    private static Processed Process(Line line, ICapability capability, bool full, CancellationToken cancellationToken)
    {
        if (line.IsTooLong)
        {
            return new(413, ProblemKinds.TooLarge.With($"The line is longer than {Limits.LineBytes} bytes."), null);
        }

        return capability.Process(line.Bytes.Span, full, cancellationToken);
    }

    private static Problem BadEncoding() => ProblemKinds.Unreadable.With("The body is not what its Content-Encoding says.");

    private static void Write(HttpContext http, object line)
    {
        var output = http.Response.BodyWriter;
        using (var json = new Utf8JsonWriter(output, WriterOptions))
        {
            JsonSerializer.Serialize(json, line, line.GetType(), ApiJson.Options);
        }

        output.Write("\n"u8);
    }

    /// <summary>Sends what is gathered where it is at least so much. Nothing sent leaves room for a problem instead.</summary>
    private static async ValueTask FlushAsync(HttpContext http, long least)
    {
        if (http.Response.BodyWriter.UnflushedBytes >= least)
        {
            await http.Response.BodyWriter.FlushAsync(http.RequestAborted);
        }
    }
}
