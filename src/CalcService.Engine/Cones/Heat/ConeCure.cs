using CalcService.Engine.Compounds;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Cones.Heat;

/// <summary>What the modelled cone says, in seconds from the pour. Null where the temperatures end first.</summary>
public sealed record ModelledCone
{
    public double? EarliestGelS { get; init; }

    public double? LatestGelS { get; init; }

    /// <summary>Full strength in the least cured place.</summary>
    public double? FullS { get; init; }

    /// <summary>Cooled to what the sheet allows in service; infinite where that isn't seen, null where nothing has to cool.</summary>
    public double? CooledS { get; init; }

    public required ConePeak Peak { get; init; }

    /// <summary>Whether the true peak may be lower.</summary>
    public bool PeakIsUpper { get; init; }

    /// <summary>The place that is cured last, smallEnd, middle or mouth with Axis or Skin, and its degree then.</summary>
    public required (string Where, double Degree) LeastCured { get; init; }

    public double EnergyBalanceError { get; init; }
}

/// <summary>
/// Heat and cure of a cone together. The first place to gel gives the earliest gel, the last one the latest, the middle of the cone the
/// expected; the least cured place decides. Where the sheet leaves a band, the earliest and the latest times are followed too.
/// </summary>
/// <param name="Cone">The cone, poured at the start of the air.</param>
/// <param name="Kinetics">Gel and cure.</param>
/// <param name="Air">The air from the pour on.</param>
/// <param name="HottestServiceK">The cone waits until it is no hotter; null where the sheet doesn't say.</param>
/// <param name="Budget">Steps that may be spent.</param>
/// <param name="CancellationToken">Ends the work.</param>
public sealed record ConeCure(ConeHeatInput Cone, CureKinetics Kinetics, TemperatureHistory Air, double? HottestServiceK, Budget Budget,
    CancellationToken CancellationToken)
{
    private const int CurveMoments = 49;
    private const int CoolingMoments = 241;

    /// <summary>How long a cone that is too hot for service is followed.</summary>
    private const double CoolingS = 12 * 3600;

    /// <summary>The same cone poured later: steel and compound as warm as read.</summary>
    public ConeCure Since(double pourS)
    {
        var air = Air.Since(pourS);
        return this with
        {
            Air = air,
            Cone = Cone with { HorizonS = air.EndS,
            Surroundings = Cone.Surroundings with { AirK = new(air.Seconds.ToArray(), air.Kelvins.ToArray()) } },
        };
    }

    /// <summary>Everything, with every time longer by a factor; null where the budget doesn't reach.</summary>
    public ModelledCone? At(double slower, Trace trace)
    {
        if (Run(Kinetics.Latest, slower, trace) is not { } latest)
        {
            return null;
        }

        // A lot that was seen to be slow is no reason to expect the first place later.
        var earliest = Kinetics.HasBand || slower != 1 ? Run(Kinetics.Earliest, 1, Trace.None) : latest;
        if (earliest is null)
        {
            return null;
        }

        var hotter = earliest.Peak.TemperatureK >= latest.Peak.TemperatureK ? earliest : latest;
        return new()
        {
            EarliestGelS = earliest.Degrees[0].FirstS,
            LatestGelS = latest.Degrees[0].EverywhereS,
            FullS = latest.Degrees[1].EverywhereS,
            CooledS = Cooled(hotter.Peak, latest.EndS),
            Peak = hotter.Peak,
            PeakIsUpper = hotter.FrontsMeet,
            LeastCured = latest.Degrees[1] is { Last: { } last } full ? (Where(last), full.Degree)
            : (Where(latest.LeastCured), latest.LeastDegree),
            EnergyBalanceError = latest.Balance.RelativeError,
        };
    }

    /// <summary>The coldest place, as if the compound made no heat; null where the budget doesn't reach.</summary>
    public TemperatureHistory? Coldest(double untilS) => ConeHeat.Coldest(Cone, Math.Min(untilS, Air.EndS), Budget, CancellationToken);

    private ConeHeatResult? Run(GelCurve curve, double slower, Trace trace, Func<ConeHeatInput, ConeHeatInput>? change = null)
    {
        var input = Cone with { Law = Kinetics.RateOf(curve, slower) };
        return ConeHeat.Calculate(change is null ? input : change(input), trace, Budget, CancellationToken);
    }

    /// <summary>The expected cure at even times; null where the budget doesn't reach.</summary>
    /// <param name="slower">How much longer everything takes.</param>
    /// <param name="untilS">The end of the curve, cut to what is known of the air.</param>
    public IReadOnlyList<ConeMoment>? Curve(double slower, double untilS)
    {
        var until = Math.Ceiling(Math.Min(untilS, Air.EndS));
        return Run(Kinetics.Expected, slower, Trace.None, input => input with
        {
            CurveTimesS =
                [.. Enumerable.Range(0, CurveMoments).Select(i => Math.Min(Math.Round(until * i / (CurveMoments - 1)), Air.EndS))],
            EndDegree = null,
            HorizonS = Math.Min(until, Air.EndS),
        })?.Curve;
    }

    /// <summary>When the middle of the cone gels, between the moments of a curve.</summary>
    public double? GelOf(IReadOnlyList<ConeMoment> curve)
    {
        for (var i = 1; i < curve.Count; i++)
        {
            var (before, after) = (Kinetics.Shape.AgeOf(curve[i - 1].CentreDegree), Kinetics.Shape.AgeOf(curve[i].CentreDegree));
            if (after >= 1 && before < 1)
            {
                return curve[i - 1].TimeS + ((curve[i].TimeS - curve[i - 1].TimeS) * (1 - before) / (after - before));
            }
        }

        return null;
    }

    /// <summary>From when on the middle stays below what the sheet allows in service; infinite where that isn't seen.</summary>
    private double? Cooled(ConePeak peak, double fromS)
    {
        if (HottestServiceK is not { } hottest || !(peak.TemperatureK > hottest))
        {
            return null;
        }

        var until = Math.Min(Air.EndS, fromS + CoolingS);
        var run = Run(Kinetics.Earliest, 1, Trace.None, input => input with
        {
            CurveTimesS = [.. Enumerable.Range(0, CoolingMoments).Select(i => until * i / (CoolingMoments - 1))], EndDegree = null,
                HorizonS = until, CurveShare = 1,
        });
        var hot = run?.Curve.LastOrDefault(moment => moment.CentreK > hottest);
        return hot is null ? peak.TimeS : run!.Curve.FirstOrDefault(moment => moment.TimeS > hot.TimeS)?.TimeS ?? double.PositiveInfinity;
    }

    private string Where(ConePlace place)
    {
        var body = Cone.Body;
        var along = place.AboveSmallEndM / body.LengthM;
        var bore = (body.SmallEndDiameterM + (along * (body.LargeEndDiameterM - body.SmallEndDiameterM))) / 2;
        return (along < 1.0 / 3 ? "smallEnd" : along < 2.0 / 3 ? "middle" : "mouth") + (place.RadiusM < bore / 2 ? "Axis" : "Skin");
    }
}
