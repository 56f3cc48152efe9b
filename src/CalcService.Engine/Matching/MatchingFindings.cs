using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Matching;

/// <summary>
/// Every finding that a match can raise, by theme in the other parts of this class. Those of a rope in a basket are shared with the pour.
/// </summary>
public static partial class MatchingFindings
{
    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<FindingDefinition> All => Catalogue.All;

    private static IReadOnlyList<FindingDefinition> Shared =>
    [
        CompoundFindings.Demonstration, CompoundFindings.SheetSilent, FitFindings.WiresDoNotFit, FitFindings.RopeDoesNotEnter,
            FitFindings.WireFitUnknown,
        FitFindings.FitDependsOnTolerance, FitFindings.RopeLoose, FitFindings.RopeIdentityMissing, FitFindings.RopeFactMissing,
        FitFindings.HighGrade,
        FitFindings.Stainless, FitFindings.SocketWeaker, FitFindings.BasketShort, FitFindings.ConeAngleUnusual,
        FitFindings.GeometryFromMemory, FitFindings.UsedRope, FitFindings.PlasticFilled, BroomFindings.LeftInBroom,
        BroomFindings.CleanerForbidden,
        LoadFindings.RatedLoadMissing, LoadFindings.ProofBelowRule, LoadFindings.ProofBelowRated, LoadFindings.ProofAboveRating,
        LoadFindings.ProofAboveShare, LoadFindings.ProofBreaks,
        BoundFindings.RopeOutsideRange, BoundFindings.SocketMetalUnfit, StatedFacts.Taken, .. BoundFindings.OfRopeAndBasket,
        .. MineFindings.All,
    ];

    private static Source Prudence => Source.NotGiven("/docs/termination-matches");

    private static Source Stated => new("what the request states", "/docs/termination-matches", Basis.Derived);

    private static FindingDefinition Unknown(
        string code, string since, Actor actor, string meaning, string message, string action, Func<RuleBook,
            IReadOnlyList<Rule>>? limits = null) =>
        FindingKinds.Unknown(code, since, actor, meaning, message, action, Prudence, limits);

    /// <summary>Its own class, so that it is made when all parts have been.</summary>
    private static class Catalogue
    {
        public static IReadOnlyList<FindingDefinition> All { get; } =
            FindingKinds.CatalogueOf(typeof(MatchingFindings), Shared);
    }
}
