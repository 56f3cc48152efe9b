using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Matching;

/// <summary>What the load transfer is worth knowing for.</summary>
internal static class ConeChecks
{
    /// <summary>The loads that the end is meant for. At the rope's breaking force the confined compound yields at nearly every lip.</summary>
    private static readonly Dictionary<string, string> Meant = new(StringComparer.Ordinal)
    {
        ["workingLoad"] = "working load", ["proofLoad"] = "proof load",
    };

    public static void Check(MatchScope scope, ConeTransfer transfer)
    {
        // The higher of the two says it: it is one fact.
        var above = transfer.Cases.Where(one => Meant.ContainsKey(one.Name) && one.Utilisation is { } use && Judged.IsAbove(use, 1));
        if (above.MaxBy(one => one.Utilisation) is { } worst)
        {
            scope.Find(MatchingFindings.CompoundOverstressed, MatchPointers.Strength, Measure.Stress(worst.LipPressurePa),
                Measure.Stress(scope.Input.Compound.Cured.CompressiveStrengthPa!.Value), [MatchPointers.Basket],
                words: new FindingWord("load", Meant[worst.Name]));
        }

        if (!Judged.IsAbove(transfer.Cone.Friction, transfer.Cone.Basket.Taper))
        {
            scope.Find(MatchingFindings.NotSelfLocking, MatchPointers.Friction, Measure.Count(transfer.Cone.Friction),
                Measure.Count(transfer.Cone.Basket.Taper), [MatchPointers.Basket]);
        }
    }
}
