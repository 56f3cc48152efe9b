namespace CalcService.Engine.Reuse;

/// <summary>Ears, pin and outside as measured.</summary>
internal static class EarWear
{
    public static WearFacts Measure(ReuseScope scope, WearFacts bore)
    {
        var (drawn, found, trace) = (scope.Socket.Nominal, scope.Socket.Measured, scope.Trace);
        var (holes, hasEars) = (found.PinHoleDiametersM, scope.HasEars);
        double? Change(double? now, double? made, bool isThere) =>
            isThere && now is { } x && made is { } x0 ? WearFormulas.Growth(x, x0, trace) : null;
        double?[] outside = [-Change(found.OuterAtSmallEndM, drawn.OuterAtSmallEndM, true),
            -Change(found.OuterAtMouthM, drawn.OuterAtMouthM, true)];
        return bore with
        {
            PinHoleGrowth = Change(holes.Count > 0 ? holes.Max() : null, drawn.PinHoleDiameterM, hasEars),
            PinHoleOvality = hasEars && holes.Count > 1 && drawn.PinHoleDiameterM is { } hole
                ? WearFormulas.Ovality(holes.Max(), holes.Min(), hole, trace) : null,
            PinWear = -Change(found.PinDiameterM, drawn.PinDiameterM, hasEars),
            // Ears that have been pressed together have been bent as well.
            EarSpread = Change(found.EarGapM, drawn.EarGapM, hasEars) is { } spread ? Math.Abs(spread) : null,
            EarThicknessLoss = -Change(found.EarThicknessM, drawn.EarThicknessM, hasEars),
            EarWidthLoss = -Change(found.EarWidthM, drawn.EarWidthM, hasEars),
            EarEndDistanceLoss = -Change(found.EarEndDistanceM, drawn.EarEndDistanceM, hasEars),
            OutsideLoss = outside.Max(),
            PitDepthM = found.PitDepthM,
        };
    }
}
