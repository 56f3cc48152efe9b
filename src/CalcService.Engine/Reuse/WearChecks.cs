using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Reuse;

/// <summary>Measured wear against the limits that came with the request.</summary>
internal static class WearChecks
{
    public static WearFacts Check(ReuseScope scope)
    {
        var (limits, wear) = (scope.Input.Limits, EarWear(scope, BoreWear.Measure(scope)));
        var bore = BoreWear.Gaps(scope.Socket);
        Hold(scope, "bore-growth", wear.BoreGrowth, limits.BoreGrowth, "boreGrowth", "growth of the bore", "stations", ReuseFindings.BoreWorn, bore);
        Hold(scope, "bore-ovality", wear.Ovality, limits.Ovality, "ovality", "ovality", "stations", ReuseFindings.BoreOval, bore);
        CheckTaper(scope, wear.TaperLoss, limits.TaperLoss, bore);
        CheckEars(scope, wear, limits);
        Compare(scope, "pits", Depth(wear.PitDepthM), Depth(limits.PitDepthM), "pitDepth", "depth of pits", "pitDepth", ReuseFindings.PitsDeep,
            wear.PitDepthM is null ? [Unmeasured("pitDepth", "depth of the deepest pit, 0 where there is none")] : []);
        return wear;
    }

    /// <summary>Who set the limits of the request.</summary>
    public static Source StatedBy(ReuseScope scope) => new(scope.Input.Limits.Source ?? "not said", "limits", Basis.DataSheet);

    private static void CheckTaper(ReuseScope scope, double? loss, double? limit, IReadOnlyList<Gap> gaps)
    {
        // Without a limit there is still the geometry: a bore that does not widen holds no cone.
        var allowed = Measure.Fraction(limit ?? 1 - 1e-6);
        scope.MustNotExceed("taper", Share(loss), allowed, ReusePointers.Measured("stations"), ReuseFindings.TaperLost,
            limit is null ? ReuseFindings.TaperLost.Source : StatedBy(scope), limit is null ? gaps : [.. gaps, .. SourceGaps(scope)]);
    }

    private static void CheckEars(ReuseScope scope, WearFacts wear, WearLimits limits)
    {
        var (drawn, found) = (scope.Socket.Nominal, scope.Socket.Measured);
        (string Id, FindingDefinition Rule)[] all =
        [
            ("pin-hole-growth", ReuseFindings.PinHoleWorn), ("pin-hole-ovality", ReuseFindings.PinHoleOval), ("pin-wear", ReuseFindings.PinWorn),
            ("ear-spread", ReuseFindings.EarsSpread), ("ear-thickness", ReuseFindings.EarThin),
        ];
        if (!scope.HasEars)
        {
            foreach (var (id, rule) in all)
            {
                scope.Skip(id, rule);
            }

            return;
        }

        Gap[] hole = [.. Undrawn(drawn.PinHoleDiameterM, "pinHoleDiameter", "pin hole"), .. found.PinHoleDiametersM.Count < 2 ? [Unmeasured("pinHoleDiameters", "two diameters of the pin hole, along the load and across it")] : Array.Empty<Gap>()];
        Gap[] pin = [.. Undrawn(drawn.PinDiameterM, "pinDiameter", "pin"), .. Unfound(found.PinDiameterM, "pinDiameter", "diameter of the pin where it is worn most")];
        Gap[] gap = [.. Undrawn(drawn.EarGapM, "earGap", "gap between the ears"), .. Unfound(found.EarGapM, "earGap", "gap between the ears")];
        Gap[] thick = [.. Undrawn(drawn.EarThicknessM, "earThickness", "thickness of the ears"), .. Unfound(found.EarThicknessM, "earThickness", "thickness of the ears where they are worn most")];
        Hold(scope, "pin-hole-growth", wear.PinHoleGrowth, limits.PinHoleGrowth, "pinHoleGrowth", "growth of the pin hole", "pinHoleDiameters", ReuseFindings.PinHoleWorn, hole);
        Hold(scope, "pin-hole-ovality", wear.PinHoleOvality, limits.Ovality, "ovality", "ovality", "pinHoleDiameters", ReuseFindings.PinHoleOval, hole);
        HoldIfLimited(scope, "pin-wear", wear.PinWear, limits.PinWear, "pinWear", "wear of the pin", "pinDiameter", ReuseFindings.PinWorn, pin);
        Hold(scope, "ear-spread", wear.EarSpread, limits.EarSpread, "earSpread", "spread of the ears", "earGap", ReuseFindings.EarsSpread, gap);
        HoldIfLimited(scope, "ear-thickness", wear.EarThicknessLoss, limits.EarThicknessLoss, "earThicknessLoss", "lost thickness of the ears", "earThickness", ReuseFindings.EarThin, thick);
    }

    private static WearFacts EarWear(ReuseScope scope, WearFacts bore)
    {
        var (drawn, found, trace) = (scope.Socket.Nominal, scope.Socket.Measured, scope.Trace);
        var (holes, hasEars) = (found.PinHoleDiametersM, scope.HasEars);
        double? Change(double? now, double? made) => hasEars && now is { } x && made is { } x0 ? WearFormulas.Growth(x, x0, trace) : null;
        return bore with
        {
            PinHoleGrowth = Change(holes.Count > 0 ? holes.Max() : null, drawn.PinHoleDiameterM),
            PinHoleOvality = hasEars && holes.Count > 1 && drawn.PinHoleDiameterM is { } hole ? WearFormulas.Ovality(holes.Max(), holes.Min(), hole, trace) : null,
            PinWear = -Change(found.PinDiameterM, drawn.PinDiameterM),
            // Ears that have been pressed together have been bent as well.
            EarSpread = Change(found.EarGapM, drawn.EarGapM) is { } spread ? Math.Abs(spread) : null,
            EarThicknessLoss = -Change(found.EarThicknessM, drawn.EarThicknessM),
            PitDepthM = found.PitDepthM,
        };
    }

    /// <summary>Without a limit of its own the part is judged by its strength alone; measured it has to be.</summary>
    private static void HoldIfLimited(ReuseScope scope, string id, double? found, double? limit, string member, string what, string measured, FindingDefinition rule, Gap[] gaps)
    {
        if (limit is not null)
        {
            Hold(scope, id, found, limit, member, what, measured, rule, gaps);
        }
        else if (!scope.IsOpen(id, rule, gaps, Share(found)))
        {
            scope.Skip(id, rule, Share(found));
        }
    }

    private static void Hold(ReuseScope scope, string id, double? found, double? limit, string member, string what, string measured, FindingDefinition rule, IReadOnlyList<Gap> gaps) =>
        Compare(scope, id, Share(found), Share(limit), member, what, measured, rule, gaps);

    private static void Compare(ReuseScope scope, string id, Measure? found, Measure? limit, string member, string what, string measured, FindingDefinition rule, IReadOnlyList<Gap> gaps)
    {
        Gap[] noLimit = limit is null ? [new(ReuseFindings.LimitsMissing, ReusePointers.Limit(member), "the limit for the " + what)] : [];
        scope.MustNotExceed(id, found, limit, ReusePointers.Measured(measured), rule, StatedBy(scope), [.. gaps, .. noLimit, .. SourceGaps(scope)]);
    }

    private static Gap[] SourceGaps(ReuseScope scope) =>
        string.IsNullOrWhiteSpace(scope.Input.Limits.Source) ? [new(ReuseFindings.LimitsMissing, ReusePointers.LimitsSource, "where the limits stand")] : [];

    private static Gap[] Undrawn(double? size, string member, string what) => size is null ? [new(ReuseFindings.DrawingMissing, ReusePointers.Nominal(member), what)] : [];

    private static Gap[] Unfound(double? size, string member, string what) => size is null ? [Unmeasured(member, what)] : [];

    private static Gap Unmeasured(string member, string what) => new(ReuseFindings.MeasurementMissing, ReusePointers.Measured(member), what);

    private static Measure? Share(double? fraction) => fraction is { } value ? Measure.Fraction(value) : null;

    private static Measure? Depth(double? metres) => metres is { } value ? Measure.Length(value) : null;
}
