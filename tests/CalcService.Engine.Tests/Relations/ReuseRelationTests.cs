using CalcService.Engine.Findings;
using CalcService.Engine.Matching;
using CalcService.Engine.Reuse;
using CalcService.Engine.Tests.Matching;
using CalcService.Engine.Tests.Numerics;
using CalcService.Engine.Tests.Reuse;
using CsCheck;
using static CalcService.Engine.Tests.Reuse.GoodSocket;

namespace CalcService.Engine.Tests.Relations;

/// <summary>What has to hold between an assessment of a used socket and other answers, over random sockets.</summary>
public sealed class ReuseRelationTests
{
    private static readonly Gen<(double Small, double Mouth, double Length, double Wall, double LoadKn)> AnySocket =
        from small in Gen.Double[12, 80]
        from slender in Gen.Double[3, 6]
        from degrees in Gen.Double[6, 16]
        from wall in Gen.Double[1.3, 2.2]
        from stress in Gen.Double[20, 150]
        let length = small * slender
        select (small, small + (2 * length * Math.Tan(degrees * Math.PI / 360)), length, wall, stress * small * small / 1e3);

    /// <summary>Relation 25: a socket as made is stressed in its wall as a match says, at the working load and at the proof load.</summary>
    [Fact]
    public void Socket_as_made_has_the_hoop_stress_of_the_match() => AnySocket.Sample(one =>
    {
        var rope = GoodMatch.Input.Rope with { DiameterM = one.Small * .87e-3, CertifiedBreakingForceN = one.LoadKn * 6e3 };
        var basket = new Engine.Sockets.Basket { SmallEndDiameterM = one.Small * 1e-3, LargeEndDiameterM = one.Mouth * 1e-3,
            LengthM = one.Length * 1e-3 };
        var (outerSmall, outerMouth) = (basket.SmallEndDiameterM * one.Wall, basket.LargeEndDiameterM * one.Wall);
        var match = TerminationMatch.Calculate(GoodMatch.Input with
        {
            // The sheet of a filled polyester, as the rules assume it for a socket that outlives its compounds.
            Compound = GoodMatch.Sheet with { Cured = new() { CompressiveStrengthPa = 120e6, ModulusPa = 6e9, PoissonRatio = .25,
                VolumetricShrinkage = .02 } },
            Rope = rope,
            Socket = GoodMatch.Input.Socket with { Basket = basket, OuterAtSmallEndM = outerSmall, OuterAtMouthM = outerMouth },
            Duty = GoodMatch.Input.Duty with { LoadN = one.LoadKn * 1e3, ProofLoadN = one.LoadKn * 2e3 },
            Friction = null,
        }, Engine.Rules.Editions.Known.Current, new Budget(Budget.DefaultSteps), TestContext.Current.CancellationToken).Result.Transfer!;
        var part = Assess(For(use => new() { Rope = rope, RatedLoadN = one.LoadKn * 1e3, ProofLoadN = one.LoadKn * 2e3 })(
            Socket(socket => socket with { RatedLoadN = null, ProofRatingN = null,
                Nominal = socket.Nominal with { Basket = basket, OuterAtSmallEndM = outerSmall, OuterAtMouthM = outerMouth } })(Input)))
            .Result.AsMade!.Parts.Single(part => part.Id == "basket-hoop");
        Printed.Matches(match.Cases.Single(load => load.Name == "workingLoad").HoopPa!.Value, part.StressPa, 1e-9);
        Printed.Matches(match.Cases.Single(load => load.Name == "proofLoad").HoopPa!.Value / 355e6, part.AtProof, 1e-9);
    }, iter: 200);

    /// <summary>
    /// Relation 26: more wear of any part, with its limit or without it, never makes the disposition or the decision better.
    /// </summary>
    [Fact]
    public void More_wear_of_a_part_never_makes_the_answer_better() =>
        Gen.Select(Gen.Int[0, Wear.Length - 1], Gen.Double[0, 1], Gen.Double[0, 1], Gen.Bool).Sample((part, some, more, isLimited) =>
        {
            var start = isLimited ? Input : Unlimited(Input);
            var (less, worn) = (Assess(Wear[part](Math.Min(some, more), start)), Assess(Wear[part](Math.Max(some, more), start)));
            Assert.True(worn.Result.Disposition >= less.Result.Disposition && worn.Decision >= less.Decision,
                $"part {part}: {less.Result.Disposition} became {worn.Result.Disposition}");
        }, iter: 600);

    /// <summary>An ear worn to a third is withdrawn whatever limits, loads and steel are said to be; without any wear but that.</summary>
    [Fact]
    public void Ear_worn_to_a_third_is_withdrawn_whatever_is_stated() =>
        Gen.Select(Gen.Double[1, 50], Gen.Bool, Gen.Bool).Sample((loadKn, isLimited, isMeasured) =>
        {
            var input = For(use => use with { RatedLoadN = loadKn * 1e3,
                ProofLoadN = null })(Found(found => found with { EarThicknessM = .016 / 3, PitDepthM = isMeasured ? 0 : null })(Input));
            var outcome = Assess(isLimited ? Limits(limits => limits with { EarThicknessLoss = .5 })(input) : Unlimited(input));
            Assert.Equal((Disposition.Withdraw, Decision.DoNotProceed), (outcome.Result.Disposition, outcome.Decision));
        }, iter: 100);

    /// <summary>Relation 27: a limit that is taken away, or made stricter, never makes the answer better.</summary>
    [Fact]
    public void Limit_taken_away_or_made_stricter_never_makes_the_answer_better() =>
        Gen.Select(Gen.Int[0, Strictness.Length - 1], Gen.Double[0, 1], Gen.Int[0, Wear.Length - 1], Gen.Double[0, .2])
            .Sample((limit, share, part, wear) =>
        {
            var start = Wear[part](wear, Input);
            var before = Assess(start);
            Assert.True(Assess(Strictness[limit](share, start)).Decision >= before.Decision,
                $"limit {limit} made stricter, part {part} worn by {wear}");
            if (before.Decision <= Decision.ProceedWithCare)
            {
                Assert.True(Assess(Unlimited(start)).Decision >= before.Decision);
            }
        }, iter: 400);

    /// <summary>
    /// Relation 27: whatever is known of the good socket and then isn't, singly, never makes it better; 100 facts are in ReuseGaps.
    /// </summary>
    [Fact]
    public void Fact_taken_away_never_makes_the_answer_better() =>
        Gen.Select(Gen.Int[0, ReuseGaps.All.Count - 1], Gen.Int[0, Wear.Length - 1], Gen.Double[0, .4]).Sample((gap, part, wear) =>
    {
        var start = Wear[part](wear, Input);
        var before = Assess(start);
        var after = Assess(ReuseGaps.All[gap].Change(start));
        Assert.True(before.Decision > Decision.ProceedWithCare || after.Decision >= before.Decision,
            $"{ReuseGaps.All[gap].Pointer}: {before.Decision} became {after.Decision}");
    }, iter: 400);

    /// <summary>
    /// A coarser reading, or a wider tolerance, never makes the answer better. It has no number in the list of relations.
    /// </summary>
    [Fact]
    public void Coarser_reading_never_makes_the_answer_better() =>
        Gen.Select(Gen.Int[0, Wear.Length - 1], Gen.Double[0, .2], Gen.Double[.0003, .005], Gen.Bool, Gen.Bool)
        .Sample((part, wear, off, isLimited, isOfDrawing) =>
        {
            var start = Wear[part](wear, isLimited ? Input : Unlimited(Input));
            var coarse = Found(found => found with { UncertaintyM = off })(start);
            // A tolerance within the general one is the drawing's right; wider than that it grants no more.
            var (fine, worse) = isOfDrawing
                ? (Drawn(drawn => drawn with { ToleranceM = .0003 })(start), Drawn(drawn => drawn with { ToleranceM = off })(start))
                : (isLimited ? start : Found(found => found with { UncertaintyM = .0003 })(start), coarse);
            var (before, after) = (Assess(fine), Assess(worse));
            Assert.True(after.Result.Disposition >= before.Result.Disposition && after.Decision >= before.Decision,
                $"part {part} worn by {wear}: {before.Result.Disposition}, {before.Decision} became {after.Result.Disposition}, {after.Decision} by {off}: {Words(before)} / {Words(after)}");
        }, iter: 400);

    private static string Words(Outcome<ReuseResult> of) =>
        string.Join(' ', of.Findings.Select(finding => $"{finding.Definition.Code}:{finding.Severity}"));

    /// <summary>Wear of each part, from none (0) to most of it gone (1).</summary>
    private static Func<double, ReuseInput, ReuseInput>[] Wear { get; } =
    [
        (share, input) =>
            Found(found =>
            found with { Stations =
            [.. found.Stations.Select(station =>
            station with { DiametersM = [.. station.DiametersM.Select(one => one * (1 + (.8 * share)))] })] })(input),
        (share, input) => Found(found => found with { Stations = [found.Stations[0] with { DiametersM = [.0231, .0232 + (.04 * share)] },
            .. found.Stations.Skip(1)] })(input),
        (share, input) => Found(found => found with { PinHoleDiametersM = [.0368 + (.06 * share), .0366] })(input),
        (share, input) => Found(found => found with { PinDiameterM = .0349 * (1 - (.9 * share)) })(input),
        (share, input) => Found(found => found with { EarThicknessM = .0159 * (1 - (.99 * share)) })(input),
        (share, input) => Found(found => found with { EarWidthM = .080 * (1 - (.9 * share)) })(input),
        (share, input) => Found(found => found with { EarEndDistanceM = .040 * (1 - (.9 * share)) })(input),
        (share, input) => Found(found => found with { EarGapM = .0403 * (1 + share) })(input),
        (share, input) => Found(found => found with { OuterAtSmallEndM = .0698 * (1 - (.6 * share)) })(input),
        (share, input) => Found(found => found with { PitDepthM = .02 * share })(input),
    ];

    private static Func<double, ReuseInput, ReuseInput>[] Strictness { get; } =
    [
        (share, input) => Limits(limits => limits with { BoreGrowth = limits.BoreGrowth * share })(input),
        (share, input) => Limits(limits => limits with { Ovality = limits.Ovality * share })(input),
        (share, input) => Limits(limits => limits with { PinHoleGrowth = limits.PinHoleGrowth * share })(input),
        (share, input) => Limits(limits => limits with { EarSpread = limits.EarSpread * share })(input),
        (share, input) => Limits(limits => limits with { PitDepthM = limits.PitDepthM * share })(input),
        (share, input) => Limits(limits => limits with { TaperLoss = limits.TaperLoss * share })(input),
        (share, input) => Limits(limits => limits with { PinWear = limits.PinWear * share })(input),
        (share, input) => Limits(limits => limits with { EarThicknessLoss = limits.EarThicknessLoss * share })(input),
    ];

    private static ReuseInput Unlimited(ReuseInput input) => input with { Limits = new() };
}
