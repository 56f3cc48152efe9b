using System.Diagnostics;
using System.Diagnostics.Metrics;
using System.Text.Json;
using CalcService.Api.Calculations;
using CalcService.Api.Problems;
using CalcService.Engine.Findings;

namespace CalcService.Api.Telemetry;

/// <summary>What the service measures of its own work. Where nobody listens, it asks once whether anybody does and no more.</summary>
public sealed class Measurements : IDisposable
{
    /// <summary>Name of the meter and of the source of activities.</summary>
    public const string Name = "CalcService";

    public const string Duration = "calcservice.calculation.duration";
    public const string Lines = "calcservice.batch.lines";
    public const string OperationTag = "calcservice.operation";
    public const string DecisionTag = "calcservice.decision";
    public const string StatusTag = "http.response.status_code";
    public const string ErrorTag = "error.type";

    private static readonly string[] Decisions = [.. Enum.GetNames<Decision>().Select(JsonNamingPolicy.CamelCase.ConvertName)];

    private readonly ActivitySource _source = new(Name);
    private readonly Histogram<double> _duration;
    private readonly Counter<long> _lines;

    public Measurements(IMeterFactory meters)
    {
        // The factory of the host owns the meter and lets it go.
        var meter = meters.Create(Name);
        _duration = meter.CreateHistogram(Duration, "s", "Time to read, check and compute one request or line, without waiting for a turn.",
            tags: null,
            new InstrumentAdvice<double> { HistogramBucketBoundaries = Buckets.Calculation });
        _lines = meter.CreateCounter<long>(Lines, "{line}", "Lines of batches that have been answered or refused.");
    }

    /// <summary>A line of a batch: measured, and without an activity, since a batch has up to a million of them.</summary>
    public Processed Process(ICapability capability, ReadOnlySpan<byte> body, bool full, CancellationToken cancellationToken)
    {
        if (!_duration.Enabled)
        {
            return capability.Process(body, full, cancellationToken);
        }

        var begun = Stopwatch.GetTimestamp();
        try
        {
            var processed = capability.Process(body, full, cancellationToken);
            _duration.Record(Stopwatch.GetElapsedTime(begun).TotalSeconds, new(OperationTag, capability.Operation), Ended(processed));
            return processed;
        }
        catch (Exception failure)
        {
            _duration.Record(Stopwatch.GetElapsedTime(begun).TotalSeconds, new(OperationTag, capability.Operation),
                new(ErrorTag, failure.GetType().FullName));
            throw;
        }
    }

    /// <summary>A single calculation: measured, with an activity inside the request's own.</summary>
    public Processed ProcessSingle(ICapability capability, ReadOnlySpan<byte> body, bool full, CancellationToken cancellationToken)
    {
        using var activity = _source.HasListeners() ? _source.StartActivity($"calculate {capability.Operation}") : null;
        if (activity is null)
        {
            return Process(capability, body, full, cancellationToken);
        }

        activity.SetTag(OperationTag, capability.Operation);
        try
        {
            var processed = Process(capability, body, full, cancellationToken);
            var (tag, value) = Ended(processed);
            activity.SetTag(tag, value);
            return processed;
        }
        catch (Exception failure)
        {
            activity.SetTag(ErrorTag, failure.GetType().FullName).SetStatus(ActivityStatusCode.Error);
            throw;
        }
    }

    /// <summary>A line has been written.</summary>
    public void CountLine(string operation, int status)
    {
        if (_lines.Enabled)
        {
            _lines.Add(1, new(OperationTag, operation), new(StatusTag, status));
        }
    }

    public void Dispose() => _source.Dispose();

    /// <summary>The decision of an answer, or the code of a problem.</summary>
    private static KeyValuePair<string, object?> Ended(Processed processed) => processed.Decision is { } decision
        ? new(DecisionTag, Decisions[(int)decision])
        : new(ErrorTag, (processed.Body as Problem)?.Code);
}
