using CalcService.Engine.Findings;
using System.Globalization;
using CalcService.Engine.Compounds;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Curing;

/// <summary>The readings at mixing, and the dose that goes with them.</summary>
internal static class CureReadings
{
    /// <summary>The air as a history in seconds from mixing, or null where it says nothing about the mixing.</summary>
    public static TemperatureHistory? Air(CureScope scope)
    {
        var (conditions, mixedAt) = (scope.Input.Conditions, scope.Input.MixedAt);
        if (conditions.ConstantAirK is { } constant)
        {
            return TemperatureHistory.Constant(constant, 0, scope.Rules.Horizon.Si);
        }

        if (conditions.AirSeries.Count == 0)
        {
            scope.Find(CompoundFindings.ReadingMissing, CurePointers.Air, words: new FindingWord("reading", "Air temperature"));
            return null;
        }

        var history = new TemperatureHistory(
            [.. conditions.AirSeries.Select(point => (point.At - mixedAt).TotalSeconds)], [.. conditions.AirSeries.Select(point => point.Kelvins)]);
        if (!history.Covers(0))
        {
            scope.Find(CuringFindings.ForecastMissesMixing, CurePointers.AirSeries, related: [CurePointers.MixedAt]);
            return null;
        }

        // Ageing starts with the mixing, not with the forecast.
        return history.From(0);
    }

    /// <summary>Holds each reading against the pouring range of the sheet.</summary>
    public static void Check(CureScope scope, TemperatureHistory? air)
    {
        if (air is not null)
        {
            CheckRange(scope, "Air", air.At(0), CurePointers.Air);
        }

        CheckReading(scope, "Steel", scope.Input.Conditions.SteelK, CurePointers.Steel);
        CheckReading(scope, "Compound", scope.Input.Conditions.CompoundK, CurePointers.Compound);
        if (scope.Input.Compound.Pouring is null)
        {
            scope.SheetSilent(CurePointers.PouringRange, "pouring range");
        }
    }

    /// <summary>The dose as given, else the sheet's, as the pour plan has it.</summary>
    public static int? Dose(CureScope scope, TemperatureHistory? air)
    {
        var (sheet, given) = (scope.Input.Compound, scope.Input.Doses);
        if (sheet.Doses.Count == 0)
        {
            if (given is null)
            {
                scope.SheetSilent(CurePointers.SheetDoses, "doses by temperature");
            }

            return given;
        }

        if (air is null || Decides(scope, air.At(0)) is not var (pointer, decides))
        {
            return given;
        }

        if (sheet.DosesPerKitAt(decides) is not { } asked)
        {
            scope.Find(CompoundFindings.DoseUnknown, pointer, Measure.Temperature(decides), related: [CurePointers.SheetDoses]);
            return given;
        }

        if (given is { } doses && doses != asked)
        {
            scope.Find(CompoundFindings.DoseContradictsSheet, CurePointers.Doses, Measure.Count(doses), Measure.Count(asked), [pointer, CurePointers.SheetDoses]);
        }

        if (given is null)
        {
            scope.Assume(CurePointers.Doses, "doses for each kit by the sheet, at the temperature that they go by", Measure.Count(asked), AssumptionOrigin.Estimate);
        }

        return given ?? asked;
    }

    /// <summary>The reading that the dose goes by, as in the pour plan: the colder of air and steel unless the sheet says otherwise; null where it is missing.</summary>
    public static (string Pointer, double K)? Decides(CureScope scope, double airK)
    {
        var conditions = scope.Input.Conditions;
        return scope.Input.Compound.DoseByTemperatureOf switch
        {
            DosePlace.Air => (CurePointers.Air, airK),
            DosePlace.Steel => conditions.SteelK is { } kelvins ? (CurePointers.Steel, kelvins) : null,
            DosePlace.Compound => conditions.CompoundK is { } kelvins ? (CurePointers.Compound, kelvins) : null,
            _ when conditions.SteelK is null => null,
            _ => conditions.SteelK <= airK ? (CurePointers.Steel, conditions.SteelK.Value) : (CurePointers.Air, airK),
        };
    }

    /// <summary>Gel and cure by the sheet for a dose; null, and said why, where the sheet doesn't give them.</summary>
    public static CureKinetics? Kinetics(CureScope scope, int? dose)
    {
        var sheet = scope.Input.Compound;
        if (sheet.GelTimes.Count == 0)
        {
            scope.SheetSilent(CurePointers.GelTimes, "gel times");
        }

        if (sheet.FullStrength is null)
        {
            scope.SheetSilent(CurePointers.FullStrength, "time to full strength");
        }

        if (CureKinetics.LowestCureK(sheet) is not { } lowest)
        {
            scope.SheetSilent(CurePointers.LowestCure, "lowest cure temperature");
        }
        else if (sheet.LowestCureK is null)
        {
            scope.Assume(CurePointers.LowestCure, "lowest cure temperature, taken as the lowest at which the sheet lets it be poured",
                Measure.Temperature(lowest), AssumptionOrigin.Estimate);
        }

        if (dose is not { } doses || sheet.GelTimes.Count == 0)
        {
            return null;
        }

        if (sheet.GelTimes.All(row => row.Doses != doses))
        {
            scope.Find(CompoundFindings.GelTimeUnknown, CurePointers.GelTimes, words: new FindingWord("doses", doses.ToString(CultureInfo.InvariantCulture)));
            return null;
        }

        var assumed = scope.Book.Pouring.AssumedActivationEnergy;
        var (low, expected, high) = (assumed.Low.Value!.Value, assumed.Expected.Value!.Value, assumed.High.Value!.Value);
        var kinetics = CureKinetics.For(sheet, doses, new(low.Si, expected.Si, high.Si),
            new(scope.Rules.GelConversion.Si, scope.Rules.FullStrengthConversion.Si));
        if (kinetics?.Model.IsAssumed == true)
        {
            scope.Find(CompoundFindings.GelTimeFromOnePoint, CurePointers.GelTimes, words: [new("low", low), new("high", high)]);
            scope.Assume("/compound/sheet/reaction/activationEnergy", "activation energy of gelling, from one gel time", expected, AssumptionOrigin.RuleSet);
        }

        return kinetics;
    }

    private static void CheckReading(CureScope scope, string reading, double? kelvins, string pointer)
    {
        if (kelvins is { } read)
        {
            CheckRange(scope, reading, read, pointer);
        }
        else
        {
            scope.Find(CompoundFindings.ReadingMissing, pointer, words: new FindingWord("reading", reading + " temperature"));
        }
    }

    private static void CheckRange(CureScope scope, string reading, double kelvins, string pointer)
    {
        if (scope.Input.Compound.Pouring is { } range && !range.Contains(kelvins))
        {
            var (minimum, maximum) = (Measure.Temperature(range.MinimumK), Measure.Temperature(range.MaximumK));
            scope.Find(CompoundFindings.OutsidePouringRange, pointer, Measure.Temperature(kelvins), kelvins < range.MinimumK ? minimum : maximum,
                [CurePointers.PouringRange], words: [new("reading", reading), new("minimum", minimum), new("maximum", maximum)]);
        }
    }
}
