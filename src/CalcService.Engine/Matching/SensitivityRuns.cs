using CalcService.Engine.Cones;

namespace CalcService.Engine.Matching;

/// <summary>The cone again with each of its uncertain numbers low and high.</summary>
internal static class SensitivityRuns
{
    private const double ShrinkageSpread = .5;
    private const double TaperSpread = .1;

    public static List<ConeSensitivity>? At(MatchScope scope, Cone cone, double loadN)
    {
        var basket = cone.Basket;
        // Another taper: the small end as it is, the mouth wider or narrower.
        Cone Tapered(double factor) => cone with
        {
            Basket = basket with { LargeEndDiameterM = basket.SmallEndDiameterM
                + (factor * (basket.LargeEndDiameterM - basket.SmallEndDiameterM)) },
            OuterAtMouthM = cone.OuterAtMouthM + ((factor - 1) * (basket.LargeEndDiameterM - basket.SmallEndDiameterM)),
        };
        var friction = scope.Rules.Friction;
        var (low, high) = (Math.Min(cone.Friction, friction.Low.Si), Math.Max(cone.Friction, friction.High.Si));
        var found = new List<ConeSensitivity>();
        foreach (var (what, of, least, most) in new (string, Func<double, Cone>, double, double)[]
        {
            ("friction", value => cone with { Friction = value }, low, high),
            ("shrinkage", value => cone with { Shrinkage = value }, cone.Shrinkage * (1 - ShrinkageSpread),
            cone.Shrinkage * (1 + ShrinkageSpread)),
            ("taper", value => Tapered(value / basket.Taper), basket.Taper * (1 - TaperSpread), basket.Taper * (1 + TaperSpread)),
        })
        {
            if (ConeLoad.Solve(of(least), loadN, scope.Budget, scope.CancellationToken) is not { } atLow
                || ConeLoad.Solve(of(most), loadN, scope.Budget, scope.CancellationToken) is not { } atHigh)
            {
                return null;
            }

            found.Add(new(what, least, most, atLow, atHigh));
        }

        return found;
    }
}
