namespace CalcService.Api.Hosting;

/// <summary>
/// How an instance stops. It is unready at once but goes on taking requests for a moment, since whoever sends them hears
/// of it late; then no more come in, and what is in work has so long to end.
/// </summary>
public sealed class Drain(ServiceSettings settings, TimeProvider clock) : IHostedLifecycleService, IDisposable
{
    /// <summary>For what was given up to say so.</summary>
    private static readonly TimeSpan LastWords = TimeSpan.FromSeconds(5);

    private readonly CancellationTokenSource _over = new();
    private volatile bool _hasBegun;

    /// <summary>Whether the instance was told to stop.</summary>
    public bool HasBegun => _hasBegun;

    /// <summary>Cancelled when the time for what is in work has run out.</summary>
    public CancellationToken Over => _over.Token;

    /// <summary>Longest time from the signal to the end of the process.</summary>
    public static TimeSpan Longest(ServiceSettings settings) =>
        settings.Time(ServiceSettings.UnreadySeconds) + settings.Time(ServiceSettings.DrainSeconds) + LastWords;

    public async Task StoppingAsync(CancellationToken cancellationToken)
    {
        _hasBegun = true;
        var unready = settings.Time(ServiceSettings.UnreadySeconds);
        _over.CancelAfter(unready + settings.Time(ServiceSettings.DrainSeconds));
        await Task.Delay(unready, clock, cancellationToken);
    }

    public Task StartingAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public Task StartAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public Task StartedAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public Task StoppedAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public void Dispose() => _over.Dispose();
}
