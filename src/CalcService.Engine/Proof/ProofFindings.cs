using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;
using CalcService.Engine.Rules.Edition202611;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Proof;

/// <summary>Every finding that a proof load evaluation can raise.</summary>
public static partial class ProofFindings
{
    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<FindingDefinition> All => Catalogue.All;

    // Getters, not fields: nobody says in which order the parts of a class set their fields.
    private static ProofRules Rules => ProofRules2026Nov.Rules;

    private static MatchingRules Shared => MatchingRules2026Nov.Rules;

    private static Source Prudence => Source.NotGiven("docs/proof-load-evaluations.md");

    private static Source Model => new("load transfer in the cone", "docs/termination-matches.md", Basis.Derived);

    private static FindingDefinition Define(string code, Severity severity, string meaning, string message, string action, Source source, params RuleLimit[] limits) =>
        new(code, [severity], meaning, message, action, source, limits);

    /// <summary>Its own class, so that it is made when all parts have been.</summary>
    private static class Catalogue
    {
        public static IReadOnlyList<FindingDefinition> All { get; } =
            [.. new[] { CompoundFindings.Demonstration, LoadFindings.RatedLoadMissing, LoadFindings.ProofAboveRating, LoadFindings.ProofAboveShare }.Concat(Before).Concat(After).OrderBy(definition => definition.Code, StringComparer.Ordinal)];
    }
}
