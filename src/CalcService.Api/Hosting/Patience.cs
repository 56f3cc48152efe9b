namespace CalcService.Api.Hosting;

/// <summary>
/// How long a client is waited for: so many seconds in all, and what moves wins time back, up to as many. So a client that stops is
/// let go after that time however quick it was before, one that is slower than the least rate a little later, and a quick one never.
/// </summary>
public sealed class Patience(ServiceSettings settings)
{
    private readonly TimeSpan _most = settings.Time(ServiceSettings.WaitSeconds);
    private readonly int _leastRate = settings.Value(ServiceSettings.BytesPerSecond);
    private TimeSpan _left = settings.Time(ServiceSettings.WaitSeconds);

    /// <summary>Waits for the client.</summary>
    /// <exception cref="TimeoutException">It has been waited for long enough.</exception>
    public async Task<T> WaitAsync<T>(Task<T> client)
    {
        var begun = TimeProvider.System.GetTimestamp();
        try
        {
            return await client.WaitAsync(_left);
        }
        finally
        {
            var left = _left - TimeProvider.System.GetElapsedTime(begun);
            _left = left > TimeSpan.Zero ? left : TimeSpan.Zero;
        }
    }

    /// <summary>So many bytes have moved.</summary>
    public void Moved(long bytes)
    {
        var left = _left + TimeSpan.FromSeconds((double)bytes / _leastRate);
        _left = left < _most ? left : _most;
    }
}
