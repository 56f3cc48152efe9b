using System.Globalization;

namespace CalcService.Engine.Pouring;

/// <summary>Times that follow from others.</summary>
internal static class Instants
{
    private const double Day = 86400;

    /// <summary>
    /// So many seconds later; null where that is unknown, or beyond the calendar: gel times with a slope past all sense may say so.
    /// </summary>
    public static DateTimeOffset? After(DateTimeOffset? at, double? seconds) =>
        at is { } start && seconds is { } later
            && later + Day < (DateTime.MaxValue - start.DateTime).TotalSeconds
            && later + Day < (DateTimeOffset.MaxValue - start).TotalSeconds
            ? start.AddSeconds(later) : null;

    /// <summary>The next whole minute: nothing is let go before its time.</summary>
    public static DateTimeOffset? UpToTheMinute(DateTimeOffset? at) =>
        at is { } exact && exact.Ticks % TimeSpan.TicksPerMinute is > 0 and var past ? exact.AddTicks(TimeSpan.TicksPerMinute - past) : at;

    /// <summary>A time as the crew reads it.</summary>
    public static string Clock(DateTimeOffset? at) => at?.ToString("HH:mm", CultureInfo.InvariantCulture) ?? "a time that is not known";
}
