using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Releases;

namespace CalcService.Engine.Curing;

/// <summary>The gels that somebody saw: what they are to the law of release, and what has to be said about them.</summary>
internal static class ObservedGels
{
    /// <summary>Those of an end.</summary>
    public static IReadOnlyList<SeenGel> Of(CureScope scope, string end) =>
        [.. scope.Input.Observations.Where(observation => observation.End == end).Select(observation => Seen(scope, observation))];

    /// <param name="scope">The schedule.</param>
    /// <param name="earliestS">Earliest gel of an end by its model.</param>
    /// <param name="ageSeen">Age along its coldest temperatures at which a gel of an end was seen.</param>
    /// <param name="expectedS">Expected gel of an end.</param>
    public static void Check(CureScope scope, Func<int, double?> earliestS, Func<int, SeenGel, double?> ageSeen,
        Func<int, double?> expectedS)
    {
        for (var i = 0; i < scope.Input.Observations.Count; i++)
        {
            var (observation, pointer) = (scope.Input.Observations[i], $"{CurePointers.Observations}/{i}");
            var gel = Seen(scope, observation);
            var index = scope.Input.Ends.Select((end, at) => (end, at)).First(pair => pair.end.Id == observation.End).at;
            scope.CheckGelPlace(gel.Place, pointer + "/seenIn", pointer + "/gelAt");
            if (gel.Place != GelPlace.Cup && scope.Input.PourTimeS is { } pour
                && Judged.Duration(gel.Seconds, pour) is { IsBelow: true } sooner)
            {
                scope.Find(CompoundFindings.GelBeforePourEnds, pointer + "/gelAt", sooner, [CurePointers.PourTime]);
            }

            if (!gel.IsOfMix && ageSeen(index, gel) is { } age
                && !GelFamily.Of(scope.Rules).Holds(gel.Seconds, gel.StillSoftS is not null, age, earliestS(index)))
            {
                scope.Find(CompoundFindings.GelOutOfFamily, pointer + "/gelAt", new(Measure.Duration(gel.Seconds),
                    expectedS(index) is { } expected ? Limit.Of(Measure.Duration(expected)) : null), [CurePointers.GelTimes],
                        words: new FindingWord("end", observation.End));
            }
        }
    }

    private static SeenGel Seen(CureScope scope, GelObservation observation) => new((observation.GelAt - scope.Input.MixedAt).TotalSeconds,
        observation.StillSoftAt is { } soft ? (soft - scope.Input.MixedAt).TotalSeconds : null, observation.SeenIn);
}
