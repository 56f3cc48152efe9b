using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Proof;

/// <content>Findings from before the load.</content>
public static partial class ProofFindings
{
    private static IReadOnlyList<FindingDefinition> Before =>
        [ProofLoadUnknown, RatedLoadMissing, ProofBelowRule, RatingMissing, AboveRating, BreakingForceMissing, AboveHalf, CureNotTold, NotCured, ZoneNotSet, SeatingNotComputed];

    private static RuleLimit[] Factors() => [.. Shared.Duties.Select(duty => duty.ProofFactor).OfType<RuleLimit>()];

    public static FindingDefinition ProofLoadUnknown { get; } = Define("proof-load-unknown", Severity.Unknown,
        "Which proof load is asked for is not known: no rule set is named, or it sets none and the request gives none.",
        "The rule set of the proof load, or the proof load itself, is not given.",
        "Name the rule set; for one that sets no proof load give the load that its code asks for.",
        Prudence, Factors());

    public static FindingDefinition RatedLoadMissing { get; } = Define("rated-load-missing", Severity.Unknown,
        "The rule set's proof load is a multiple of the rated load.",
        "The rated load is not given.",
        "Give the rated load of the end, pulled straight.",
        Prudence, Factors());

    public static FindingDefinition ProofBelowRule { get; } = Define("proof-below-rule", Severity.Stop,
        "The proof load is less than the rule set asks for.",
        "A proof load of {measured} is meant; the rule set asks for {limit}.",
        "Load to what the rule set asks for, or take the rated load down.",
        new("DOE-STD-1090; NAVEDTRA 14080", "proof test of slings", Basis.Published), Factors());

    public static FindingDefinition RatingMissing { get; } = Define("proof-rating-missing", Severity.Unknown,
        "Whether the socket may be loaded so far is for its maker to say.",
        "The proof rating of the socket is not given.",
        "Ask the socket's maker.",
        Prudence);

    public static FindingDefinition AboveRating { get; } = Define("test-load-above-rating", Severity.Stop,
        "The test load is, or was, above the proof rating of the socket.",
        "{measured} is above the socket's proof rating of {limit}.",
        "Do not load so far. Where it was done, the socket is taken out until its maker has spoken.",
        new("the socket maker's rating, as the request states it", "proofRating", Basis.DataSheet));

    public static FindingDefinition BreakingForceMissing { get; } = Define("test-share-unknown", Severity.Caution,
        "What share of the rope's breaking force the test load is, isn't known.",
        "The breaking force of the rope is not known.",
        "Give the certificate, or class and grade of the rope.",
        Shared.ProofShare.Source, Shared.ProofShare);

    public static FindingDefinition AboveHalf { get; } = Define("test-load-above-half", Severity.Caution,
        "The test load is more than half of the rope's breaking force.",
        "The test load is {measured} of the breaking force; at most {limit} is remembered.",
        "Check proof load and rated load; the rope must not be strained for good.",
        Shared.ProofShare.Source, Shared.ProofShare);

    public static FindingDefinition CureNotTold { get; } = Define("cure-not-told", Severity.Unknown,
        "Whether the compound is cured enough for the load isn't known.",
        "Nobody says from when on the end may be proof loaded.",
        "Take the time from the cure schedule and from the hardness.",
        Prudence);

    public static FindingDefinition NotCured { get; } = Define("not-cured-for-proof", Severity.Stop,
        "The test is before the time from which on the cure allows it.",
        "The test is {measured} too early.",
        "Wait, or warm the end as the sheet allows.",
        new("proof before the least cured place reaches its degree", "docs/cure-schedules.md", Basis.Derived));

    public static FindingDefinition ZoneNotSet { get; } = Define("no-exclusion-zone", Severity.Caution,
        "A rope that lets go under a test load sweeps what is near and in line with it.",
        "Nobody says that people are kept away from the test.",
        "Close off the length of the rope and both ends in line with it before loading.",
        Source.CommonPractice);

    public static FindingDefinition SeatingNotComputed { get; } = Define("seating-not-computed", Severity.Caution,
        "How far the cone may be expected to seat could not be computed.",
        "The expected seating is not computed: {why}.",
        "Give what is missing; the answer otherwise stands.",
        Model, Shared.Friction.Low, Shared.Friction.High, Shared.ShrinkageShare, Shared.WallRatio, Shared.RadialStiffening, Rules.ShrinkageSpread, Rules.Steps[0], Rules.Steps[1], Rules.Steps[2], Rules.Steps[3]);
}
