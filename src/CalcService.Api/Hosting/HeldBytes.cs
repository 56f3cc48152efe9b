namespace CalcService.Api.Hosting;

/// <summary>
/// Bytes of bodies and answers that the instance holds for its clients. Who needs more than there is room for is told to come
/// back, before memory runs out. The first of each are free, so that an ordinary request is never refused because others are large.
/// </summary>
public sealed class HeldBytes(ServiceSettings settings)
{
    private long _room = (long)settings.Value(ServiceSettings.HeldMiB) << 20;

    /// <summary>The share of one request or line.</summary>
    public HeldShare Open() => new(this);

    internal bool TryTake(long bytes)
    {
        if (Interlocked.Add(ref _room, -bytes) >= 0)
        {
            return true;
        }

        Return(bytes);
        return false;
    }

    internal void Return(long bytes) => Interlocked.Add(ref _room, bytes);
}

/// <summary>What one request or line holds, until it is disposed or lets go of it.</summary>
public sealed class HeldShare(HeldBytes held) : IDisposable
{
    /// <summary>So much of each is free.</summary>
    public const int FreeBytes = 64 << 10;

    private long _taken;

    /// <summary>Holds so many bytes in all from now on; false where there is no room for what they are more.</summary>
    public bool TryHold(long bytes)
    {
        var more = Math.Max(0, bytes - FreeBytes) - _taken;
        if (more > 0 && !held.TryTake(more))
        {
            return false;
        }

        _taken += Math.Max(0, more);
        return true;
    }

    /// <summary>Lets go of all of it.</summary>
    public void Dispose()
    {
        held.Return(_taken);
        _taken = 0;
    }
}
