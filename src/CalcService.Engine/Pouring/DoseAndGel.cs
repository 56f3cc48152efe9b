using System.Globalization;
using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Pouring;

/// <summary>
/// Which dose, and how long until it gels. A warm compound in a cold socket takes the socket's temperature, so the dose goes by the colder
/// of air and steel unless the sheet says otherwise; in the vessel the compound's own temperature counts, or the air's if that is warmer.
/// </summary>
internal static class DoseAndGel
{
    public static SheetDose? Dose(PourScope scope)
    {
        var sheet = scope.Input.Compound;
        if (sheet.Doses.Count == 0)
        {
            scope.SheetSilent(PourPointers.Doses, "doses by temperature");
            return null;
        }

        if (SheetDose.Of(scope, sheet, scope.Air, scope.Steel.Coldest, scope.Compound) is not { } asked)
        {
            return null;
        }

        CheckEdge(scope, asked.By);
        CheckUncertainty(scope, asked.By);
        return asked;
    }

    /// <summary>Where the sheet doesn't say which of them decides, air and steel should at least agree.</summary>
    private static void CheckEdge(PourScope scope, Reading by)
    {
        var sheet = scope.Input.Compound;
        if (sheet.DoseByTemperatureOf is DosePlace.Air or DosePlace.Steel or DosePlace.Compound || scope.Steel.Coldest is not { } steel
            || scope.Air is not { } air)
        {
            return;
        }

        var (bySteel, byAir) = (sheet.DosesPerKitAt(steel.K), sheet.DosesPerKitAt(air.K));
        // A reading outside the pouring range is a stop, and no matter of doses.
        if (bySteel != byAir && sheet.AllowsPouringAt(steel.K) && sheet.AllowsPouringAt(air.K))
        {
            scope.Find(PouringFindings.DoseEdge, by.Pointer, related: [by.Pointer == air.Pointer ? steel.Pointer : air.Pointer],
                words: [new("steelDoses", Text(bySteel)), new("airDoses", Text(byAir))]);
        }
    }

    private static void CheckUncertainty(PourScope scope, Reading by)
    {
        var sheet = scope.Input.Compound;
        if (scope.Conditions.UncertaintyK is { } uncertainty
            && (sheet.DosesPerKitAt(by.K - uncertainty), sheet.DosesPerKitAt(by.K + uncertainty)) is var (cold, warm) && cold != warm)
        {
            scope.Find(PouringFindings.DoseUncertain, by.Pointer, Measure.Temperature(by.K),
                [PourPointers.Uncertainty], words: [new("uncertainty", Measure.TemperatureDifference(uncertainty)),
                    new("lowDoses", Text(cold)), new("highDoses", Text(warm))]);
        }
    }

    public static GelPlan? Gel(PourScope scope, SheetDose? dose)
    {
        var sheet = scope.Input.Compound;
        if (sheet.PotLife is null)
        {
            scope.SheetSilent(PourPointers.PotLife, "pot life");
        }

        if (sheet.GelTimes.Count == 0)
        {
            scope.SheetSilent(PourPointers.GelTimes, "gel times");
            return null;
        }

        if (dose is null || scope.Steel is not { Coldest: { } cold, Warmest: { } warm }
            || scope is not { Air: { } air, Compound: { } compound })
        {
            return null;
        }

        if (scope.GelWith(dose.PerKit) is not { } model)
        {
            scope.Find(CompoundFindings.GelTimeUnknown, PourPointers.GelTimes, words: new FindingWord("doses", Text(dose.PerKit)));
            return null;
        }

        if (model.IsAssumed)
        {
            var (low, expected, high) = scope.Rules.AssumedActivationEnergy;
            scope.Find(CompoundFindings.GelTimeFromOnePoint, PourPointers.GelTimes, words: [new("low", low), new("high", high)]);
            scope.Assume("/compound/sheet/reaction/activationEnergy", "activation energy of gelling, from one gel time",
                expected.Value, AssumptionOrigin.RuleSet);
        }

        var potLife = PotLife.Of(sheet, model, air, compound, scope.Trace)!;
        var (vessel, coldest) = (potLife.By, Colder(Colder(air, cold), compound));
        CheckMeasured(scope, model, warm.K > vessel.K ? [vessel, warm, coldest] : [vessel, coldest]);
        var inCold = model.At(coldest.K, scope.Trace);
        // Steel that stood in the sun hastens the cone; the vessel doesn't know of it.
        var inWarm = warm.K > vessel.K ? model.At(warm.K, scope.Trace) : potLife.Gel;
        return new(potLife.Gel, new(inWarm.EarliestS, inCold.ExpectedS, inCold.LatestS), potLife.S);
    }

    private static Reading Colder(Reading one, Reading other) => other.K <= one.K ? other : one;

    private static void CheckMeasured(PourScope scope, GelModel model, params IReadOnlyList<Reading> readings)
    {
        foreach (var outside in model.IsAssumed ? [] : OutsideRange.Of([.. readings.Distinct()], model.Measured))
        {
            scope.Find(CompoundFindings.GelTimeExtrapolated, outside.Farthest.Pointer, outside.Judged,
                [.. outside.Others, PourPointers.GelTimes],
                words: [new("minimum", Measure.Temperature(model.Measured.MinimumK)),
                    new("maximum", Measure.Temperature(model.Measured.MaximumK))]);
        }
    }

    private static string Text(int? doses) => doses?.ToString(CultureInfo.InvariantCulture) ?? "not on the sheet";
}
