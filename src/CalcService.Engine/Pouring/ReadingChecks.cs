using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Pouring;

/// <summary>Whether the day's readings allow a pour: pouring range and dew point.</summary>
internal static class ReadingChecks
{
    /// <summary>Checks all readings and returns the dew point and, below 0 °C, the frost point.</summary>
    public static (double? DewPointK, double? FrostPointK) Check(PourScope scope)
    {
        var conditions = scope.Input.Conditions;
        CheckReading(scope, "Air", conditions.AirK, PourPointers.Air);
        CheckReading(scope, "Steel", conditions.SteelK, PourPointers.Steel);
        CheckReading(scope, "Compound", conditions.CompoundK, PourPointers.Compound);
        if (scope.Input.Compound.Pouring is null)
        {
            scope.SheetSilent(PourPointers.PouringRange, "pouring range");
        }

        if (conditions.RelativeHumidity is null)
        {
            scope.Find(PouringFindings.ReadingMissing, PourPointers.Humidity, words: new FindingWord("reading", "Relative humidity"));
        }

        if (conditions is not { AirK: { } air, RelativeHumidity: { } humidity })
        {
            return (null, null);
        }

        var dewPoint = DewPoint.OverWaterK(air, humidity, scope.Trace);
        double? frostPoint = dewPoint < DewPoint.ZeroCelsiusK ? DewPoint.OverIceK(air, humidity, scope.Trace) : null;
        if (conditions.SteelK is { } steel)
        {
            CheckDew(scope, steel, frostPoint ?? dewPoint, frostPoint is null ? "dew point" : "frost point");
        }

        return (dewPoint, frostPoint);
    }

    private static void CheckReading(PourScope scope, string reading, double? kelvins, string pointer)
    {
        if (kelvins is not { } read)
        {
            scope.Find(PouringFindings.ReadingMissing, pointer, words: new FindingWord("reading", reading + " temperature"));
            return;
        }

        if (scope.Input.Compound.Pouring is { } range && !range.Contains(read))
        {
            var (minimum, maximum) = (Measure.Temperature(range.MinimumK), Measure.Temperature(range.MaximumK));
            scope.Find(PouringFindings.OutsidePouringRange, pointer, Measure.Temperature(read), read < range.MinimumK ? minimum : maximum,
                [PourPointers.PouringRange], words: [new("reading", reading), new("minimum", minimum), new("maximum", maximum)]);
        }
    }

    private static void CheckDew(PourScope scope, double steel, double point, string pointName)
    {
        string[] related = [PourPointers.Air, PourPointers.Humidity];
        var margin = scope.Rules.DewMargin.Value!.Value;
        if (steel <= point)
        {
            scope.Find(PouringFindings.SteelAtDewPoint, PourPointers.Steel, Measure.Temperature(steel), Measure.Temperature(point),
                related, words: new FindingWord("point", pointName));
        }
        else if (steel < point + margin.Si)
        {
            scope.Find(PouringFindings.SteelNearDewPoint, PourPointers.Steel, Measure.TemperatureDifference(steel - point), margin,
                related, words: new FindingWord("point", pointName));
        }
    }
}
