using System.Globalization;

namespace CalcService.Engine.Proof;

/// <summary>Times as a person compares them: a minute that has to be waited for is never printed as one that has come.</summary>
public static class TestTimes
{
    private const string Written = "yyyy-MM-dd HH:mm:ss zzz";

    /// <summary>When something happens, to the second before.</summary>
    public static string At(DateTimeOffset time) => Text(time.AddTicks(-(time.Ticks % TimeSpan.TicksPerSecond)));

    /// <summary>From when on it is allowed, to the second after, by the clock of the other.</summary>
    public static string NotBefore(DateTimeOffset time, TimeSpan offset)
    {
        var beyond = time.Ticks % TimeSpan.TicksPerSecond;
        return Text(time.AddTicks(beyond == 0 ? 0 : TimeSpan.TicksPerSecond - beyond).ToOffset(offset));
    }

    private static string Text(DateTimeOffset time) => time.ToString(Written, CultureInfo.InvariantCulture);
}
