using CalcService.Engine.Compounds;
using CalcService.Engine.Cones;
using CalcService.Engine.Findings;
using CalcService.Engine.Proof;
using CalcService.Engine.Ropes;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Tests.Proof;

/// <summary>A test with which nothing is wrong, for tests that change one thing. The compound is invented.</summary>
public static class GoodProof
{
    public static CompoundSheet Sheet { get; } = new()
    {
        Name = "invented for tests",
        Kits = [new("small", 300e-6, 19)],
        Cured = new() { ModulusPa = 6e9, PoissonRatio = .25, ShrinkageAfterGel = .004 },
    };

    public static ProofInput Before { get; } = new()
    {
        TestedAt = new(2026, 3, 12, 14, 0, 0, TimeSpan.FromHours(1)),
        RuleSet = "sling",
        Compound = Sheet,
        Rope = new() { DiameterM = .020, Construction = "6x36", Core = RopeCore.Iwrc, Grade = 1770, Finish = WireFinish.Bright,
        CertifiedBreakingForceN = 252e3, MetallicAreaM2 = 184e-6 },
        Basket = new() { SmallEndDiameterM = .023, LargeEndDiameterM = .045, LengthM = .100 },
        OuterAtSmallEndM = .023 * 1.6,
        OuterAtMouthM = .045 * 1.6,
        ProofRatingN = 130e3,
        // Twice this is 40 % of the breaking force.
        RatedLoadN = .2 * 252e3,
        ProofLoadFrom = new(2026, 3, 12, 12, 0, 0, TimeSpan.FromHours(1)),
        ExclusionZone = Fact.Yes,
        ReadAt = SeatingPlace.Mouth,
        ReadUnderLoad = true,
    };

    public static ProofInput After { get; } = Before with
    {
        Measured = [new(50.4e3, .0008), new(100e3, .0013)],
        Observations = new() { WireSlip = Fact.No, Cracks = Fact.No, Asymmetry = Fact.No, CreepUnderHold = Fact.No },
    };

    public static Outcome<ProofResult> Evaluate(ProofInput input, bool trace = false) =>
        ProofLoadEvaluation.Calculate(input, Editions.Known.Current, new Budget(Budget.DefaultSteps, trace),
            TestContext.Current.CancellationToken);
}
