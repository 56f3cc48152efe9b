using System.Globalization;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Compounds;

/// <summary>Gel and cure by the sheet, with what has to be said about them.</summary>
internal static class SheetKinetics
{
    private const string Sheet = "/compound/sheet/", GelTimes = Sheet + "gelTimes", LowestCure = Sheet + "lowestCure";

    /// <summary>Gel and cure for a dose; null, and said why, where the sheet doesn't give them.</summary>
    public static CureKinetics? Kinetics(this CalculationScope scope, CompoundSheet sheet, int? dose, RuleBook book)
    {
        if (sheet.GelTimes.Count == 0)
        {
            scope.SheetSilent(GelTimes, "gel times");
        }

        if (sheet.FullStrength.Count == 0)
        {
            scope.SheetSilent(Sheet + "fullStrength", "time to full strength");
        }

        if (CureKinetics.LowestCureK(sheet) is not { } lowest)
        {
            scope.SheetSilent(LowestCure, "lowest cure temperature");
        }
        else if (sheet.LowestCureK is null)
        {
            scope.Assume(LowestCure, "lowest cure temperature, taken as the lowest at which the sheet lets it be poured",
                Measure.Temperature(lowest), AssumptionOrigin.Estimate);
        }

        if (dose is not { } doses || sheet.GelTimes.Count == 0)
        {
            return null;
        }

        if (sheet.GelTimes.All(row => row.Doses != doses))
        {
            scope.Find(CompoundFindings.GelTimeUnknown, GelTimes,
                words: new FindingWord("doses", doses.ToString(CultureInfo.InvariantCulture)));
            return null;
        }

        var (low, expected, high) = book.Pouring.AssumedActivationEnergy;
        var kinetics = CureKinetics.For(sheet, doses, new(low.Si, expected.Si, high.Si),
            new(book.Curing.GelConversion.Si, book.Curing.FullStrengthConversion.Si));
        if (kinetics?.Model.IsAssumed == true)
        {
            scope.Find(CompoundFindings.GelTimeFromOnePoint, GelTimes, words: [new("low", low), new("high", high)]);
            scope.Assume("/compound/sheet/reaction/activationEnergy", "activation energy of gelling, from one gel time", expected.Value,
                AssumptionOrigin.RuleSet);
        }

        return kinetics;
    }
}
