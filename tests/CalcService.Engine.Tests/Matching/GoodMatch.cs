using CalcService.Engine.Compounds;
using CalcService.Engine.Matching;
using CalcService.Engine.Ropes;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Tests.Matching;

/// <summary>A match with which nothing is wrong, for tests that change one thing. The compound is invented.</summary>
public static class GoodMatch
{
    public const double Zero = 273.15;

    public static CompoundSheet Sheet { get; } = new()
    {
        Name = "invented for tests",
        Kits = [new("small", 300e-6, 19)],
        Service = new(-15 + Zero, 60 + Zero),
        Cured = new()
        {
            CompressiveStrengthPa = 120e6, ModulusPa = 6e9, PoissonRatio = .25, VolumetricShrinkage = .02, ShrinkageAfterGel = .006,
        },
        Chemicals = [new("sea water", ChemicalEffect.Resists), new("diesel", ChemicalEffect.Limited),
        new("acetone", ChemicalEffect.Attacked)],
    };

    public static MatchInput Input { get; } = new()
    {
        Compound = Sheet,
        Rope = new()
        {
            DiameterM = .020, Construction = "6x36", Core = RopeCore.Iwrc, Grade = 1770, Finish = WireFinish.Bright,
                CertifiedBreakingForceN = 252e3,
        },
        Socket = new()
        {
            Basket = new() { SmallEndDiameterM = .023, LargeEndDiameterM = .045, LengthM = .100, ToleranceM = .0005 },
            ToleranceStated = true,
            OuterAtSmallEndM = .040,
            OuterAtMouthM = .070,
            BreakingForceN = 310e3,
            RatedLoadN = 60e3,
            ProofRatingN = 120e3,
            RopeRange = new(.018, .020),
            Standard = "EN 13411-4",
        },
        Duty = new() { Use = DutyUse.Sling, LoadN = 25e3, DesignFactor = 5, Efficiency = 1, TypeTested = true },
        Service = new() { LowestK = -10 + Zero, HighestK = 40 + Zero, Chemicals = ["Sea water"] },
        Preparation = new(CoreTreatment.Unlaid, BroomCleaner.Solvent, PlasticLeftIn: false),
        Friction = .2,
        CoolingK = 0,
    };

    public static Outcome<MatchResult> Match(MatchInput input, long steps = Budget.DefaultSteps, bool trace = false) =>
        TerminationMatch.Calculate(input, Editions.Known.Current, new Budget(steps, trace), TestContext.Current.CancellationToken);
}
