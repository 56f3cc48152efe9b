using System.Globalization;
using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Pouring;

/// <summary>
/// Which dose, and how long until it gels. A warm compound in a cold socket takes the socket's temperature, so the
/// dose goes by the colder of air and steel unless the sheet says otherwise; in the vessel the compound's own temperature counts, or the air's if
/// that is warmer.
/// </summary>
internal static class DoseAndGel
{
    public static DosePlan? Dose(PourScope scope)
    {
        var sheet = scope.Input.Compound;
        if (sheet.Doses.Count == 0)
        {
            scope.SheetSilent(PourPointers.Doses, "doses by temperature");
            return null;
        }

        if (Decides(scope) is not { } basis)
        {
            return null;
        }

        var (place, pointer, decides) = basis;
        if (sheet.DosesPerKitAt(decides) is not { } doses)
        {
            scope.Find(PouringFindings.DoseUnknown, pointer, Measure.Temperature(decides), related: [PourPointers.Doses]);
            return null;
        }

        CheckEdge(scope, pointer);
        CheckUncertainty(scope, decides, pointer);
        return new(doses, place, decides);
    }

    /// <summary>The reading that the dose goes by, or null where it is missing.</summary>
    private static (string Place, string Pointer, double K)? Decides(PourScope scope)
    {
        var (air, steel, compound) = (scope.Conditions.AirK, scope.Steel.Coldest, scope.Conditions.CompoundK);
        return DoseBasis.Of(scope.Input.Compound.DoseByTemperatureOf, air, steel?.K, compound) switch
        {
            (DosePlace.Air, var kelvins) => ("air", PourPointers.Air, kelvins),
            (DosePlace.Steel, var kelvins) => (steel!.Place, steel.Pointer, kelvins),
            (_, var kelvins) => ("compound", PourPointers.Compound, kelvins),
            null => null,
        };
    }

    /// <summary>Where the sheet doesn't say which of them decides, air and steel should at least agree.</summary>
    private static void CheckEdge(PourScope scope, string pointer)
    {
        var sheet = scope.Input.Compound;
        if (sheet.DoseByTemperatureOf is DosePlace.Air or DosePlace.Steel or DosePlace.Compound
            || scope.Steel.Coldest is not { } steel || scope.Conditions.AirK is not { } air)
        {
            return;
        }

        var (bySteel, byAir) = (sheet.DosesPerKitAt(steel.K), sheet.DosesPerKitAt(air));
        if (bySteel != byAir)
        {
            scope.Find(PouringFindings.DoseEdge, pointer, related: [pointer == PourPointers.Air ? steel.Pointer : PourPointers.Air],
                words: [new("steelDoses", Text(bySteel)), new("airDoses", Text(byAir))]);
        }
    }

    private static void CheckUncertainty(PourScope scope, double decides, string pointer)
    {
        var sheet = scope.Input.Compound;
        if (scope.Conditions.UncertaintyK is { } uncertainty
            && (sheet.DosesPerKitAt(decides - uncertainty), sheet.DosesPerKitAt(decides + uncertainty)) is var (cold, warm) && cold != warm)
        {
            scope.Find(PouringFindings.DoseUncertain, pointer, Measure.Temperature(decides), Measure.TemperatureDifference(uncertainty),
                [PourPointers.Uncertainty], words: [new("lowDoses", Text(cold)), new("highDoses", Text(warm))]);
        }
    }

    public static GelPlan? Gel(PourScope scope, DosePlan? dose)
    {
        if (scope.Input.Compound.PotLife is null)
        {
            scope.SheetSilent(PourPointers.PotLife, "pot life");
        }

        if (scope.Input.Compound.GelTimes.Count == 0)
        {
            scope.SheetSilent(PourPointers.GelTimes, "gel times");
            return null;
        }

        if (dose is null || scope.Steel is not { Coldest: { } cold, Warmest: { } warm } || scope.Conditions is not { AirK: { } air, CompoundK: { } compound })
        {
            return null;
        }

        if (scope.GelWith(dose.PerKit) is not { } model)
        {
            scope.Find(PouringFindings.GelTimeUnknown, PourPointers.GelTimes, words: new FindingWord("doses", Text(dose.PerKit)));
            return null;
        }

        if (model.IsAssumed)
        {
            var (low, expected, high) = scope.Rules.AssumedActivationEnergy;
            scope.Find(PouringFindings.GelTimeFromOnePoint, PourPointers.GelTimes, words: [new("low", low.Value!.Value), new("high", high.Value!.Value)]);
            scope.Assume("/compound/sheet/reaction/activationEnergy", "activation energy of gelling, from one gel time",
                expected.Value, AssumptionOrigin.RuleSet);
        }

        var vessel = Math.Max(compound, air);
        var coldest = Math.Min(Math.Min(air, cold.K), compound);
        CheckMeasured(scope, model, vessel, compound >= air ? PourPointers.Compound : PourPointers.Air);
        if (warm.K > vessel)
        {
            CheckMeasured(scope, model, warm.K, warm.Pointer);
        }

        CheckMeasured(scope, model, coldest, coldest == cold.K ? cold.Pointer : coldest == air ? PourPointers.Air : PourPointers.Compound);
        var inVessel = model.At(vessel, scope.Trace);
        var inCold = model.At(coldest, scope.Trace);
        // Steel that stood in the sun hastens the cone; the vessel doesn't know of it.
        var inWarm = warm.K > vessel ? model.At(warm.K, scope.Trace) : inVessel;
        double? potLife = scope.Input.Compound.PotLife is { } share ? MixFormulas.PotLifeS(share, inVessel.EarliestS, scope.Trace) : null;
        return new(inVessel, new(inWarm.EarliestS, inCold.ExpectedS, inCold.LatestS), potLife);
    }

    private static void CheckMeasured(PourScope scope, GelModel model, double kelvins, string pointer)
    {
        if (!model.IsAssumed && !model.Measured.Contains(kelvins))
        {
            var (minimum, maximum) = (Measure.Temperature(model.Measured.MinimumK), Measure.Temperature(model.Measured.MaximumK));
            scope.Find(PouringFindings.GelTimeExtrapolated, pointer, Measure.Temperature(kelvins),
                kelvins < minimum.Si ? minimum : maximum, [PourPointers.GelTimes], words: [new("minimum", minimum), new("maximum", maximum)]);
        }
    }

    private static string Text(int? doses) => doses?.ToString(CultureInfo.InvariantCulture) ?? "not on the sheet";
}
