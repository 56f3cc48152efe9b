using CalcService.Engine.Findings;

namespace CalcService.Engine.Compounds;

/// <summary>
/// Readings beyond one end of a range: too cold is one fact and too warm another, however many of them there are.
/// </summary>
/// <param name="Farthest">The one that lies farthest out.</param>
/// <param name="EdgeK">The end of the range that it lies beyond.</param>
/// <param name="Others">Members of the others.</param>
internal sealed record OutsideRange(Reading Farthest, double EdgeK, IReadOnlyList<string> Others)
{
    /// <summary>Those that are too cold and those that are too warm, where there are any.</summary>
    public static IEnumerable<OutsideRange> Of(IReadOnlyList<Reading> readings, TemperatureRange range)
    {
        if (Beyond(readings, reading => Judged.IsBelow(reading.K, range.MinimumK), reading => reading.K, range.MinimumK) is { } cold)
        {
            yield return cold;
        }

        if (Beyond(readings, reading => Judged.IsAbove(reading.K, range.MaximumK), reading => -reading.K, range.MaximumK) is { } warm)
        {
            yield return warm;
        }
    }

    private static OutsideRange? Beyond(IReadOnlyList<Reading> readings, Func<Reading, bool> isBeyond, Func<Reading, double> order, double edgeK)
    {
        var beyond = readings.Where(isBeyond).OrderBy(order).ToArray();
        return beyond.Length == 0 ? null : new(beyond[0], edgeK, [.. beyond.Skip(1).Select(reading => reading.Pointer)]);
    }
}
