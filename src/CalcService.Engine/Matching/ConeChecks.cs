using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Matching;

/// <summary>What the load transfer is worth knowing for.</summary>
internal static class ConeChecks
{
    private static readonly Dictionary<string, string> Loads = new(StringComparer.Ordinal)
    {
        ["workingLoad"] = "working load", ["proofLoad"] = "proof load", ["breakingForce"] = "breaking force of the rope",
    };

    public static void Check(MatchScope scope, ConeTransfer transfer, double lengthInDiameters)
    {
        foreach (var one in transfer.Cases.Where(one => one.Utilisation > 1))
        {
            scope.Find(MatchingFindings.CompoundOverstressed, MatchPointers.Strength, Measure.Stress(one.LipPressurePa),
                Measure.Stress(scope.Input.Compound.Cured.CompressiveStrengthPa!.Value), [MatchPointers.Basket],
                one.Name == "breakingForce" ? Severity.Note : Severity.Caution, words: new FindingWord("load", Loads[one.Name]));
        }

        var first = transfer.Cases[0];
        var said = scope.Rules.LowerThird.Value!.Value;
        if (first.State.Shares is { } shares && shares.Lower <= said.Si)
        {
            scope.Find(MatchingFindings.LowerThird, MatchPointers.Basket, Measure.Fraction(shares.Lower), said,
                words: new FindingWord("load", Measure.Force(first.State.LoadN)));
        }

        if (Judged.IsBelow(lengthInDiameters, scope.Book.Pouring.BasketLengthInDiameters.Si))
        {
            scope.Find(MatchingFindings.ShortCone, MatchPointers.Basket + "/length", Measure.Count(lengthInDiameters));
        }

        if (transfer.Cone.Friction <= transfer.Cone.Basket.Taper)
        {
            scope.Find(MatchingFindings.NotSelfLocking, MatchPointers.Friction, Measure.Count(transfer.Cone.Friction), Measure.Count(transfer.Cone.Basket.Taper), [MatchPointers.Basket]);
        }
    }
}
