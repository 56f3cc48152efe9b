namespace CalcService.Api.Hosting;

/// <summary>
/// Who is in work. Lines of batches compute on as many lanes as there are cores, single requests have one more: however much batches
/// ask for, a single request finds a lane as soon as no other single request needs it. Large ones, which take much memory, go one after
/// the other, so ordinary ones don't wait for them either. Each kind goes in the order in which it came; beyond so many of a kind the
/// next is told to come back, rather than wait in a line that it can't see.
/// </summary>
public sealed class Lanes(ServiceSettings settings) : IDisposable
{
    private readonly SemaphoreSlim _all = new(Environment.ProcessorCount + 1);
    private readonly SemaphoreSlim _lines = new(Environment.ProcessorCount);
    private readonly SemaphoreSlim _large = new(1);
    private readonly SemaphoreSlim _singles = new(settings.Value(ServiceSettings.Requests));
    private readonly SemaphoreSlim _batches = new(settings.Value(ServiceSettings.Batches));

    /// <summary>Waits for the lane of a single request whose body is there; null where too many wait or compute already.</summary>
    public async ValueTask<Lane?> EnterSingleAsync(bool isLarge, CancellationToken cancellationToken)
    {
        if (Lane.TryTake(_singles) is not { } lane)
        {
            return null;
        }

        if (isLarge)
        {
            await lane.TakeAsync(_large, cancellationToken);
        }

        return await lane.TakeAsync(_all, cancellationToken);
    }

    /// <summary>Waits for the lane of a line of a batch, or of a page: neither is in the way of single requests.</summary>
    public async ValueTask<Lane> EnterLineAsync(CancellationToken cancellationToken)
    {
        var lane = await new Lane().TakeAsync(_lines, cancellationToken);
        return await lane.TakeAsync(_all, cancellationToken);
    }

    /// <summary>The place of a batch whose body, or the head of it, is there; null where too many are in work already.</summary>
    public Lane? TryEnterBatch() => Lane.TryTake(_batches);

    public void Dispose()
    {
        _all.Dispose();
        _lines.Dispose();
        _large.Dispose();
        _singles.Dispose();
        _batches.Dispose();
    }
}

/// <summary>The places that one has taken, until it is disposed, once.</summary>
public sealed class Lane : IDisposable
{
    private readonly Stack<SemaphoreSlim> _taken = new(3);

    internal static Lane? TryTake(SemaphoreSlim place)
    {
        if (!place.Wait(0, CancellationToken.None))
        {
            return null;
        }

        var lane = new Lane();
        lane._taken.Push(place);
        return lane;
    }

    /// <summary>Waits for one place more; where that is given up, the others are left.</summary>
    internal async ValueTask<Lane> TakeAsync(SemaphoreSlim place, CancellationToken cancellationToken)
    {
        try
        {
            await place.WaitAsync(cancellationToken);
            _taken.Push(place);
            return this;
        }
        catch
        {
            Dispose();
            throw;
        }
    }

    public void Dispose()
    {
        while (_taken.TryPop(out var place))
        {
            place.Release();
        }
    }
}
