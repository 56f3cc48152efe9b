using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;
using static CalcService.Engine.Findings.FindingKinds;

namespace CalcService.Engine.Sockets;

/// <summary>Findings about rated and proof loads that mean the same in every calculation.</summary>
public static class LoadFindings
{
    /// <summary>What each rule set multiplies the rated load by.</summary>
    internal static IReadOnlyList<Rule> ProofFactors(RuleBook rules) =>
        [.. rules.Matching.Duties.Select(duty => duty.ProofFactor).OfType<Rule>()];

    public static FindingDefinition RatedLoadMissing { get; } = Define("rated-load-missing", "2026-12", Actor.Office, [Severity.Unknown],
        "Without a rated load nobody knows what the end has to carry, and what it is proof loaded to.",
        "The rated load is not given.",
        "Take it from the socket's marks, its maker, or the record of the sling.",
        Source.NotGiven("/docs/proof-load-evaluations"), ProofFactors);

    public static FindingDefinition ProofBelowRule { get; } = Define("proof-below-rule", "2026-12", Actor.Lead, [Severity.Stop],
        "The proof load is less than the rule set asks for.",
        "A proof load of {measured} is meant; the rule set asks for {limit}.",
        "Load to what the rule set asks for, or take the rated load down.",
        limits: ProofFactors);

    public static FindingDefinition ProofBelowRated { get; } = Define("proof-below-rated-load", "2026-12", Actor.Lead, [Severity.Unknown],
        "The proof load is less than the end has to carry: it proves nothing of the rated load.",
        "A proof load of {measured} is meant for a rated load of {limit}.",
        "Ask whoever answers for the code which proof load it wants; check both loads with their units.",
        new("a load that was never reached is not proven", "/docs/proof-load-evaluations", Basis.Derived));

    public static FindingDefinition ProofAboveRating { get; } = Define("proof-above-socket-rating", "2026-12", Actor.Lead, [Severity.Stop],
        "The proof load is, or was, above the proof rating of the socket.",
        "The proof load of {measured} is above the socket's proof rating of {limit}.",
        "Ask the socket's maker, or take a socket that is rated for the proof load. One that was loaded so far is taken out until its "
            + "maker has spoken.",
        new("the rating that the maker of the socket gives, as the request states it", "proofRating", Basis.DataSheet), rules =>
            ProofFactors(rules));

    public static FindingDefinition ProofAboveShare { get; } = Define("proof-above-half-breaking", "2026-12", Actor.Lead,
        [Severity.Caution],
        "The proof load is more than half of the rope's breaking force.",
        "The proof load is {excess} above {limit}, half of the rope's breaking force.",
        "Check proof load and rated load; the rope must not be strained for good.",
        limits: rules => [rules.Matching.ProofShare]);

    public static FindingDefinition ProofBreaks { get; } = Define("proof-at-breaking-force", "2026-12", Actor.Lead, [Severity.Stop],
        "The proof load is, or was, as high as the breaking force of the rope or higher: the rope may part under it, and one that held is "
            + "strained for good.",
        "The proof load of {measured} reaches or passes the rope's breaking force of {limit}.",
        "Do not load. Check proof load, rated load and certificate with their units. A rope that was loaded so far is taken out of use.",
        new("a rope may break at its breaking force", "/docs/proof-load-evaluations", Basis.Derived));
}
