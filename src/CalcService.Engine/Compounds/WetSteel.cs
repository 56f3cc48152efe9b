using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Compounds;

/// <summary>Steel against the dew point of the air, the same in every room.</summary>
internal static class WetSteel
{
    /// <summary>Finds steel that is wet or frosted, or nearly so; false then.</summary>
    /// <param name="scope">Takes the finding.</param>
    /// <param name="margin">Least distance from the dew point.</param>
    /// <param name="reading">The steel in words.</param>
    /// <param name="steelK">Its temperature.</param>
    /// <param name="pointer">The member that gives it.</param>
    /// <param name="dewPointK">The dew point over water.</param>
    /// <param name="frostPointK">The frost point where the dew point lies below 0 °C.</param>
    /// <param name="related">Members that give the air.</param>
    public static bool CheckDew(this RoomScope scope, RuleLimit margin, string reading, double steelK, string pointer, double dewPointK, double? frostPointK, IReadOnlyList<string> related)
    {
        var point = frostPointK ?? dewPointK;
        if (steelK <= point)
        {
            scope.Find(SteelFindings.SteelAtDewPoint, pointer, Measure.Temperature(steelK), Measure.Temperature(point), related, words: Words());
        }
        else if (steelK < point + margin.Si)
        {
            scope.Find(SteelFindings.SteelNearDewPoint, pointer, Measure.TemperatureDifference(steelK - point), margin.Value, related, words: Words());
        }

        return steelK >= point + margin.Si;

        FindingWord[] Words() => [new("reading", reading), new("point", frostPointK is null ? "dew point" : "frost point")];
    }
}
