using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Curing;

/// <summary>
/// What a gel that somebody saw says about the lot: how much slower it is than its sheet. Lots spread around the sheet and eyes
/// around the gel, so the factor is the mean of a normal posterior on its logarithm. A cup warms itself and never re-fits a cone; a gel of which
/// nobody says where it was seen could be a cup's, so it can only make the times later.
/// </summary>
internal sealed class ObservedGel
{
    private readonly Dictionary<string, (double Ratio, double Seconds, GelPlace Place)> _byEnd;

    private ObservedGel(Dictionary<string, (double Ratio, double Seconds, GelPlace Place)> byEnd, double slower) => (_byEnd, Slower) = (byEnd, slower);

    /// <summary>How much longer every gel time of the lot is than the sheet's.</summary>
    public double Slower { get; }

    /// <param name="scope">The schedule.</param>
    /// <param name="ageAt">Age at which a gel was seen, by the sheet's expected times: 1 where it gelled as expected, null where that isn't known.</param>
    /// <param name="expectedS">Expected gel of an end by the sheet.</param>
    public static ObservedGel Read(CureScope scope, Func<GelObservation, double, double?> ageAt, Func<string, double?> expectedS)
    {
        var byEnd = new Dictionary<string, (double Ratio, double Seconds, GelPlace Place)>(StringComparer.Ordinal);
        var (spread, error) = (scope.Rules.LotSpread.Si, scope.Rules.ObservationSpread.Si);
        var (family, sum, count) = (GelFamily.Of(scope.Rules), 0.0, 0);
        for (var i = 0; i < scope.Input.Observations.Count; i++)
        {
            var observation = scope.Input.Observations[i];
            var pointer = $"{CurePointers.Observations}/{i}";
            var seconds = (observation.GelAt - scope.Input.MixedAt).TotalSeconds;
            if (observation.SeenIn == GelPlace.Cup)
            {
                scope.Find(CompoundFindings.GelSeenInCup, pointer + "/seenIn", related: [pointer + "/gelAt"]);
                continue;
            }

            if (observation.SeenIn == GelPlace.Unknown)
            {
                scope.Find(CompoundFindings.GelPlaceUnknown, pointer + "/seenIn", related: [pointer + "/gelAt"]);
            }

            if (ageAt(observation, seconds) is not { } ratio)
            {
                continue;
            }

            if (expectedS(observation.End) is { } expected && !family.Contains(Math.Log(ratio)))
            {
                scope.Find(CompoundFindings.GelOutOfFamily, pointer + "/gelAt", Measure.Duration(seconds), Measure.Duration(expected),
                    [$"{CurePointers.GelTimes}"], words: new FindingWord("end", observation.End));
            }

            if (observation.SeenIn == GelPlace.Unknown && ratio < 1)
            {
                continue;
            }

            byEnd[observation.End] = (ratio, seconds, observation.SeenIn);
            sum += Math.Log(ratio);
            count++;
        }

        return new(byEnd, count == 0 ? 1 : GelPosterior.Factor(sum / count, count, spread, error, scope.Trace));
    }

    /// <summary>The factor for an end: that of the lot, or its own where its own gel came later still.</summary>
    public double SlowerFor(string end) => _byEnd.TryGetValue(end, out var seen) ? Math.Max(Slower, seen.Ratio) : Slower;

    /// <summary>Seconds from mixing at which the end was seen gelled, and where; null where nobody saw it.</summary>
    public (double Seconds, GelPlace Place)? Of(string end) => _byEnd.TryGetValue(end, out var seen) ? (seen.Seconds, seen.Place) : null;
}
