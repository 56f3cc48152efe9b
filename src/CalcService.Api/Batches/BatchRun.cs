using System.Buffers;
using System.IO.Pipelines;
using CalcService.Api.Calculations;
using CalcService.Api.Hosting;
using CalcService.Api.Problems;
using CalcService.Api.Telemetry;
using CalcService.Api.Writing;

namespace CalcService.Api.Batches;

/// <summary>
/// The lines of a batch, several in work at once and written in order. Only so many are begun ahead of the one to be
/// written next, so a client that reads slowly slows the work and nothing piles up.
/// </summary>
internal sealed class BatchRun : IDisposable
{
    /// <summary>So much is gathered before it is sent, unless the service has to wait for the client.</summary>
    private const int FlushBytes = 64 << 10;

    private static readonly int LinesAhead = 4 * Environment.ProcessorCount;

    private readonly HttpContext _http;
    private readonly string _operation;
    private readonly Measurements _measurements;
    private readonly LineReader _reader;
    private readonly CancellationTokenSource _stopping;
    private readonly Stack<LineWork> _free;
    private readonly Queue<LineWork> _begun = new(LinesAhead);
    private readonly ISummaryCollector? _collector;
    private long _lines;
    private long _answered;

    public BatchRun(HttpContext http, ICapability capability, bool full, Stream input, WorkConditions conditions, ILogger logger)
    {
        _http = http;
        _collector = capability.NewCollector();
        _operation = capability.Operation;
        _measurements = conditions.Measurements;
        _reader = new LineReader(input, Limits.LineBytes, Limits.BatchLines);
        _stopping = CancellationTokenSource.CreateLinkedTokenSource(http.RequestAborted, conditions.Drain.Over);
        _free = new(Enumerable.Range(0, LinesAhead).Select(_ => new LineWork(capability, full, conditions, logger)));
    }

    private PipeWriter Output => _http.Response.BodyWriter;

    /// <summary>Writes the whole answer, with the summary or without.</summary>
    public async Task WriteAsync()
    {
        Problem? aborted;
        try
        {
            aborted = await WriteLinesAsync();
        }
        catch (OperationCanceledException) when (!_http.RequestAborted.IsCancellationRequested)
        {
            aborted = ProblemKinds.Unavailable.With("The service is stopping; send the batch again.");
        }
        finally
        {
            await EndBegunAsync();
        }

        LineWork.Write(Output, aborted is null
            ? new BatchEnd { Summary = new() { Lines = _lines, Answered = _answered, Rejected = _lines - _answered,
            InputDigest = Digest.Of(_reader.Digest), Statistics = _collector?.Result() } }
            : new BatchAborted { Aborted = aborted });
        await FlushAsync(1);
    }

    public void Dispose()
    {
        _reader.Dispose();
        _stopping.Dispose();
    }

    /// <summary>Writes a line for each, and gives why that ended before the end.</summary>
    private async Task<Problem?> WriteLinesAsync()
    {
        while (true)
        {
            if (_free.Count == 0)
            {
                await WriteNextAsync();
            }

            var (line, aborted) = await ReadAsync();
            if (line is { } next)
            {
                var work = _free.Pop();
                _begun.Enqueue(work);
                work.Start(next, _stopping.Token);
                continue;
            }

            while (_begun.Count > 0)
            {
                await WriteNextAsync();
            }

            return aborted;
        }
    }

    /// <summary>The next line, or why there is none before the end. While the client is waited for, it gets what is done.</summary>
    private async ValueTask<(Line? Line, Problem? Aborted)> ReadAsync()
    {
        var reading = NextAsync();
        if (reading.IsCompleted)
        {
            return await reading;
        }

        var pending = reading.AsTask();
        try
        {
            while (_begun.Count > 0 && !pending.IsCompleted)
            {
                await WriteNextAsync();
            }

            if (!pending.IsCompleted)
            {
                await FlushAsync(1);
            }
        }
        catch
        {
            // The reader may not be let go while it still reads.
            await _stopping.CancelAsync();
            await ((Task)pending).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
            throw;
        }

        return await pending;
    }

    private async ValueTask<(Line? Line, Problem? Aborted)> NextAsync()
    {
        try
        {
            var line = await _reader.NextAsync(_stopping.Token);
            return (line, _reader.HasMore ? ProblemKinds.TooLarge.With($"More than {Limits.BatchLines} lines.") : null);
        }
        catch (Exception failure) when (HttpBody.IsBadEncoding(failure))
        {
            return (null, HttpBody.BadEncoding());
        }
        catch (BadHttpRequestException refused) when (!_http.RequestAborted.IsCancellationRequested)
        {
            return (null, ProblemKinds.ForStatus(refused.StatusCode).With());
        }
    }

    private async Task WriteNextAsync()
    {
        var work = _begun.Peek();
        var processed = await work.DoneAsync();
        _lines++;
        _answered += processed.Status == 200 ? 1 : 0;
        _collector?.Add(work.Number, processed);
        _measurements.CountLine(_operation, processed.Status);
        Output.Write(work.Output);
        _free.Push(_begun.Dequeue());
        await FlushAsync(FlushBytes);
    }

    /// <summary>Sends what is gathered where it is at least so much. Nothing sent leaves room for a problem instead.</summary>
    private async ValueTask FlushAsync(long least)
    {
        if (Output.UnflushedBytes >= least)
        {
            await Output.FlushAsync(_http.RequestAborted);
        }
    }

    /// <summary>Where the batch is given up, what is begun is not left behind.</summary>
    private async Task EndBegunAsync()
    {
        if (_begun.Count > 0)
        {
            await _stopping.CancelAsync();
        }

        foreach (var work in _begun)
        {
            await ((Task)work.DoneAsync()).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        }
    }
}
