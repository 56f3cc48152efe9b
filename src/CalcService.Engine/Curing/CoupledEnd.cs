using CalcService.Engine.Compounds;
using CalcService.Engine.Cones.Heat;
using CalcService.Engine.Releases;

namespace CalcService.Engine.Curing;

/// <summary>What a modelled cone tells of an end.</summary>
internal static class CoupledEnd
{
    public static EndCure Of(CureScope scope, ModelledCone cone, ReleaseTimes release, IReadOnlyList<ConeMoment> curve,
        double? expectedGelS) => new()
    {
        EarliestGelS = cone.EarliestGelS,
        ExpectedGelS = expectedGelS,
        LatestGelS = cone.LatestGelS,
        GelGovernor = Governor.LeastCuredPlace,
        Peak = (cone.Peak.TemperatureK, cone.Peak.TimeS),
        LeastCured = new(cone.LeastCured.Where, cone.LeastCured.Degree),
        Curve = [.. curve.Select(moment => new CurvePoint(
            CureClock.At(scope.Input.MixedAt, moment.TimeS), moment.AirK, moment.CentreK, moment.SkinK, moment.CentreDegree,
            moment.SkinDegree)
        {
            CureLatest = moment.LeastDegree, SheetShare = release.ShareAt(moment.TimeS),
        })],
        EnergyBalanceError = cone.EnergyBalanceError,
    };
}
