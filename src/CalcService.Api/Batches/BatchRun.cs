using CalcService.Api.Calculations;
using CalcService.Api.Hosting;
using CalcService.Api.Problems;
using CalcService.Api.Writing;

namespace CalcService.Api.Batches;

/// <summary>
/// The lines of a batch, several in work at once and written in order. Only so many are begun ahead of the one to be
/// written next, so a client that reads slowly slows the work and nothing piles up.
/// </summary>
internal sealed class BatchRun(
    HttpContext http, ICapability capability, bool full, Stream input, BatchTime time, WorkConditions conditions, ILogger logger)
    : IDisposable
{
    /// <summary>So much may wait to be written while more is begun.</summary>
    private const int BytesAhead = 4 << 20;

    private static readonly int LinesAhead = 4 * Environment.ProcessorCount;

    private readonly LineReader _reader = new(input, Limits.LineBytes, Limits.BatchLines);
    private readonly Patience _patience = new(conditions.Settings);
    private readonly AnswerOutput _output = new(http, conditions.Settings);
    private readonly Queue<LineWork> _begun = new(LinesAhead);
    private readonly Stack<LineWork> _free =
        new(Enumerable.Range(0, LinesAhead).Select(_ => new LineWork(capability, full, time, conditions, logger)));

    private readonly ISummaryCollector? _collector = capability.NewCollector();
    private long _lines;
    private long _answered;

    /// <summary>Writes the whole answer, with the summary or without.</summary>
    public async Task WriteAsync()
    {
        Problem? aborted;
        try
        {
            aborted = await WriteLinesAsync();
        }
        catch (OperationCanceledException) when (!http.RequestAborted.IsCancellationRequested)
        {
            aborted = time.Problem;
        }
        finally
        {
            await EndBegunAsync();
        }

        LineWork.Write(http.Response.BodyWriter, aborted is null
            ? new BatchEnd { Summary = new() { Lines = _lines, Answered = _answered, Rejected = _lines - _answered,
            InputDigest = Digest.Of(_reader.Digest), Statistics = _collector?.Result() } }
            : new BatchAborted { Aborted = aborted });
        await _output.SendAsync();
    }

    public void Dispose()
    {
        _reader.Dispose();
        _begun.Concat(_free).ToList().ForEach(work => work.Dispose());
    }

    /// <summary>Writes a line for each, and gives why that ended before the end.</summary>
    private async Task<Problem?> WriteLinesAsync()
    {
        while (true)
        {
            while (_free.Count == 0 || _begun.Sum(work => (long)work.Held) > BytesAhead)
            {
                await WriteNextAsync();
            }

            var (line, aborted) = await ReadAsync();
            if (line is { } next)
            {
                var work = _free.Pop();
                _begun.Enqueue(work);
                work.Start(next, time.Over.Token);
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
                await _output.SendAsync();
            }

            return await _patience.WaitAsync(pending);
        }
        catch (Exception failure)
        {
            // The reader may not be let go while it still reads.
            await time.Over.CancelAsync();
            await ((Task)pending).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
            if (failure is not TimeoutException)
            {
                throw;
            }

            return (null, ProblemKinds.RequestTimeout.With());
        }
    }

    private async ValueTask<(Line? Line, Problem? Aborted)> NextAsync()
    {
        try
        {
            var line = await _reader.NextAsync(time.Over.Token);
            _patience.Moved(line?.Bytes.Length ?? 0);
            return (line, _reader.HasMore ? ProblemKinds.TooLarge.With($"More than {Limits.BatchLines} lines.") : null);
        }
        catch (Exception failure) when (HttpBody.IsBadEncoding(failure))
        {
            return (null, HttpBody.BadEncoding());
        }
        catch (BadHttpRequestException refused) when (!http.RequestAborted.IsCancellationRequested)
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
        conditions.Measurements.CountLine(capability.Operation, processed.Status);
        await _output.WriteAsync(work.Output);
        _free.Push(_begun.Dequeue());
        work.LetGo();
    }

    /// <summary>Where the batch is given up, what is begun is not left behind.</summary>
    private async Task EndBegunAsync()
    {
        if (_begun.Count > 0)
        {
            await time.Over.CancelAsync();
        }

        foreach (var work in _begun)
        {
            await ((Task)work.DoneAsync()).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        }
    }
}
