using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Reuse;

/// <summary>Every finding that an assessment can raise, by theme in the other parts of this class.</summary>
public static partial class ReuseFindings
{
    private const string Document = "/docs/reuse-assessments";

    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<FindingDefinition> All => Catalogue.All;

    private static IReadOnlyList<FindingDefinition> Shared =>
    [
        LoadFindings.RatedLoadMissing, LoadFindings.ProofAboveRating, BoundFindings.NoCone,
        BoundFindings.SocketMetalUnfit, StatedFacts.Taken, .. OfTheRope,
    ];

    private static IReadOnlyList<FindingDefinition> OfTheRope =>
    [
        FitFindings.SocketWeaker, FitFindings.RopeDoesNotEnter, FitFindings.RopeLoose, FitFindings.WiresDoNotFit,
        FitFindings.FitDependsOnTolerance, FitFindings.WireFitUnknown, FitFindings.RopeIdentityMissing, FitFindings.RopeFactMissing,
        BoundFindings.StrengthImplausible,
        BoundFindings.RopeThin, BoundFindings.RopeThick, BoundFindings.BasketTooShort, LoadFindings.ProofAboveShare,
        LoadFindings.ProofBreaks,
    ];

    /// <summary>Those on what the socket is meant for. They decide, and leave the socket itself what it is.</summary>
    internal static IReadOnlyList<FindingDefinition> OfTheUse =>
        [.. OfTheRope, LoadFindings.ProofAboveRating, IntendedAboveRating, RopeStrengthUnknown, BreakingForceMissing, MayBeWeaker];

    /// <summary>Those that only list what nobody said: one of a kind, with everything that is missing in it.</summary>
    internal static IReadOnlyList<FindingDefinition> OfLists =>
    [
        IdentityMissing, SteelUnknown, HistoryMissing, RemovalUnknown, CrackSearchMissing, VisualMissing, MeasurementMissing,
            DrawingMissing,
        LimitsMissing,
    ];

    private static Source Prudence => Source.NotGiven(Document);

    /// <summary>What the operator or maker allows, as the request states it.</summary>
    private static Source Stated => new("the maker's or operator's limits, as the request states them", "limits", Basis.DataSheet);

    private static Source Physics(string clause) => new(Document, clause, Basis.Derived);

    private static FindingDefinition Unknown(
        string code, string since, Actor actor, string meaning, string message, string action, Func<RuleBook,
            IReadOnlyList<Rule>>? limits = null) =>
        FindingKinds.Unknown(code, since, actor, meaning, message, action, Prudence, limits);

    /// <summary>Its own class, so that it is made when all parts have been.</summary>
    private static class Catalogue
    {
        public static IReadOnlyList<FindingDefinition> All { get; } =
            FindingKinds.CatalogueOf(typeof(ReuseFindings), Shared);
    }
}
