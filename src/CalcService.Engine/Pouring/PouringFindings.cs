using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Pouring;

/// <summary>Every finding that a pour plan can raise, by theme in the other parts of this class.</summary>
public static partial class PouringFindings
{
    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<FindingDefinition> All => Catalogue.All;

    private static IReadOnlyList<FindingDefinition> Shared =>
    [
        CompoundFindings.SheetSilent, CompoundFindings.Demonstration, CompoundFindings.DoseContradictsSheet,
            CompoundFindings.OutsidePouringRange,
        CompoundFindings.ReadingMissing, CompoundFindings.DoseUnknown, CompoundFindings.GelTimeUnknown,
        CompoundFindings.GelTimeExtrapolated,
        CompoundFindings.GelTimeFromOnePoint, LongAgoFindings.SheetOld, LongAgoFindings.ReadingsOld, LongAgoFindings.BroomDriedLongAgo,
        DoseFindings.DoseAboveMaximum, DoseFindings.DoseAfterHardener, SteelFindings.SteelAtDewPoint, SteelFindings.SteelNearDewPoint,
        FitFindings.WiresDoNotFit, FitFindings.RopeDoesNotEnter, FitFindings.WireFitUnknown, FitFindings.FitDependsOnTolerance,
        FitFindings.RopeLoose,
        FitFindings.RopeIdentityMissing, FitFindings.RopeFactMissing, FitFindings.HighGrade, FitFindings.Stainless,
        FitFindings.SocketWeaker,
        FitFindings.BasketShort, FitFindings.ConeAngleUnusual, FitFindings.GeometryFromMemory, FitFindings.UsedRope,
        .. BoundFindings.OfRopeAndBasket,
        BoundFindings.RopeOutsideRange, BoundFindings.SocketMetalUnfit, BoundFindings.RopeTilted, BoundFindings.NoStraightRope,
        BoundFindings.StraightRopeShort, BroomFindings.LeftInBroom, BroomFindings.CleanerForbidden, BroomFindings.BoreNotClean,
        BroomFindings.PartContradicted, StatedFacts.NotStated,
    ];

    // A getter, not a field: nobody says in which order the parts of a class set their fields.
    private static Source Prudence => Source.NotGiven("/docs/pour-plans");

    private static Source Geometry => FitFindings.Geometry;

    private static FindingDefinition Unknown(string code, string since, Actor actor, string meaning, string message, string action) =>
        FindingKinds.Unknown(code, since, actor, meaning, message, action, Prudence);

    /// <summary>Its own class, so that it is made when all parts have been.</summary>
    private static class Catalogue
    {
        public static IReadOnlyList<FindingDefinition> All { get; } =
            FindingKinds.CatalogueOf(typeof(PouringFindings), Shared);
    }
}
