namespace CalcService.Engine.Compounds;

/// <summary>Turns seconds from mixing into moments at the offset of the mix.</summary>
internal static class CureClock
{
    /// <summary>
    /// A millisecond past a minute is that minute: what the rounding of doubles adds to a time is no reason for a minute more.
    /// </summary>
    private static readonly TimeSpan Grain = TimeSpan.FromMilliseconds(1);

    /// <summary>To the second.</summary>
    public static DateTimeOffset At(DateTimeOffset mixedAt, double seconds) => mixedAt.AddSeconds(Math.Round(seconds));

    /// <summary>Up to the whole minute: nothing that is allowed from then on is allowed a second too early.</summary>
    public static DateTimeOffset From(DateTimeOffset mixedAt, double seconds)
    {
        var exact = mixedAt.AddSeconds(seconds) - Grain;
        var over = exact.Ticks % TimeSpan.TicksPerMinute;
        return over == 0 ? exact : exact.AddTicks(TimeSpan.TicksPerMinute - over);
    }
}
