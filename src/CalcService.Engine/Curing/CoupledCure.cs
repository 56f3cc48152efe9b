using CalcService.Engine.Findings;
using CalcService.Engine.Compounds;
using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Curing;

/// <summary>
/// Heat and cure of a cone together. The first place to gel gives the earliest gel, the last one the latest, the middle of the cone the expected; the
/// least cured place decides about release. Where the sheet leaves a band, the earliest and the latest times are followed too.
/// </summary>
internal sealed class CoupledCure
{
    private const int CurveMoments = 49;
    private const int CoolingMoments = 241;

    /// <summary>How long a cone that is too hot for service is followed.</summary>
    private const double CoolingS = 12 * 3600;

    private readonly CureScope _scope;
    private readonly CureKinetics _kinetics;
    private readonly TemperatureHistory _air;
    private readonly ConeHeatInput _cone;

    private CoupledCure(CureScope scope, CureKinetics kinetics, TemperatureHistory air, ConeHeatInput cone) =>
        (_scope, _kinetics, _air, _cone) = (scope, kinetics, air, cone);

    /// <summary>The model of an end, or null, and said why, where something is missing that it needs.</summary>
    public static CoupledCure? For(CureScope scope, CureKinetics kinetics, TemperatureHistory air, CureEnd end, int index)
    {
        var pointer = $"{CurePointers.Ends}/{index}";
        var estimates = new List<Assumption>();
        var area = RopeFacts.Of(end.Rope, pointer + "/rope", estimates, Trace.None).MetallicAreaM2;
        scope.Assumptions.AddRange(estimates.Where(estimate => estimate.Pointer.EndsWith("/metallicArea", StringComparison.Ordinal)));
        if (area is null)
        {
            scope.Find(CuringFindings.ConeSteelUnknown, pointer + "/rope/construction", words: new FindingWord("end", end.Id));
        }

        // Wires that leave no room for compound make no cone.
        var isOverfull = area is { } wires && EndFit.IsOverfull(wires, end.Basket);

        if (end is not { OuterAtSmallEndM: not null, OuterAtMouthM: not null })
        {
            scope.Find(CuringFindings.SocketWallMissing, pointer + "/socket/outerDiameter", words: new FindingWord("end", end.Id));
        }

        return !isOverfull && area is { } metal && end is { OuterAtSmallEndM: { } small, OuterAtMouthM: { } mouth } && CoupledFacts.Materials(scope) is { } materials
            && scope.Input.Conditions is { SteelK: { } steel, CompoundK: { } compound }
            ? new(scope, kinetics, air, new()
            {
                Body = new()
                {
                    SmallEndDiameterM = end.Basket.SmallEndDiameterM,
                    LargeEndDiameterM = end.Basket.LargeEndDiameterM,
                    LengthM = end.Basket.LengthM,
                    OuterAtSmallEndM = small,
                    OuterAtMouthM = mouth,
                    MetallicAreaM2 = metal,
                    RopeDiameterM = end.Rope.DiameterM,
                },
                Materials = materials,
                Law = kinetics.RateOf(kinetics.Expected),
                Surroundings = new()
                {
                    CompoundK = compound,
                    SteelK = steel,
                    AirK = new(air.Seconds.ToArray(), air.Kelvins.ToArray()),
                    FilmWPerM2K = scope.Rules.FilmCoefficient.Si,
                },
                HorizonS = air.EndS,
                Degrees = [scope.Rules.GelConversion.Si, kinetics.Shape.FullDegree],
                EndDegree = kinetics.Shape.FullDegree,
            })
            : null;
    }

    /// <summary>The times with every gel time longer by a factor; null where the budget doesn't reach.</summary>
    public EndCure? At(double slower, Trace trace)
    {
        if (Run(_kinetics.Latest, slower, trace) is not { } latest)
        {
            return null;
        }

        var middle = _kinetics.HasBand ? Run(_kinetics.Expected, slower, Trace.None) : latest;
        var earliest = _kinetics.HasBand ? Run(_kinetics.Earliest, slower, Trace.None) : latest;
        if (middle is null || earliest is null || Curve(middle, slower) is not { } curve)
        {
            return null;
        }

        var hotter = earliest.Peak.TemperatureK >= latest.Peak.TemperatureK ? earliest : latest;
        var hottest = hotter.Peak;
        return new()
        {
            EarliestGelS = earliest.Degrees[0].FirstS,
            ExpectedGelS = GelOf(curve),
            LatestGelS = latest.Degrees[0].EverywhereS,
            GelGovernor = Governors.LeastCuredPlace,
            FullS = latest.Degrees[1].EverywhereS,
            FullGovernor = Governors.LeastCuredPlace,
            CooledS = Cooled(hottest, slower, latest.EndS),
            Peak = (hottest.TemperatureK, hottest.TimeS),
            PeakIsUpper = hotter.FrontsMeet,
            LeastCured = latest.Degrees[1] is { Last: { } last } full ? new(Where(last), full.Degree) : new(Where(latest.LeastCured), latest.LeastDegree),
            Curve = [.. curve.Select(moment => new CurvePoint(CureClock.At(_scope.Input.MixedAt, moment.TimeS), moment.AirK, moment.CentreK, moment.SkinK,
                moment.CentreDegree, moment.SkinDegree) { CureLatest = moment.LeastDegree })],
            EnergyBalanceError = latest.Balance.RelativeError,
        };
    }

    /// <summary>Gel and full strength by the latest times of a pour that is made later, in seconds from that pour; steel and compound as warm as read.</summary>
    public EndCure? ReleaseAt(double pourS, double slower)
    {
        var air = _air.From(pourS);
        var run = Run(_kinetics.Latest, slower, Trace.None, input => input with
        {
            HorizonS = _air.EndS - pourS,
            Surroundings = input.Surroundings with { AirK = new([.. air.Seconds.ToArray().Select(time => time - pourS)], air.Kelvins.ToArray()) },
        });
        return run is null ? null : new() { LatestGelS = run.Degrees[0].EverywhereS, FullS = run.Degrees[1].EverywhereS };
    }

    /// <summary>The age in gel times, by the sheet, that a place has at a time; null where the budget doesn't reach.</summary>
    public double? AgeAt(double seconds, GelPlace place)
    {
        var until = Math.Min(seconds, _air.EndS);
        var run = Run(_kinetics.Expected, 1, Trace.None, input => input with
        {
            HorizonS = until, EndDegree = null, CurveTimesS = [until], CurveShare = place == GelPlace.Cone ? .5 : 1,
        });
        return run is { Curve: [var moment] } ? _kinetics.Shape.AgeOf(place == GelPlace.Cone ? moment.CentreDegree : moment.SkinDegree) : null;
    }

    private ConeHeatResult? Run(GelCurve curve, double slower, Trace trace, Func<ConeHeatInput, ConeHeatInput>? change = null)
    {
        var input = _cone with { Law = _kinetics.RateOf(slower == 1 ? curve : curve.Slower(slower)) };
        return ConeHeat.Calculate(change is null ? input : change(input), trace, _scope.Budget, _scope.CancellationToken);
    }

    /// <summary>The expected cure at even times up to its end, with one moment for the gel of the middle.</summary>
    private IReadOnlyList<ConeMoment>? Curve(ConeHeatResult run, double slower) => Run(_kinetics.Expected, slower, Trace.None, input => input with
    {
        CurveTimesS = [.. Enumerable.Range(0, CurveMoments).Select(i => Math.Round(EndOf(run) * i / (CurveMoments - 1)))],
        EndDegree = null,
        HorizonS = EndOf(run),
    })?.Curve;

    /// <summary>Full strength everywhere, or the end of what is known; whole seconds.</summary>
    private static double EndOf(ConeHeatResult run) => Math.Ceiling(run.Degrees[1].EverywhereS ?? run.EndS);

    /// <summary>When the middle of the cone gels, between the moments of a curve.</summary>
    private double? GelOf(IReadOnlyList<ConeMoment> curve)
    {
        for (var i = 1; i < curve.Count; i++)
        {
            var (before, after) = (_kinetics.Shape.AgeOf(curve[i - 1].CentreDegree), _kinetics.Shape.AgeOf(curve[i].CentreDegree));
            if (after >= 1 && before < 1)
            {
                return curve[i - 1].TimeS + ((curve[i].TimeS - curve[i - 1].TimeS) * (1 - before) / (after - before));
            }
        }

        return null;
    }

    /// <summary>From when on the middle stays below what the sheet allows in service; infinite where that isn't seen.</summary>
    private double? Cooled(ConePeak peak, double slower, double fromS)
    {
        if (_scope.Input.Compound.Service is not { } service || peak.TemperatureK <= service.MaximumK)
        {
            return null;
        }

        var until = Math.Min(_air.EndS, fromS + CoolingS);
        var run = Run(_kinetics.Earliest, slower, Trace.None, input => input with
        {
            CurveTimesS = [.. Enumerable.Range(0, CoolingMoments).Select(i => until * i / (CoolingMoments - 1))], EndDegree = null, HorizonS = until, CurveShare = 1,
        });
        var hot = run?.Curve.LastOrDefault(moment => moment.CentreK > service.MaximumK);
        return hot is null ? peak.TimeS : run!.Curve.FirstOrDefault(moment => moment.TimeS > hot.TimeS)?.TimeS ?? double.PositiveInfinity;
    }

    private string Where(ConePlace place)
    {
        var body = _cone.Body;
        var along = place.AboveSmallEndM / body.LengthM;
        var bore = (body.SmallEndDiameterM + (along * (body.LargeEndDiameterM - body.SmallEndDiameterM))) / 2;
        return (along < 1.0 / 3 ? "smallEnd" : along < 2.0 / 3 ? "middle" : "mouth") + (place.RadiusM < bore / 2 ? "Axis" : "Skin");
    }
}
