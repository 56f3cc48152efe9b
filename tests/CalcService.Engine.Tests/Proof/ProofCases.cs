using CalcService.Engine.Cones;
using CalcService.Engine.Findings;
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
    string Code, Severity Severity, string Pointer, string? Check, Func<ProofInput, ProofInput> Change, params IReadOnlyList<string> Besides) : IFindingCase
{
    public Outcome<ProofResult> Evaluate() => GoodProof.Evaluate(Change(GoodProof.After));
}

/// <summary>At least one test for each finding and severity.</summary>
public static class ProofCases
{
    private const string Steps = "/measured/steps";

    public static IReadOnlyList<ProofCase> All { get; } =
    [
        new("compound-demonstration", Severity.Caution, "/compound", null, input => input with { Compound = input.Compound with { Demonstration = true } }),
        new("proof-load-unknown", Severity.Unknown, "/ruleSet", "proof-load", input => input with { RuleSet = null, ProofLoadN = 100e3 }),
        new("proof-load-unknown", Severity.Unknown, "/test/proofLoad", "proof-load", input => input with { RuleSet = "hoist-rope" }),
        new("proof-load-unknown", Severity.Unknown, "/ruleSet", "proof-load", input => input with { RuleSet = null, RatedLoadN = null }),
        new("rated-load-missing", Severity.Unknown, "/test/ratedLoad", "proof-load", input => input with { RatedLoadN = null }),
        new("rated-load-missing", Severity.Unknown, "/test/ratedLoad", "proof-load", input => input with { RatedLoadN = null, ProofLoadN = 100.8e3 }),
        new("proof-below-rule", Severity.Stop, "/test/proofLoad", "proof-load", input => input with { ProofLoadN = 100.7e3 }),
        new("facts-not-stated", Severity.Unknown, "/socket/proofRating", "socket-rating", input => input with { ProofRatingN = null }),
        new("proof-above-socket-rating", Severity.Stop, "/socket/proofRating", "socket-rating", input => input with { ProofRatingN = 100.7e3 }),
        new("test-share-unknown", Severity.Caution, "/rope/certificate/breakingForce", null, input => input with { Rope = input.Rope with { CertifiedBreakingForceN = null, Grade = null } }),
        new("proof-above-half-breaking", Severity.Caution, "/test/proofLoad", "half-of-breaking-force", input => input with { Rope = input.Rope with { CertifiedBreakingForceN = 201e3 } }),
        new("facts-not-stated", Severity.Unknown, "/test/proofLoadFrom", "cure", input => input with { ProofLoadFrom = null }),
        new("not-cured-for-proof", Severity.Stop, "/testedAt", "cure", input => input with { ProofLoadFrom = input.TestedAt.AddMinutes(1) }),
        new("no-exclusion-zone", Severity.Caution, "/test/exclusionZone", null, input => input with { ExclusionZone = null }),
        new("no-exclusion-zone", Severity.Caution, "/test/exclusionZone", null, input => input with { ExclusionZone = false }),
        new("seating-not-computed", Severity.Caution, "/compound/sheet/cured", null, input => input with { Compound = input.Compound with { Cured = new() } }),
        new("facts-not-stated", Severity.Unknown, "/measured/wireSlip", "wire-slip", Seen(seen => seen with { WireSlip = null })),
        new("facts-not-stated", Severity.Unknown, "/measured/cracks", "cracks", Seen(seen => seen with { Cracks = null })),
        new("facts-not-stated", Severity.Unknown, "/measured/asymmetry", "asymmetry", Seen(seen => seen with { Asymmetry = null })),
        new("facts-not-stated", Severity.Unknown, "/measured/creepUnderHold", "creep", Seen(seen => seen with { CreepUnderHold = null })),
        new("facts-not-stated", Severity.Unknown, Steps, "test-load", Read()),
        new("facts-not-stated", Severity.Unknown, "/measured/creepUnderHold", "creep",
            Seen(seen => seen with { CreepUnderHold = Fact.Unknown })),
        new("facts-not-stated", Severity.Caution, "/test/proofLoadFrom", "cure",
            input => input with { Purpose = Purpose.Plan, ProofLoadFrom = null }),
        new("wire-slipped", Severity.Stop, "/measured/wireSlip", "wire-slip", Seen(seen => seen with { WireSlip = Fact.Yes })),
        new("cracked-under-proof", Severity.Stop, "/measured/cracks", "cracks", Seen(seen => seen with { Cracks = Fact.Yes })),
        new("seated-askew", Severity.Stop, "/measured/asymmetry", "asymmetry", Seen(seen => seen with { Asymmetry = Fact.Yes })),
        new("creep-under-hold", Severity.Stop, "/measured/creepUnderHold", "creep", Seen(seen => seen with { CreepUnderHold = Fact.Yes })),
        new("test-load-short", Severity.Stop, Steps, "test-load", Read(new MeasuredStep(95.7e3, .0013))),
        new("test-load-over", Severity.Caution, Steps, "test-load", Read(new MeasuredStep(100.9e3, .0013))),
        new("seating-not-read", Severity.Caution, Steps + "/0/seating", "seating", Read(new MeasuredStep(100e3, null))),
        new("seating-not-comparable", Severity.Caution, "/test/seatingReadAt", "seating", input => input with { ReadAt = SeatingPlace.Unknown }),
        new("seating-not-comparable", Severity.Caution, "/test/readUnderLoad", "seating", input => input with { ReadUnderLoad = false }),
        new("seating-little", Severity.Caution, Steps + "/0/seating", "seating-step-1", Read(new MeasuredStep(100e3, .0002))),
        new("seating-much", Severity.Caution, Steps + "/0/seating", "seating-step-1", Read(new MeasuredStep(100e3, .0040))),
    ];

    private static Func<ProofInput, ProofInput> Seen(Func<ProofObservations, ProofObservations> change) => input => input with { Observations = change(input.Observations) };

    private static Func<ProofInput, ProofInput> Read(params IReadOnlyList<MeasuredStep> steps) => input => input with { Measured = steps };
}
