using CalcService.Engine.Findings;
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
            ("boreGrowth", limits.BoreGrowth), ("ovality", limits.Ovality), ("pinHoleGrowth", limits.PinHoleGrowth), ("earSpread", limits.EarSpread),
            ("taperLoss", limits.TaperLoss), ("pinWear", limits.PinWear), ("earThicknessLoss", limits.EarThicknessLoss), ("earWidthLoss", limits.EarWidthLoss),
            ("earEndDistanceLoss", limits.EarEndDistanceLoss), ("outsideLoss", limits.OutsideLoss),
            ("pitDepth", limits.PitDepthM / scope.Socket.Nominal.EarThicknessM),
        ];
        foreach (var (member, share) in shares)
        {
            if (share is { } allowed && Judged.IsAbove(allowed, rules.MostAllowed.Si))
            {
                scope.Find(ReuseFindings.LimitImplausible, ReusePointers.Limit(member), Measure.Fraction(allowed), rules.MostAllowed.Value);
            }
        }

        if (limits.RemovalTemperatureK is { } hot && Judged.IsAbove(hot, rules.HottestAllowed.Si))
        {
            scope.Find(ReuseFindings.LimitImplausible, ReusePointers.RemovalLimit, Measure.Temperature(hot), rules.HottestAllowed.Value);
        }

        if (limits.DesignFactor is { } factor && Judged.IsBelow(factor, rules.DesignFactor.Si))
        {
            scope.Find(ReuseFindings.LimitImplausible, ReusePointers.DesignFactor, Measure.Count(factor), rules.DesignFactor.Value);
        }
    }
}
