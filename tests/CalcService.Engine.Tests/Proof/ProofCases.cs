using CalcService.Engine.Compounds;
using CalcService.Engine.Cones;
using CalcService.Engine.Findings;
using CalcService.Engine.Ropes;
using CalcService.Engine.Proof;
using CalcService.Engine.Tests.Findings;

namespace CalcService.Engine.Tests.Proof;

/// <summary>A test with one thing wrong, the finding that has to say so, and the check that has to show it.</summary>
/// <param name="Code">The finding.</param>
/// <param name="Severity">How much it weighs.</param>
/// <param name="Pointer">The member it points to.</param>
/// <param name="Check">The check; null where none stands behind the finding.</param>
/// <param name="Change">What is wrong with the test.</param>
/// <param name="Besides">Codes that follow from the same fault.</param>
public sealed record ProofCase(
    string Code, Severity Severity, string Pointer, string? Check, Func<ProofInput, ProofInput> Change,
    params IReadOnlyList<string> Besides) : IFindingCase
{
    public Outcome<ProofResult> Evaluate() => GoodProof.Evaluate(Change(GoodProof.After));
}

/// <summary>At least one test for each finding and severity.</summary>
public static class ProofCases
{
    private const string Steps = "/measured/steps";

    public static IReadOnlyList<ProofCase> All { get; } =
    [
        new("compound-demonstration", Severity.Caution, "/compound", null,
            input => input with { Compound = input.Compound with { Demonstration = true } }),
        new("proof-load-unknown", Severity.Unknown, "/ruleSet", "proof-load", input => input with { RuleSet = null, ProofLoadN = 100e3 }),
        new("proof-load-unknown", Severity.Unknown, "/test/proofLoad", "proof-load", input => input with { RuleSet = "hoist-rope" }),
        new("proof-load-unknown", Severity.Unknown, "/ruleSet", "proof-load", input => input with { RuleSet = null, RatedLoadN = null }),
        new("rated-load-missing", Severity.Unknown, "/test/ratedLoad", "proof-load", input => input with { RatedLoadN = null }),
        new("rated-load-missing", Severity.Unknown, "/test/ratedLoad", "proof-load",
        input => input with { RatedLoadN = null, ProofLoadN = 100.8e3 }),
        new("proof-below-rule", Severity.Stop, "/test/proofLoad", "proof-load", input => input with { ProofLoadN = 100.7e3 }),
        new("facts-not-stated", Severity.Unknown, "/socket/proofRating", "socket-rating", input => input with { ProofRatingN = null }),
        new("proof-above-socket-rating", Severity.Stop, "/socket/proofRating", "socket-rating",
        input => input with { ProofRatingN = 100.7e3 }),
        new("facts-not-stated", Severity.Unknown, "/rope/certificate/breakingForce", "half-of-breaking-force",
            input => input with { Rope = input.Rope with { CertifiedBreakingForceN = null, Grade = null } }, "rope-fact-missing"),
        new("proof-below-rated-load", Severity.Unknown, "/test/proofLoad", "proof-load", Meant(50.3e3)),
        new("wire-fit-unknown", Severity.Unknown, "/rope/wireCount", null,
            input => input with { Rope = input.Rope with { Construction = "35x7", MetallicAreaM2 = null } }, "seating-not-computed"),
        new("rope-identity-missing", Severity.Unknown, "/rope/construction", null,
        input => input with { Rope = input.Rope with { Construction = null } }),
        new("rope-fact-missing", Severity.Caution, "/rope/finish", null,
        input => input with { Rope = input.Rope with { Finish = WireFinish.Unknown } }),
        new("proof-above-half-breaking", Severity.Caution, "/test/proofLoad", "half-of-breaking-force",
        input => input with { Rope = input.Rope with { CertifiedBreakingForceN = 201e3 } }),
        new("facts-not-stated", Severity.Unknown, "/test/proofLoadFrom", "cure", input => input with { ProofLoadFrom = null }),
        new("not-cured-for-proof", Severity.Stop, "/testedAt", "cure",
        input => input with { ProofLoadFrom = input.TestedAt.AddMinutes(1) }),
        // A rope may break at its breaking force: 252 kN.
        new("proof-at-breaking-force", Severity.Stop, "/test/proofLoad", "half-of-breaking-force", Meant(252e3)),
        new("proof-at-breaking-force", Severity.Stop, "/test/proofLoad", "half-of-breaking-force", Meant(299e3)),
        new("proof-above-half-breaking", Severity.Caution, "/test/proofLoad", "half-of-breaking-force", Meant(251.9e3)),
        new("facts-not-stated", Severity.Caution, "/test/exclusionZone", "exclusion-zone", input => input with { ExclusionZone = null }),
        new("facts-not-stated", Severity.Unknown, "/test/exclusionZone", "exclusion-zone",
        input => input with { ExclusionZone = Fact.Unknown }),
        new("no-exclusion-zone", Severity.Stop, "/test/exclusionZone", "exclusion-zone", input => input with { ExclusionZone = Fact.No }),
        new("no-exclusion-zone", Severity.Stop, "/test/exclusionZone", "exclusion-zone",
        input => input with { ExclusionZone = Fact.No, Purpose = Purpose.Quote }),
        new("facts-not-stated", Severity.Unknown, "/test/hardness/value", "hardness", Hard(new())),
        new("facts-not-stated", Severity.Caution, "/test/hardness/value", "hardness",
        input => Hard(new())(input) with { Purpose = Purpose.Plan, Measured = null }),
        new("facts-not-stated", Severity.Unknown, "/test/hardness/method", "hardness", Hard(new("another", 45, HardnessPlace.Lip))),
        new("facts-not-stated", Severity.Unknown, "/test/hardness/method", "hardness", Hard(new(null, 45, HardnessPlace.Lip))),
        new("hardness-low", Severity.Stop, "/test/hardness/value", "hardness", Hard(new("indenter", 39.9, HardnessPlace.Lip))),
        new("hardness-not-at-lip", Severity.Caution, "/test/hardness/readAt", "hardness-place",
        Hard(new("indenter", 45, HardnessPlace.WitnessSample))),
        new("hardness-not-at-lip", Severity.Caution, "/test/hardness/readAt", "hardness-place", Hard(new("indenter", 45))),
        new("seating-not-computed", Severity.Caution, "/compound/sheet/cured", null,
        input => input with { Compound = input.Compound with { Cured = new() } }),
        new("facts-not-stated", Severity.Unknown, "/measured/wireSlip", "wire-slip", Seen(seen => seen with { WireSlip = null })),
        new("facts-not-stated", Severity.Unknown, "/measured/cracks", "cracks", Seen(seen => seen with { Cracks = null })),
        new("facts-not-stated", Severity.Unknown, "/measured/asymmetry", "asymmetry", Seen(seen => seen with { Asymmetry = null })),
        new("facts-not-stated", Severity.Unknown, "/measured/creepUnderHold", "creep", Seen(seen => seen with { CreepUnderHold = null })),
        new("facts-not-stated", Severity.Unknown, Steps, "test-load", Read()),
        new("facts-not-stated", Severity.Unknown, "/measured/creepUnderHold", "creep",
            Seen(seen => seen with { CreepUnderHold = Fact.Unknown })),
        new("facts-not-stated", Severity.Caution, "/test/proofLoadFrom", "cure",
            input => input with { Purpose = Purpose.Plan, ProofLoadFrom = null, Measured = null }),
        new("wire-slipped", Severity.Stop, "/measured/wireSlip", "wire-slip", Seen(seen => seen with { WireSlip = Fact.Yes })),
        new("cracked-under-proof", Severity.Stop, "/measured/cracks", "cracks", Seen(seen => seen with { Cracks = Fact.Yes })),
        new("seated-askew", Severity.Stop, "/measured/asymmetry", "asymmetry", Seen(seen => seen with { Asymmetry = Fact.Yes })),
        new("creep-under-hold", Severity.Stop, "/measured/creepUnderHold", "creep", Seen(seen => seen with { CreepUnderHold = Fact.Yes })),
        new("test-load-short", Severity.Stop, Steps, "test-load", Read(new MeasuredStep(95.7e3, .0013))),
        new("test-load-over", Severity.Caution, Steps, "test-load", Read(new MeasuredStep(100.9e3, .0013))),
        new("seating-not-read", Severity.Caution, Steps + "/0/seating", "seating", Read(new MeasuredStep(100e3, null))),
        new("seating-not-comparable", Severity.Caution, "/test/seatingReadAt", "seating",
        input => input with { ReadAt = SeatingPlace.Unknown }),
        new("seating-not-comparable", Severity.Caution, "/test/readUnderLoad", "seating", input => input with { ReadUnderLoad = false }),
        new("seating-little", Severity.Caution, Steps + "/0/seating", "seating-step-1", Read(new MeasuredStep(100e3, .0002))),
        new("seating-much", Severity.Caution, Steps + "/0/seating", "seating-step-1", Read(new MeasuredStep(100e3, .0040))),
        new("seating-much", Severity.Caution, Steps + "/0/seating", "seating-step-1", Read(new MeasuredStep(100e3, .0200))),
        // Thicker than the rope of 20 mm.
        new("seated-through", Severity.Stop, Steps + "/0/seating", "seating-step-1", Read(new MeasuredStep(100e3, .0201))),
        new("seated-through", Severity.Stop, Steps + "/0/seating", "seating-step-1",
        input => Read(new MeasuredStep(100e3, .0500))(input) with { ReadAt = SeatingPlace.Unknown }),
        new("seating-contradicts", Severity.Unknown, Steps + "/0/seating", "seating-step-1", Read(new MeasuredStep(100e3, -.0001))),
    ];

    /// <summary>A load that is meant and not yet brought up.</summary>
    private static Func<ProofInput, ProofInput> Meant(double proofN) =>
        input => input with { RuleSet = "general", ProofLoadN = proofN, ProofRatingN = 300e3, Measured = null };

    /// <summary>A sheet that asks for a hardness of 40, and what was read.</summary>
    private static Func<ProofInput, ProofInput> Hard(HardnessReading read) =>
        input => input with { Compound = input.Compound with { Hardness = new("indenter", 40) }, Hardness = read };

    private static Func<ProofInput, ProofInput> Seen(Func<ProofObservations, ProofObservations> change) => input =>
        input with { Observations = change(input.Observations) };

    private static Func<ProofInput, ProofInput> Read(params IReadOnlyList<MeasuredStep> steps) => input => input with { Measured = steps };
}
