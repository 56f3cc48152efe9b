using System.Globalization;
using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Pouring;

/// <summary>
/// Which dose, and how long until it gels. A warm compound in a cold socket takes the socket's temperature, so the
/// dose goes by the colder of air and steel; in the vessel the compound's own temperature counts, or the air's if
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

        if (scope.Input.Conditions is not { AirK: { } air, SteelK: { } steel })
        {
            return null;
        }

        var (place, pointer, decides) = steel <= air ? ("steel", PourPointers.Steel, steel) : ("air", PourPointers.Air, air);
        if (sheet.DosesPerKitAt(decides) is not { } doses)
        {
            scope.Find(PouringFindings.DoseUnknown, pointer, Measure.Temperature(decides), related: [PourPointers.Doses]);
            return null;
        }

        var (bySteel, byAir) = (sheet.DosesPerKitAt(steel), sheet.DosesPerKitAt(air));
        if (bySteel != byAir)
        {
            scope.Find(PouringFindings.DoseEdge, pointer, related: [pointer == PourPointers.Steel ? PourPointers.Air : PourPointers.Steel],
                words: [new("steelDoses", Text(bySteel)), new("airDoses", Text(byAir))]);
        }

        CheckUncertainty(scope, decides, pointer);
        return new(doses, place, decides);
    }

    private static void CheckUncertainty(PourScope scope, double decides, string pointer)
    {
        var sheet = scope.Input.Compound;
        if (scope.Input.Conditions.UncertaintyK is { } uncertainty
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

        if (dose is null || scope.Input.Conditions is not { AirK: { } air, SteelK: { } steel, CompoundK: { } compound })
        {
            return null;
        }

        var assumed = scope.Rules.AssumedActivationEnergy;
        var (low, expected, high) = (assumed.Low.Value!.Value, assumed.Expected.Value!.Value, assumed.High.Value!.Value);
        if (GelModel.For(scope.Input.Compound, dose.PerKit, new(low.Si, expected.Si, high.Si)) is not { } model)
        {
            scope.Find(PouringFindings.GelTimeUnknown, PourPointers.GelTimes, words: new FindingWord("doses", Text(dose.PerKit)));
            return null;
        }

        if (model.IsAssumed)
        {
            scope.Find(PouringFindings.GelTimeFromOnePoint, PourPointers.GelTimes, words: [new("low", low), new("high", high)]);
            scope.Assume("/compound/sheet/reaction/activationEnergy", "activation energy of gelling, from one gel time",
                expected, AssumptionOrigin.RuleSet);
        }

        var vessel = Math.Max(compound, air);
        var coldest = Math.Min(Math.Min(air, steel), compound);
        CheckMeasured(scope, model, vessel, compound >= air ? PourPointers.Compound : PourPointers.Air);
        if (steel > vessel)
        {
            CheckMeasured(scope, model, steel, PourPointers.Steel);
        }

        CheckMeasured(scope, model, coldest, coldest == steel ? PourPointers.Steel : coldest == air ? PourPointers.Air : PourPointers.Compound);
        var inVessel = model.At(vessel, scope.Trace);
        var inCold = model.At(coldest, scope.Trace);
        // Steel that stood in the sun hastens the cone; the vessel doesn't know of it.
        var inWarm = steel > vessel ? model.At(steel, scope.Trace) : inVessel;
        double? potLife = scope.Input.Compound.PotLife is { } share ? PotLifeS(share, inVessel.EarliestS, scope.Trace) : null;
        return new(inVessel, new(inWarm.EarliestS, inCold.ExpectedS, inCold.LatestS), potLife);
    }

    /// <summary>t_pot = p·t_gel, p the usable share of the sheet, t_gel the earliest gel in the vessel; in s.</summary>
    [Formula("pot-life", "the compound's data sheet", "potLife", Basis.DataSheet, Symbol = "t_pot", Name = "pot life",
        Expression = "p·t_gel", Kind = QuantityKind.Duration, Range = "compound at rest in its vessel; a large mix warms itself and gels sooner")]
    public static double PotLifeS(double share, double gelTimeS, Trace trace) =>
        trace.Step("pot-life", share * gelTimeS, new("p", Measure.Fraction(share)), new("t_gel", Measure.Duration(gelTimeS)));

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
