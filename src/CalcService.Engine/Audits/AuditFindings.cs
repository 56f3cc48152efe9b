using CalcService.Engine.Compounds;
using CalcService.Engine.Cones;
using CalcService.Engine.Cones.Heat;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Releases;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Audits;

/// <summary>Every finding that an audit can raise, by theme in the other parts of this class.</summary>
public static partial class AuditFindings
{
    private const string Document = "/docs/record-audits";

    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<FindingDefinition> All => Catalogue.All;

    /// <summary>What means the same in the calculations that planned the work.</summary>
    private static IReadOnlyList<FindingDefinition> Shared =>
    [
        .. HardnessFindings.All,
        CompoundFindings.Demonstration, CompoundFindings.SheetSilent, CompoundFindings.OutsidePouringRange, SteelFindings.SteelAtDewPoint,
        SteelFindings.SteelNearDewPoint, CompoundFindings.DoseUnknown, CompoundFindings.DoseContradictsSheet, DoseFindings.DoseAboveMaximum,
        DoseFindings.DoseAfterHardener, CompoundFindings.GelTimeUnknown, CompoundFindings.GelBeforePourEnds, CompoundFindings.PouredLate,
        CompoundFindings.GelTimeFromOnePoint, CompoundFindings.GelOutOfFamily, CompoundFindings.GelSeenInCup,
        CompoundFindings.GelPlaceUnknown,
        FitFindings.WiresDoNotFit, FitFindings.RopeDoesNotEnter, FitFindings.WireFitUnknown, FitFindings.FitDependsOnTolerance,
        FitFindings.RopeLoose,
        LongAgoFindings.ReadingsOld, LongAgoFindings.BroomDriedLongAgo, LongAgoFindings.SheetOld, FitFindings.HighGrade,
        FitFindings.Stainless, FitFindings.UsedRope, FitFindings.GeometryFromMemory,
        FitFindings.SocketWeaker, LoadFindings.ProofBelowRated, LoadFindings.ProofAboveRating, LoadFindings.ProofAboveShare,
        LoadFindings.ProofBreaks, .. ReleaseFindings.All, .. HeatFindings.All, .. BoundFindings.OfRopeAndBasket,
        BoundFindings.SocketMetalUnfit, .. TestFindings.All,
    ];

    private static Source Prudence => Source.NotGiven(Document);

    private static Source Record(string clause) => new(Document, clause, Basis.Derived);

    /// <summary>Its own class, so that it is made when all parts have been.</summary>
    private static class Catalogue
    {
        public static IReadOnlyList<FindingDefinition> All { get; } =
            FindingKinds.CatalogueOf(typeof(AuditFindings), Shared);
    }
}
