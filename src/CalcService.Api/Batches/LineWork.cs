using System.Buffers;
using System.Diagnostics;
using System.Text.Json;
using CalcService.Api.Calculations;
using CalcService.Api.Hosting;
using CalcService.Api.Problems;

namespace CalcService.Api.Batches;

/// <summary>
/// One line in work, from its bytes to what is written for it, beside the reading and writing of others. Its buffers
/// are used again for a later line, so a batch of any length takes the same memory.
/// </summary>
internal sealed class LineWork(ICapability capability, bool full, BatchTime batch, WorkConditions conditions, ILogger logger) : IDisposable
{
    // The serializer checks what it writes itself.
    private static readonly JsonWriterOptions WriterOptions = new() { Encoder = ApiJson.Options.Encoder, SkipValidation = true };

    private readonly ArrayBufferWriter<byte> _input = new();
    private readonly HeldShare _held = conditions.Held.Open();
    private ArrayBufferWriter<byte> _output = new();
    private Task<Processed> _done = Task.FromResult<Processed>(default);

    /// <summary>Number of the line.</summary>
    public long Number { get; private set; }

    /// <summary>What is written, once it is done.</summary>
    public ReadOnlyMemory<byte> Output => _output.WrittenMemory;

    /// <summary>Bytes that are done and wait to be written.</summary>
    public int Held => _done.IsCompleted ? _output.WrittenCount : 0;

    /// <summary>Takes the bytes of a line and starts on them.</summary>
    public void Start(Line line, CancellationToken stopping)
    {
        _input.ResetWrittenCount();
        _output.ResetWrittenCount();
        if (!line.IsTooLong)
        {
            _input.Write(line.Bytes.Span);
        }

        Number = line.Number;
        var (number, isTooLong) = (line.Number, line.IsTooLong);
        _done = Task.Run(() => WorkAsync(number, isTooLong, stopping), CancellationToken.None);
    }

    /// <summary>What came of the line.</summary>
    public Task<Processed> DoneAsync() => _done;

    /// <summary>Lets go of what has been written; a buffer that a large line took isn't kept for the small ones.</summary>
    public void LetGo()
    {
        _held.Dispose();
        if (_output.Capacity > HeldShare.FreeBytes)
        {
            _output = new();
        }
    }

    public void Dispose() => _held.Dispose();

    /// <summary>Writes one object as a line.</summary>
    public static void Write(IBufferWriter<byte> output, object line)
    {
        using (var json = new Utf8JsonWriter(output, WriterOptions))
        {
            JsonSerializer.Serialize(json, line, line.GetType(), ApiJson.Options);
        }

        output.Write("\n"u8);
    }

    private async Task<Processed> WorkAsync(long number, bool isTooLong, CancellationToken stopping)
    {
        using var lane = await conditions.Lanes.EnterLineAsync(stopping);
        var begun = Stopwatch.GetTimestamp();
        var processed = isTooLong
            ? new(413, ProblemKinds.TooLarge.With($"The line is longer than {Limits.LineBytes} bytes."), null)
            : Process(stopping);
        Write(number, processed);
        if (!_held.TryHold(_output.WrittenCount))
        {
            processed = new(503, HttpBody.NoRoom(), processed.Reference);
            _output = new();
            Write(number, processed);
        }

        batch.AddWork(Stopwatch.GetElapsedTime(begun));
        return processed;
    }

    private void Write(long number, Processed processed) => Write(_output, new BatchLine
    {
        Line = number,
        Id = processed.Reference,
        Status = processed.Status,
        Answer = processed.Status == 200 ? processed.Body : null,
        Problem = processed.Body as Problem,
    });

#pragma warning disable CA1031 // As on the error path: what fails in one line is that line's 500.
    private Processed Process(CancellationToken stopping)
    {
        using var time = CancellationTokenSource.CreateLinkedTokenSource(stopping);
        time.CancelAfter(conditions.Settings.Time(ServiceSettings.CalculationSeconds));
        try
        {
            return conditions.Measurements.Process(capability, _input.WrittenSpan, full, time.Token);
        }
        catch (Exception failure) when (failure is OutOfMemoryException
            || (failure is OperationCanceledException && !stopping.IsCancellationRequested))
        {
            return new(503, ProblemKinds.Unavailable.With(), null);
        }
        catch (Exception failure) when (failure is not OperationCanceledException)
        {
            ErrorPath.LogFailure(logger, failure);
            return new(500, ProblemKinds.Internal.With(), null);
        }
    }
#pragma warning restore CA1031
}
