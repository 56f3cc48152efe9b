using CalcService.Engine.Compounds;
using CalcService.Engine.Cones;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Proof;

/// <summary>Every finding that a proof load evaluation can raise.</summary>
public static partial class ProofFindings
{
    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<FindingDefinition> All => Catalogue.All;

    private static IReadOnlyList<FindingDefinition> Shared =>
    [
        CompoundFindings.Demonstration, LoadFindings.RatedLoadMissing, LoadFindings.ProofBelowRule, LoadFindings.ProofBelowRated,
        LoadFindings.ProofAboveRating, LoadFindings.ProofAboveShare, LoadFindings.ProofBreaks, .. HardnessFindings.All,
        StatedFacts.NotStated,
        FitFindings.RopeIdentityMissing, FitFindings.RopeFactMissing, FitFindings.WireFitUnknown, FitFindings.WiresDoNotFit,
        FitFindings.RopeDoesNotEnter,
        FitFindings.FitDependsOnTolerance, FitFindings.RopeLoose, .. BoundFindings.OfRopeAndBasket, .. TestFindings.All,
    ];

    // A getter, not a field: nobody says in which order the parts of a class set their fields.
    private static Source Prudence => Source.NotGiven("/docs/proof-load-evaluations");

    /// <summary>Its own class, so that it is made when all parts have been.</summary>
    private static class Catalogue
    {
        public static IReadOnlyList<FindingDefinition> All { get; } =
            FindingKinds.CatalogueOf(typeof(ProofFindings), Shared);
    }
}
