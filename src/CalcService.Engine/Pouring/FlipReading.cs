using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;

namespace CalcService.Engine.Pouring;

/// <summary>A reading that was given, and the values at which a check may change its mind about it.</summary>
/// <param name="Name">Its name in the request.</param>
/// <param name="Value">What was read.</param>
/// <param name="Edges">Where to ask again, rising; the outermost bound what can be read at all.</param>
/// <param name="With">The conditions with another value.</param>
internal sealed record FlipReading(string Name, double Value, double[] Edges, Func<double, PourConditions> With)
{
    private static readonly (double Coldest, double Warmest) Weather = (DewPoint.ZeroCelsiusK - 45, DewPoint.ZeroCelsiusK + 60);

    /// <summary>Whether it counts for nothing but water on the steel.</summary>
    public bool OnlyWets { get; init; }

    /// <param name="scope">The plan.</param>
    /// <param name="withCautions">Whether a caution more or less would change the decision; if not, edges of cautions are left out.</param>
    public static IEnumerable<FlipReading> Of(PourScope scope, bool withCautions)
    {
        var conditions = scope.Conditions;
        var common = Common(scope, withCautions);
        var margin = withCautions ? scope.Rules.DewMargin : null;
        if (conditions.AirK is { } air)
        {
            yield return new("airTemperature", air,
                Rising([.. common,
                .. Wet(scope, margin, (point, humidity) => DewPoint.AirK(point, humidity), conditions.RelativeHumidity)]),
                value => conditions with { AirK = value });
        }

        if (conditions.SteelK is { } steel)
        {
            double[] dew = conditions is { AirK: { } ambient, RelativeHumidity: { } humidity }
                && DewPoint.WetK(ambient, humidity) is var wet
                ? margin is { } ? [wet, margin.KeptAbove(wet)] : [wet]
                : [];
            yield return new("steelTemperature", steel, Rising([.. common, .. dew]), value => conditions with { SteelK = value });
        }

        if (conditions.CompoundK is { } compound)
        {
            yield return new("compoundTemperature", compound, Rising([.. common]), value => conditions with { CompoundK = value });
        }

        if (conditions.RelativeHumidity is { } read)
        {
            var wet = Wet(scope, margin, (point, kelvins) => DewPoint.Humidity(kelvins, point), conditions.AirK);
            yield return new("relativeHumidity", read, Rising([.. wet.Where(edge => edge < 1), .01, 1]),
                value => conditions with { RelativeHumidity = value })
            {
                OnlyWets = true,
            };
        }
    }

    /// <summary>Edges above what was read (1) or below it (−1), the nearest first.</summary>
    public IEnumerable<double> EdgesFrom(int sign)
    {
        for (var i = sign > 0 ? 0 : Edges.Length - 1; i >= 0 && i < Edges.Length; i += sign)
        {
            if ((Edges[i] - Value) * sign > 0)
            {
                yield return Edges[i];
            }
        }
    }

    private static double[] Rising(double[] edges)
    {
        Array.Sort(edges);
        return edges;
    }

    /// <summary>Ends of the sheet's ranges and bands, each seen through the uncertainty of a reading too.</summary>
    private static List<double> Common(PourScope scope, bool withCautions)
    {
        var sheet = scope.Input.Compound;
        var edges = new List<double> { Weather.Coldest, Weather.Warmest };
        void Add(double edge)
        {
            if (edge >= Weather.Coldest && edge <= Weather.Warmest && !edges.Contains(edge))
            {
                edges.Add(edge);
            }
        }

        if (sheet.Pouring is { } pouring)
        {
            Add(pouring.MinimumK);
            Add(pouring.MaximumK);
        }

        var blur = withCautions ? scope.Conditions.UncertaintyK ?? 0 : 0;
        foreach (var edge in sheet.Doses.SelectMany<DoseBand, double>(band => [band.FromK, band.BelowK]))
        {
            Add(edge);
            Add(edge - blur);
            Add(edge + blur);
        }

        if (withCautions)
        {
            foreach (var doses in sheet.GelTimes.Select(row => row.Doses).Distinct())
            {
                if (scope.GelWith(doses) is { Measured: var measured })
                {
                    Add(measured.MinimumK);
                    Add(measured.MaximumK);
                }
            }
        }

        return edges;
    }

    /// <summary>Where the coldest steel is wet, and where it is near to it.</summary>
    private static double[] Wet(PourScope scope, RuleLimit? margin, Func<double, double, double> edge, double? other) =>
        scope.Steel.All.Length == 0 || other is not { } given ? []
            : scope.Steel.All.Min(steel => steel.K) is var coldest && margin is { }
                ? [edge(coldest, given), edge(margin.KeptBelow(coldest), given)] : [edge(coldest, given)];
}
