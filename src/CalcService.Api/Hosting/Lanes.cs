namespace CalcService.Api.Hosting;

/// <summary>
/// As many calculations at once as there are cores, in the order in which they came: batches and single requests take
/// turns, and threads are left for probes however much is asked for.
/// </summary>
public sealed class Lanes : IDisposable
{
    private readonly SemaphoreSlim _free = new(Environment.ProcessorCount);

    /// <summary>Waits for a lane; it is free again when what is returned is disposed.</summary>
    public async ValueTask<Lane> EnterAsync(CancellationToken cancellationToken)
    {
        await _free.WaitAsync(cancellationToken);
        return new(_free);
    }

    public void Dispose() => _free.Dispose();
}

/// <summary>A lane that is taken until it is disposed, once.</summary>
public readonly record struct Lane(SemaphoreSlim Free) : IDisposable
{
    public void Dispose() => Free.Release();
}
