using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Reuse;

/// <summary>Measured wear of every part: against its limit, or against what drawing and reading leave.</summary>
internal static class WearChecks
{
    public static WearFacts Check(ReuseScope scope)
    {
        var (socket, limits, wear) = (scope.Socket, scope.Input.Limits, EarWear.Measure(scope, BoreWear.Measure(scope)));
        var (gaps, doubt) = (BoreWear.Gaps(socket), socket.Measured.UncertaintyM);
        double Bore(StationWear one) => WearAllowance.OfBore(scope, one.NominalM).Over(one.NominalM);
        var granted = WearAllowance.OfBore(scope, socket.Nominal.Basket.SmallEndDiameterM).Source;
        var (growth, grown, mostGrown) = WearJudge.Worst(limits.BoreGrowth,
            [.. wear.Stations.Select(one => (one.Growth, Bore(one), doubt / one.NominalM))]);
        scope.Judge(new("bore-growth", ReuseFindings.BoreWorn, "growth of the bore", Share(growth), Share(limits.BoreGrowth),
            Share(mostGrown), Limit.Of(Measure.Fraction(grown), granted), "boreGrowth", "stations", gaps));
        // Two readings across one section may be off either way, each.
        var (ovality, oval, mostOval) = WearJudge.Worst(limits.Ovality,
            [.. wear.Stations.Select(one => (one.Ovality, 2 * Bore(one), 2 * doubt / one.NominalM))]);
        scope.Judge(new("bore-ovality", ReuseFindings.BoreOval, "ovality of the bore", Share(ovality), Share(limits.Ovality),
            Share(mostOval), Limit.Of(Measure.Fraction(oval), granted), "ovality", "stations", gaps));
        CheckTaper(scope, wear, limits.TaperLoss, gaps);
        EarWearChecks.Check(scope, wear);
        CheckOutside(scope);
        var reading = WearAllowance.OfReading(scope);
        scope.Judge(new("pits", ReuseFindings.PitsDeep, "depth of pits", Depth(wear.PitDepthM), Depth(limits.PitDepthM),
            Depth(wear.PitDepthM + doubt), Limit.Of(Measure.Length(reading.LengthM), reading.Source),
            "pitDepth", "pitDepth", wear.PitDepthM is null ? [WearGaps.Unmeasured("pitDepth",
                "depth of the deepest pit, 0 where there is none")] : []));
        DrawingChecks.Check(scope);
        MetalLeftChecks.Check(scope, wear);
        return wear;
    }

    internal static Measure? Share(double? fraction) => fraction is { } value ? Measure.Fraction(value) : null;

    private static void CheckTaper(ReuseScope scope, WearFacts wear, double? limit, IReadOnlyList<Gap> gaps)
    {
        // Without a limit there is still the geometry: a bore that does not widen holds no cone. How far it may widen less, its growth
        // says.
        var allowed = limit is { } stated ? Limit.Of(Measure.Fraction(stated), WearJudge.StatedBy(scope))
            : Limit.Of(Measure.Fraction(1 - 1e-6));
        var (loss, at) = (new Judged(Share(wear.TaperLoss), allowed), ReusePointers.Measured("stations"));
        scope.MustNotExceed("taper", loss, at, ReuseFindings.TaperLost, limit is null ? gaps
            : [.. gaps, .. WearJudge.SourceGaps(scope), .. WearJudge.DoubtGaps(scope, "loss of taper", loss,
                Share(MostTaperLoss(scope, wear)), at)]);
    }

    /// <summary>The lower bore larger and the upper one smaller than read.</summary>
    private static double? MostTaperLoss(ReuseScope scope, WearFacts wear)
    {
        var (doubt, taper) = (scope.Socket.Measured.UncertaintyM, scope.Socket.Nominal.Basket.Taper);
        return wear.Stations.Count < 2 ? null : wear.Stations.Zip(wear.Stations.Skip(1), (lower, upper) => WearFormulas.TaperLoss(
            lower.LargestM + doubt, upper.LargestM - doubt, upper.FromSmallEndM - lower.FromSmallEndM, taper, Trace.None)).Max();
    }

    private static void CheckOutside(ReuseScope scope)
    {
        var (drawn, found) = (scope.Socket.Nominal, scope.Socket.Measured);
        (double? Drawn, double? Found)[] ends = [(drawn.OuterAtSmallEndM, found.OuterAtSmallEndM),
            (drawn.OuterAtMouthM, found.OuterAtMouthM)];
        var (loss, allowed, most) = WearJudge.Worst(scope.Input.Limits.OutsideLoss,
            [.. ends.Where(end => end is { Drawn: not null, Found: not null })
                .Select(end => (1 - (end.Found!.Value / end.Drawn!.Value), WearAllowance.OfFace(scope, end.Drawn).Over(end.Drawn),
                    found.UncertaintyM / end.Drawn.Value))]);
        scope.Judge(new("outside", ReuseFindings.OutsideWorn, "loss of the outside of the basket", Share(loss),
            Share(scope.Input.Limits.OutsideLoss),
            Share(most), Limit.Of(Measure.Fraction(allowed), WearAllowance.OfFace(scope, drawn.OuterAtMouthM).Source), "outsideLoss",
                "outerDiameter",
            [
                .. drawn is { OuterAtSmallEndM: not null, OuterAtMouthM: not null } ? []
                    : WearGaps.Undrawn(null, "outerDiameter", "outside of the basket"),
                .. found is { OuterAtSmallEndM: not null, OuterAtMouthM: not null } ? []
                    : WearGaps.Unfound(null, "outerDiameter", "outside of the basket"),
            ]));
    }

    private static Measure? Depth(double? metres) => metres is { } value ? Measure.Length(value) : null;
}

/// <summary>What wear can't be told without.</summary>
internal static class WearGaps
{
    public static Gap[] Undrawn(double? size, string member, string what) =>
        size is null ? [new(ReuseFindings.DrawingMissing, ReusePointers.Nominal(member), what)] : [];

    public static Gap[] Unfound(double? size, string member, string what) => size is null ? [Unmeasured(member, what)] : [];

    public static Gap Unmeasured(string member, string what) => new(ReuseFindings.MeasurementMissing, ReusePointers.Measured(member), what);
}
