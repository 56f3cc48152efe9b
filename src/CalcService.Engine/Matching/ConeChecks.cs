using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Matching;

/// <summary>What the load transfer is worth knowing for.</summary>
internal static class ConeChecks
{
    /// <summary>
    /// The loads that the end is meant for. At the rope's breaking force the confined compound yields at nearly every lip.
    /// </summary>
    private static readonly Dictionary<string, string> Meant = new(StringComparer.Ordinal)
    {
        ["workingLoad"] = "working load", ["proofLoad"] = "proof load",
    };

    public static void Check(MatchScope scope, ConeTransfer transfer)
    {
        // The higher of the two says it: it is one fact.
        var above = transfer.Cases.Where(one => Meant.ContainsKey(one.Name) && one.Utilisation is { } use
            && Judged.Fraction(use, 1).IsAbove);
        if (above.MaxBy(one => one.Utilisation) is { } worst)
        {
            scope.Find(MatchingFindings.CompoundOverstressed, MatchPointers.Strength,
                new(Measure.Stress(worst.LipPressurePa), Limit.Of(Measure.Stress(scope.Input.Compound.Cured.CompressiveStrengthPa!.Value))),
                    [MatchPointers.Basket],
                words: new FindingWord("load", Meant[worst.Name]));
        }

        if (Judged.Count(transfer.Cone.Friction, transfer.Cone.Basket.Taper) is { IsAbove: false } slips)
        {
            scope.Find(MatchingFindings.NotSelfLocking, MatchPointers.Friction, slips, [MatchPointers.Basket]);
        }
    }
}
