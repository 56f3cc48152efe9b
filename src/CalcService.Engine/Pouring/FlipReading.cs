using CalcService.Engine.Compounds;

namespace CalcService.Engine.Pouring;

/// <summary>A reading that was given, and the values at which a check may change its mind about it.</summary>
/// <param name="Name">Its name in the request.</param>
/// <param name="Value">What was read.</param>
/// <param name="Edges">Where to ask again; the last ones bound what can be read at all.</param>
/// <param name="With">The conditions with another value.</param>
internal sealed record FlipReading(string Name, double Value, IReadOnlyList<double> Edges, Func<double, PourConditions> With)
{
    private static readonly (double Coldest, double Warmest) Weather = (DewPoint.ZeroCelsiusK - 45, DewPoint.ZeroCelsiusK + 60);

    /// <param name="scope">The plan.</param>
    /// <param name="withCautions">Whether a caution more or less would change the decision; if not, edges of cautions are left out.</param>
    public static IEnumerable<FlipReading> Of(PourScope scope, bool withCautions)
    {
        var conditions = scope.Input.Conditions;
        var common = Common(scope, withCautions);
        double? margin = withCautions ? scope.Rules.DewMargin.Si : null;
        if (conditions.AirK is { } air)
        {
            yield return new("airTemperature", air,
                [.. common, .. Wet(scope, margin, (point, humidity) => DewPoint.AirK(point, humidity), conditions.RelativeHumidity)],
                value => conditions with { AirK = value });
        }

        if (conditions.SteelK is { } steel)
        {
            IEnumerable<double> dew = conditions is { AirK: { } ambient, RelativeHumidity: { } humidity } && DewPoint.WetK(ambient, humidity) is var wet
                ? margin is { } above ? [wet, wet + above] : [wet]
                : [];
            yield return new("steelTemperature", steel, [.. common, .. dew], value => conditions with { SteelK = value });
        }

        if (conditions.CompoundK is { } compound)
        {
            yield return new("compoundTemperature", compound, common, value => conditions with { CompoundK = value });
        }

        if (conditions.RelativeHumidity is { } read)
        {
            yield return new("relativeHumidity", read,
                [.. Wet(scope, margin, (point, kelvins) => DewPoint.Humidity(kelvins, point), conditions.AirK).Where(edge => edge < 1), .01, 1],
                value => conditions with { RelativeHumidity = value });
        }
    }

    /// <summary>Ends of the sheet's ranges and bands, each seen through the uncertainty of a reading too.</summary>
    private static double[] Common(PourScope scope, bool withCautions)
    {
        var sheet = scope.Input.Compound;
        var bands = sheet.Doses.SelectMany(band => new[] { band.FromK, band.BelowK }).ToArray();
        IEnumerable<double> range = sheet.Pouring is { } pouring ? [pouring.MinimumK, pouring.MaximumK] : [];
        IEnumerable<double> blurred = withCautions && scope.Input.Conditions.UncertaintyK is { } u ? bands.SelectMany(edge => new[] { edge - u, edge + u }) : [];
        return [.. range.Concat(bands).Concat(blurred).Concat(withCautions ? Measured(sheet) : []).Append(Weather.Coldest).Append(Weather.Warmest)
            .Where(edge => edge >= Weather.Coldest && edge <= Weather.Warmest).Distinct()];
    }

    /// <summary>Ends of what the sheet measured, for each dose.</summary>
    private static IEnumerable<double> Measured(CompoundSheet sheet) => sheet.GelTimes.GroupBy(row => row.Doses)
        .SelectMany(rows => new[] { rows.Min(row => row.TemperatureK), rows.Max(row => row.TemperatureK) });

    /// <summary>Where the coldest steel is wet, and where it is near to it.</summary>
    private static IEnumerable<double> Wet(PourScope scope, double? margin, Func<double, double, double> edge, double? other) =>
        scope.Steel.All.Count == 0 || other is not { } given ? []
            : scope.Steel.All.Min(steel => steel.K) is var coldest && margin is { } above ? [edge(coldest, given), edge(coldest - above, given)] : [edge(coldest, given)];
}
