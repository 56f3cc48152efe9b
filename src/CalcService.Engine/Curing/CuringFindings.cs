using CalcService.Engine.Compounds;
using CalcService.Engine.Cones.Heat;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Releases;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Curing;

/// <summary>Every finding that a cure schedule can raise, by theme in the other parts of this class.</summary>
public static partial class CuringFindings
{
    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<FindingDefinition> All => Catalogue.All;

    private static Source Model => new("gel and cure along the temperatures given", "/docs/cure-schedules", Basis.Derived);

    /// <summary>Its own class, so that it is made when all parts have been.</summary>
    private static class Catalogue
    {
        public static IReadOnlyList<FindingDefinition> All { get; } =
            FindingKinds.CatalogueOf(typeof(CuringFindings), Shared);
    }

    /// <summary>Rope and socket, as in every calculation.</summary>
    private static IReadOnlyList<FindingDefinition> Fit =>
    [
        FitFindings.WiresDoNotFit, FitFindings.RopeDoesNotEnter, FitFindings.FitDependsOnTolerance, FitFindings.RopeLoose,
            FitFindings.SocketWeaker,
        BoundFindings.RopeOutsideRange, BoundFindings.SocketMetalUnfit, .. BoundFindings.OfRopeAndBasket,
    ];

    /// <summary>What means the same in other calculations.</summary>
    private static IReadOnlyList<FindingDefinition> Shared =>
    [
        CompoundFindings.Demonstration, CompoundFindings.SheetSilent, CompoundFindings.ReadingMissing,
        CompoundFindings.OutsidePouringRange, CompoundFindings.DoseUnknown, CompoundFindings.DoseContradictsSheet,
        DoseFindings.DoseAboveMaximum, DoseFindings.DoseAfterHardener, CompoundFindings.GelTimeUnknown,
        CompoundFindings.GelBeforePourEnds, CompoundFindings.PouredLate, BroomFindings.BoreNotClean, ReleaseFindings.HardnessAsked,
        CompoundFindings.GelTimeExtrapolated, CompoundFindings.GelTimeFromOnePoint, StatedFacts.NotStated,
        CompoundFindings.GelOutOfFamily, CompoundFindings.GelSeenInCup, CompoundFindings.GelPlaceUnknown, .. ReleaseFindings.All,
        .. HeatFindings.All, .. Fit,
    ];
}
