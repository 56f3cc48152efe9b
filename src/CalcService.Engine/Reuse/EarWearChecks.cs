using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Reuse;

/// <summary>Wear of ears and pin.</summary>
internal static class EarWearChecks
{
    private static readonly (string Id, FindingDefinition Rule)[] All =
    [
        ("pin-hole-growth", ReuseFindings.PinHoleWorn), ("pin-hole-ovality", ReuseFindings.PinHoleOval),
            ("pin-wear", ReuseFindings.PinWorn),
        ("ear-spread", ReuseFindings.EarsSpread), ("ear-thickness", ReuseFindings.EarThin), ("ear-width", ReuseFindings.EarNarrow),
            ("ear-end-distance", ReuseFindings.EarEndWorn),
    ];

    public static void Check(ReuseScope scope, WearFacts wear)
    {
        if (!scope.HasEars)
        {
            foreach (var (id, rule) in All)
            {
                scope.Skip(id, rule);
            }

            return;
        }

        CheckHoles(scope, wear);
        var (drawn, found, limits) = (scope.Socket.Nominal, scope.Socket.Measured, scope.Input.Limits);
        var spread = WearAllowance.OfHole(scope, drawn.EarGapM);
        scope.Judge(new("ear-spread", ReuseFindings.EarsSpread, "change of the gap between the ears", WearChecks.Share(wear.EarSpread),
            WearChecks.Share(limits.EarSpread),
            WearChecks.Share(wear.EarSpread + (found.UncertaintyM / drawn.EarGapM)),
                Limit.Of(Measure.Fraction(spread.Over(drawn.EarGapM)), spread.Source), "earSpread", "earGap",
            [.. WearGaps.Undrawn(drawn.EarGapM, "earGap", "gap between the ears"),
                .. WearGaps.Unfound(found.EarGapM, "earGap", "gap between the ears")]));
        Face(scope, "pin-wear", ReuseFindings.PinWorn, "wear of the pin", wear.PinWear, limits.PinWear, drawn.PinDiameterM, "pinWear",
            "pinDiameter",
            [.. WearGaps.Undrawn(drawn.PinDiameterM, "pinDiameter", "pin"),
                .. WearGaps.Unfound(found.PinDiameterM, "pinDiameter", "diameter of the pin where it is worn most")]);
        Face(scope, "ear-thickness", ReuseFindings.EarThin, "lost thickness of the ears", wear.EarThicknessLoss, limits.EarThicknessLoss,
            drawn.EarThicknessM, "earThicknessLoss", "earThickness",
            [.. WearGaps.Undrawn(drawn.EarThicknessM, "earThickness", "thickness of the ears"),
                .. WearGaps.Unfound(found.EarThicknessM, "earThickness", "thickness of the ears where they are worn most")]);
        // Width and end distance hardly wear, and need not be measured; what was measured is judged.
        Face(scope, "ear-width", ReuseFindings.EarNarrow, "lost width of the ears", wear.EarWidthLoss, limits.EarWidthLoss,
            drawn.EarWidthM, "earWidthLoss", "earWidth", []);
        Face(scope, "ear-end-distance", ReuseFindings.EarEndWorn, "lost distance from the hole to the end of the ears",
            wear.EarEndDistanceLoss, limits.EarEndDistanceLoss, drawn.EarEndDistanceM,
            "earEndDistanceLoss", "earEndDistance", []);
    }

    private static void CheckHoles(ReuseScope scope, WearFacts wear)
    {
        var (drawn, found, limits, allowance) = (scope.Socket.Nominal, scope.Socket.Measured, scope.Input.Limits,
            WearAllowance.OfHole(scope, scope.Socket.Nominal.PinHoleDiameterM));
        Gap[] gaps =
        [
            .. WearGaps.Undrawn(drawn.PinHoleDiameterM, "pinHoleDiameter", "pin hole"),
            .. found.PinHoleDiametersM.Count < 2 ? [WearGaps.Unmeasured("pinHoleDiameters",
                "two diameters of the pin hole, along the load and across it")] : Array.Empty<Gap>(),
        ];
        var (allowed, doubt) = (allowance.Over(drawn.PinHoleDiameterM), found.UncertaintyM / drawn.PinHoleDiameterM);
        scope.Judge(new("pin-hole-growth", ReuseFindings.PinHoleWorn, "growth of the pin hole", WearChecks.Share(wear.PinHoleGrowth),
            WearChecks.Share(limits.PinHoleGrowth),
            WearChecks.Share(wear.PinHoleGrowth + doubt), Limit.Of(Measure.Fraction(allowed), allowance.Source), "pinHoleGrowth",
                "pinHoleDiameters", gaps));
        scope.Judge(new("pin-hole-ovality", ReuseFindings.PinHoleOval, "ovality of the pin hole", WearChecks.Share(wear.PinHoleOvality),
            WearChecks.Share(limits.Ovality),
            WearChecks.Share(wear.PinHoleOvality + (2 * doubt)), Limit.Of(Measure.Fraction(2 * allowed), allowance.Source), "ovality",
                "pinHoleDiameters", gaps));
    }

    private static void Face(ReuseScope scope, string id, FindingDefinition rule, string what, double? found, double? limit,
        double? drawnM, string limitMember, string member, Gap[] gaps)
    {
        var allowance = WearAllowance.OfFace(scope, drawnM);
        if (found is null && gaps.Length == 0)
        {
            scope.Skip(id, rule);
            return;
        }

        scope.Judge(new(id, rule, what, WearChecks.Share(found), WearChecks.Share(limit),
            WearChecks.Share(found + (scope.Socket.Measured.UncertaintyM / drawnM)), Limit.Of(Measure.Fraction(allowance.Over(drawnM)),
            allowance.Source), limitMember, member, gaps));
    }
}
