namespace CalcService.Engine.Compounds;

/// <summary>
/// The steel as it was read: a reading holds until a newer one; a series is straight between its points, however far apart they are.
/// </summary>
/// <param name="Kelvins">Temperatures, the last one held to the end of what is known of the air.</param>
/// <param name="LastReadS">When the steel was last read.</param>
public sealed record SteelHistory(TemperatureHistory Kelvins, double LastReadS)
{
    /// <param name="steelK">Steel at the start.</param>
    /// <param name="later">Readings after it, rising times in seconds from the start.</param>
    /// <param name="endS">How far the air is known.</param>
    public static SteelHistory Of(double steelK, IReadOnlyList<(double Seconds, double Kelvins)> later, double endS)
    {
        (double Seconds, double Kelvins)[] read = [(0, steelK), .. later.Where(one => one.Seconds > 0)];
        var (lastS, lastK) = read[^1];
        double[] held = endS > lastS || read.Length == 1 ? [Math.Max(endS, lastS)] : [];
        return new(new([.. read.Select(one => one.Seconds), .. held], [.. read.Select(one => one.Kelvins), .. held.Select(_ => lastK)]),
            lastS);
    }

    /// <summary>Warmest reading.</summary>
    public double WarmestK => Kelvins.Kelvins.ToArray().Max();

    /// <summary>From a later pour on, counted from it.</summary>
    public SteelHistory Since(double seconds) => new(Kelvins.Since(seconds), LastReadS - seconds);
}
