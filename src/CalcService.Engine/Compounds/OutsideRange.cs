using CalcService.Engine.Findings;

namespace CalcService.Engine.Compounds;

/// <summary>
/// Readings beyond one end of a range: too cold is one fact and too warm another, however many of them there are.
/// </summary>
/// <param name="Farthest">The one that lies farthest out.</param>
/// <param name="Judged">It against the end of the range that it lies beyond.</param>
/// <param name="Others">Members of the others.</param>
internal sealed record OutsideRange(Reading Farthest, Judged Judged, IReadOnlyList<string> Others)
{
    /// <summary>Those that are too cold and those that are too warm, where there are any.</summary>
    public static IEnumerable<OutsideRange> Of(IReadOnlyList<Reading> readings, TemperatureRange range)
    {
        if (Beyond(readings.OrderBy(reading => reading.K), range.MinimumK, edge => edge.IsBelow) is { } cold)
        {
            yield return cold;
        }

        if (Beyond(readings.OrderByDescending(reading => reading.K), range.MaximumK, edge => edge.IsAbove) is { } warm)
        {
            yield return warm;
        }
    }

    private static OutsideRange? Beyond(IEnumerable<Reading> farthestFirst, double edgeK, Func<Judged, bool> isBeyond)
    {
        var beyond = farthestFirst.Where(reading => isBeyond(Judged.Temperature(reading.K, edgeK))).ToArray();
        return beyond.Length == 0 ? null : new(beyond[0], Judged.Temperature(beyond[0].K, edgeK),
            [.. beyond.Skip(1).Select(reading => reading.Pointer)]);
    }
}
