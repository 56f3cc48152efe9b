namespace CalcService.Engine.Pouring;

/// <summary>Times of the day from computed durations.</summary>
internal static class ClockTime
{
    /// <summary>So long after; null where that isn't known or lies beyond the calendar, as gel times with a slope past all sense may say.</summary>
    public static DateTimeOffset? After(DateTimeOffset at, double? seconds) =>
        seconds < (DateTime.MaxValue - at.DateTime).TotalSeconds && seconds < (DateTimeOffset.MaxValue - at).TotalSeconds ? at.AddSeconds(seconds.Value) : null;
}
