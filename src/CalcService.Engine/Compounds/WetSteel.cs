using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Compounds;

/// <summary>Where water settles, and whether all steel stays far enough above it.</summary>
/// <param name="DewPointK">Over water.</param>
/// <param name="FrostPointK">Over ice, where the dew point lies below 0 °C.</param>
/// <param name="Against">What stands against the coldest steel; null where all of it keeps its distance.</param>
internal sealed record DewCheck(double DewPointK, double? FrostPointK, FindingDefinition? Against);

/// <summary>Steel against the dew point of the air, the same in every calculation.</summary>
internal static class WetSteel
{
    /// <summary>
    /// Finds steel that is wet or frosted, else steel that is nearly so: the coldest, with the others as related members.
    /// </summary>
    /// <param name="scope">Takes the finding.</param>
    /// <param name="margin">Least distance from the dew point.</param>
    /// <param name="steel">All steel that was read.</param>
    /// <param name="air">The air.</param>
    /// <param name="humidity">Its relative humidity, 0 to 1.</param>
    /// <param name="humidityAt">The member that gives it.</param>
    public static DewCheck CheckDew(this CalculationScope scope, RuleLimit margin, IReadOnlyList<Reading> steel, Reading air,
        double humidity, string humidityAt)
    {
        var dewPoint = DewPoint.OverWaterK(air.K, humidity, scope.Trace);
        double? frostPoint = dewPoint < DewPoint.ZeroCelsiusK ? DewPoint.OverIceK(air.K, humidity, scope.Trace) : null;
        var point = frostPoint ?? dewPoint;
        Measure Above(Reading reading) => Measure.TemperatureDifference(reading.K - point);
        var near = steel.Where(reading => margin.Judge(Above(reading)).IsBelow).OrderBy(reading => reading.K).ToArray();
        FindingDefinition? against = null;
        if (near.Length > 0)
        {
            var (coldest, wet) = (near[0], Judged.Temperature(near[0].K, point));
            against = wet.IsAbove ? SteelFindings.SteelNearDewPoint : SteelFindings.SteelAtDewPoint;
            string[] related = [.. near.Skip(1).Select(reading => reading.Pointer), air.Pointer, humidityAt];
            FindingWord[] words = [new("reading", coldest.Name), new("point", frostPoint is null ? "dew point" : "frost point")];
            scope.Find(against, coldest.Pointer, wet.IsAbove ? margin.Judge(Above(coldest)) : wet, related, words: words);
        }

        return new(dewPoint, frostPoint, against);
    }
}
