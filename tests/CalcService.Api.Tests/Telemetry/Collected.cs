using System.Collections.Concurrent;
using System.Diagnostics;
using System.Diagnostics.Metrics;
using CalcService.Api.Tests.Fixtures;
using Microsoft.Extensions.DependencyInjection;

namespace CalcService.Api.Tests.Telemetry;

/// <summary>One measurement with its tags.</summary>
public sealed record Measured(string Instrument, double Value, IReadOnlyDictionary<string, object?> Tags);

/// <summary>Listens to the meter of one service and to activities, as an exporter would.</summary>
public sealed class Collected : IDisposable
{
    private readonly MeterListener _meters = new();
    private readonly ActivityListener _activities;

    public Collected(Service service)
    {
        var factory = service.Services.GetRequiredService<IMeterFactory>();
        _meters.InstrumentPublished = (instrument, listener) =>
        {
            // Other tests run their own services beside this one.
            if (instrument.Meter.Name == Api.Telemetry.Measurements.Name && instrument.Meter.Scope == factory)
            {
                listener.EnableMeasurementEvents(instrument);
            }
        };
        _meters.SetMeasurementEventCallback<double>((instrument, value, tags, _) => Add(instrument, value, tags));
        _meters.SetMeasurementEventCallback<long>((instrument, value, tags, _) => Add(instrument, value, tags));
        _meters.Start();
        _activities = new()
        {
            ShouldListenTo = source => source.Name == Api.Telemetry.Measurements.Name,
            Sample = (ref _) => ActivitySamplingResult.AllDataAndRecorded,
            ActivityStopped = Activities.Enqueue,
        };
        ActivitySource.AddActivityListener(_activities);
    }

    public ConcurrentQueue<Measured> Measurements { get; } = new();

    public ConcurrentQueue<Activity> Activities { get; } = new();

    public void Dispose()
    {
        _meters.Dispose();
        _activities.Dispose();
    }

    private void Add(Instrument instrument, double value, ReadOnlySpan<KeyValuePair<string, object?>> tags) =>
        Measurements.Enqueue(new(instrument.Name, value, tags.ToArray().ToDictionary()));
}
