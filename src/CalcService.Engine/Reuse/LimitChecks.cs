using CalcService.Engine.Provenance;

namespace CalcService.Engine.Reuse;

/// <summary>Whether the limits that the request brings along can be meant.</summary>
internal static class LimitChecks
{
    public static void Check(ReuseScope scope)
    {
        var (limits, rules) = (scope.Input.Limits, scope.Rules);
        (string Member, double? Share)[] shares =
        [
            ("boreGrowth", limits.BoreGrowth), ("ovality", limits.Ovality), ("pinHoleGrowth", limits.PinHoleGrowth),
                ("earSpread", limits.EarSpread),
            ("taperLoss", limits.TaperLoss), ("pinWear", limits.PinWear), ("earThicknessLoss", limits.EarThicknessLoss),
            ("earWidthLoss", limits.EarWidthLoss),
            ("earEndDistanceLoss", limits.EarEndDistanceLoss), ("outsideLoss", limits.OutsideLoss),
            ("pitDepth", limits.PitDepthM / scope.Socket.Nominal.EarThicknessM),
        ];
        foreach (var (member, share) in shares)
        {
            if (share is { } allowed && rules.MostAllowed.Judge(Measure.Fraction(allowed)) is { IsAbove: true } much)
            {
                scope.Find(ReuseFindings.LimitImplausible, ReusePointers.Limit(member), much);
            }
        }

        if (limits.RemovalTemperatureK is { } kelvins && rules.HottestAllowed.Judge(Measure.Temperature(kelvins)) is { IsAbove: true } hot)
        {
            scope.Find(ReuseFindings.LimitImplausible, ReusePointers.RemovalLimit, hot);
        }

        if (limits.DesignFactor is { } factor && rules.DesignFactor.Judge(Measure.Count(factor)) is { IsBelow: true } low)
        {
            scope.Find(ReuseFindings.LimitImplausible, ReusePointers.DesignFactor, low);
        }
    }
}
