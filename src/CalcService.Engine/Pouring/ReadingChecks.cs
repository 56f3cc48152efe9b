using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;

namespace CalcService.Engine.Pouring;

/// <summary>Whether the day's readings allow a pour: pouring range and dew point.</summary>
internal static class ReadingChecks
{
    private static readonly string[] AirAndHumidity = [PourPointers.Air, PourPointers.Humidity];

    /// <summary>Checks all readings and returns the dew point and, below 0 °C, the frost point.</summary>
    public static (double? DewPointK, double? FrostPointK) Check(PourScope scope)
    {
        var conditions = scope.Conditions;
        CheckReading(scope, "Air", conditions.AirK, PourPointers.Air);
        CheckReading(scope, "Compound", conditions.CompoundK, PourPointers.Compound);
        if (scope.Steel.Coldest is null)
        {
            ReportMissing(scope, "Steel", PourPointers.Steel);
        }

        foreach (var steel in scope.Steel.All)
        {
            CheckReading(scope, Name(steel), steel.K, steel.Pointer);
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
        foreach (var steel in scope.Steel.All)
        {
            scope.CheckDew(scope.Rules.DewMargin, Name(steel), steel.K, steel.Pointer, dewPoint, frostPoint, AirAndHumidity);
        }

        return (dewPoint, frostPoint);
    }

    private static string Name(SteelReading steel) => steel.Place switch
    {
        "socket" => "A socket",
        "wires" => "A wire",
        _ => "Steel",
    };

    private static void ReportMissing(PourScope scope, string reading, string pointer) =>
        scope.Find(PouringFindings.ReadingMissing, pointer, words: new FindingWord("reading", reading + " temperature"));

    private static void CheckReading(PourScope scope, string reading, double? kelvins, string pointer)
    {
        if (kelvins is not { } read)
        {
            ReportMissing(scope, reading, pointer);
            return;
        }

        scope.CheckPouringRange(scope.Input.Compound, reading, read, pointer);
    }
}
