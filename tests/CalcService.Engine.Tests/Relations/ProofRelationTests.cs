using CalcService.Engine.Compounds;
using CalcService.Engine.Cones;
using CalcService.Engine.Findings;
using CalcService.Engine.Proof;
using CalcService.Engine.Tests.Audits;
using CalcService.Engine.Tests.Cones;
using CalcService.Engine.Tests.Matching;
using CalcService.Engine.Tests.Numerics;
using CalcService.Engine.Tests.Proof;
using CsCheck;

namespace CalcService.Engine.Tests.Relations;

/// <summary>
/// What has to hold between the evaluation of a proof load, a match and an audit of the same end, over random loads and readings.
/// </summary>
public sealed class ProofRelationTests
{
    private static readonly Gen<(double AskedKn, double RatingKn, double LoadShare, double SeatingMm, SeatingPlace At)> AnyTest =
        from asked in Gen.Double[20, 180]
        from rating in Gen.Double[.9, 1.4]
        from share in Gen.OneOf(Gen.Double[.9, 1.05], Gen.Const(.95), Gen.Const(1.0))
        from seating in Gen.Double[.1, 2.5]
        from at in Gen.OneOf(Gen.Const(SeatingPlace.Mouth), Gen.Const(SeatingPlace.SmallEnd))
        select (asked, asked * rating, share, seating, at);

    /// <summary>
    /// Relation 20: seating by the match at a load is that of the evaluation, whose band is the match with half and one and a half
    /// times the shrinkage.
    /// </summary>
    [Fact]
    public void Seating_of_the_match_is_that_of_the_evaluation() =>
        Gen.Select(Gen.Double[20e3, 150e3], Gen.Double[.05, .5], Gen.Double[.001, .008]).Sample((loadN, friction, shrinkage) =>
        {
            var sheet = GoodMatch.Sheet with { Cured = GoodMatch.Sheet.Cured with { ShrinkageAfterGel = shrinkage } };
            var input = GoodMatch.Input with { Duty = GoodMatch.Input.Duty with { LoadN = loadN }, Friction = friction };
            ConeState At(double share) =>
                GoodMatch.Match(input with { Compound = sheet with { Cured = sheet.Cured with { ShrinkageAfterGel = share * shrinkage } } })
                .Result.Transfer!.Cases.Single(one => one.Name == "workingLoad").State;
            var end = GoodProof.Before with
            {
                RuleSet = "general", ProofLoadN = loadN, Friction = friction, Compound = sheet, Rope = input.Rope,
                    Basket = input.Socket.Basket,
                OuterAtSmallEndM = input.Socket.OuterAtSmallEndM, OuterAtMouthM = input.Socket.OuterAtMouthM,
            };
            var (low, high) = (At(.5), At(1.5));
            var (mouth, small) = (GoodProof.Evaluate(end).Result.Expected!,
                GoodProof.Evaluate(end with { ReadAt = SeatingPlace.SmallEnd }).Result.Expected!);
            Printed.Matches(low.SeatAtMouthM, mouth.LowM, 1e-9);
            Printed.Matches(high.SeatAtMouthM, mouth.HighM, 1e-9);
            Printed.Matches(low.SeatAtSmallEndM, small.LowM, 1e-9);
            Printed.Matches(high.SeatAtSmallEndM, small.HighM, 1e-9);
        }, iter: 60);

    /// <summary>
    /// Relations 20, 21 and 23: one band, one pair of limits; and a test that passes is a test that the record of the end passes with.
    /// </summary>
    [Fact]
    public void Test_that_passes_passes_in_the_record() => AnyTest.Sample(one =>
    {
        var loadN = one.AskedKn * 1e3 * one.LoadShare;
        var record = GoodRecord.Socketed(socket => socket with { ProofRatingN = one.RatingKn * 1e3 })(GoodRecord.Loaded(proof => proof with
        {
            RatedN = one.AskedKn * .5e3, AskedN = one.AskedKn * 1e3, LoadN = loadN, SeatingM = one.SeatingMm * 1e-3, SeatingReadAt = one.At,
        })(GoodRecord.Input));
        var audit = GoodRecord.Audit(record).Result;
        var test = GoodProof.Evaluate(GoodProof.After with
        {
            RuleSet = "general", RatedLoadN = one.AskedKn * .5e3, ProofLoadN = one.AskedKn * 1e3, ProofRatingN = one.RatingKn * 1e3,
                ReadAt = one.At,
            Compound = record.Compound, Hardness = new("indenter", 45, HardnessPlace.Lip), Rope = record.Rope!,
            Basket = record.Socket.Basket!,
                OuterAtSmallEndM = record.Socket.OuterAtSmallEndM, OuterAtMouthM = record.Socket.OuterAtMouthM,
            Measured = [new(loadN / 2, null), new(loadN, one.SeatingMm * 1e-3)],
        });
        Assert.Equal((audit.Recomputed.LeastTestLoadN, audit.Recomputed.MostTestLoadN),
            (test.Result.LeastTestLoadN, test.Result.MostTestLoadN));
        Assert.Equal((audit.Recomputed.SeatingLowM, audit.Recomputed.SeatingHighM),
            (test.Result.Expected!.LowM, test.Result.Expected.HighM));
        CheckOutcome Of(string id) => audit.Checks.Single(check => check.Id == id).Outcome;
        foreach (var (mine, theirs) in new[] { ("test-load", "proof-load"), ("seating-step-2", "seating"),
            ("half-of-breaking-force", "half-of-breaking-force") })
        {
            Assert.Equal(test.Result.Checks.Single(check => check.Id == mine).Outcome, Of(theirs));
        }

        // The test looks at the load that was meant, too.
        Assert.True(test.Result.Checks.Single(check => check.Id == "socket-rating")
            .Outcome == CheckOutcome.Fail || Of("proof-rating") == CheckOutcome.Pass);
        Assert.True(test.Result.Verdict != ProofVerdict.Pass
            || Array.TrueForAll(["proof-load", "proof-rating", "seating", "half-of-breaking-force"],
            id => Of(id) == CheckOutcome.Pass));
    }, iter: 150);

    /// <summary>Relation 24: more load never seats less, more friction never more, at either end.</summary>
    [Fact]
    public void More_load_never_seats_less_and_more_friction_never_more() =>
        Gen.Select(Gen.Double[1e3, 250e3], Gen.Double[1, 2], Gen.Double[.02, .6], Gen.Double[1, 2], Gen.Double[0, .008])
            .Sample((loadN, more, friction, rougher, shrinkage) =>
        {
            var cone = SomeCones.Full with { Friction = friction, Shrinkage = shrinkage };
            var (one, loaded, rough) = (cone.At(loadN), cone.At(loadN * more),
                (cone with { Friction = Math.Min(1, friction * rougher) }).At(loadN));
            Assert.True(loaded.SeatAtMouthM >= one.SeatAtMouthM * (1 - 1e-9) && loaded.SeatAtSmallEndM >= one.SeatAtSmallEndM * (1 - 1e-9));
            Assert.True(rough.SeatAtMouthM <= one.SeatAtMouthM * (1 + 1e-9) && rough.SeatAtSmallEndM <= one.SeatAtSmallEndM * (1 + 1e-9));
        }, iter: 200);

    /// <summary>
    /// Relation 22: on the minute from which the cure allows it a proof load stands, a minute earlier it is a stop, and without that
    /// minute nothing is known.
    /// </summary>
    [Fact]
    public void Proof_load_stands_on_the_minute_of_release_and_not_before() =>
        Gen.Select(Gen.Int[0, 100000], Gen.Int[1, 3000]).Sample((minute, early) =>
    {
        var from = GoodProof.After.TestedAt.AddMinutes(minute);
        Decision At(DateTimeOffset testedAt, DateTimeOffset? releasedAt) =>
            GoodProof.Evaluate(GoodProof.After with { TestedAt = testedAt, ProofLoadFrom = releasedAt }).Decision;
        Assert.Equal(Decision.Proceed, At(from, from.ToOffset(TimeSpan.FromHours(-5))));
        Assert.Equal(Decision.DoNotProceed, At(from.AddMinutes(-early), from));
        Assert.Equal(Decision.Undetermined, At(from, null));
    }, iter: 40);

    /// <summary>
    /// Relation 27: a fact that satisfied its rule, taken away or said to be unknown, never makes the answer better; for work ahead
    /// never worse than care.
    /// </summary>
    [Fact]
    public void Fact_taken_away_never_makes_the_answer_better()
    {
        Func<ProofInput, Fact?, ProofInput>[] watched =
        [
            (input, fact) => input with { Observations = input.Observations with { WireSlip = fact } }, (input, fact) =>
                input with { Observations = input.Observations with { Cracks = fact } },
            (input, fact) => input with { Observations = input.Observations with { Asymmetry = fact } }, (input, fact) =>
                input with { Observations = input.Observations with { CreepUnderHold = fact } },
        ];
        Func<ProofInput, ProofInput>[] given =
        [
            input => input with { ProofRatingN = null }, input => input with { ProofLoadFrom = null }, input =>
                input with { Measured = [] }, input => input with { ExclusionZone = Fact.Unknown },
            .. watched.Select(change => (Func<ProofInput, ProofInput>)(input => change(input, null))),
                .. watched.Select(change => (Func<ProofInput, ProofInput>)(input => change(input, Fact.Unknown))),
        ];
        Gen.Int[1, (1 << given.Length) - 1].Sample(which =>
        {
            var input = given.Where((_, i) => (which >> i & 1) == 1).Aggregate(GoodProof.After, (now, change) => change(now));
            var pour = GoodProof.Evaluate(input);
            Assert.Equal(Decision.Undetermined, pour.Decision);
            Assert.Equal("facts-not-stated", Assert.Single(pour.Findings).Definition.Code);
            // What was read at the test bed is judged as work done, whatever it is called.
            Assert.Equal(Decision.Undetermined, GoodProof.Evaluate(input with { Purpose = Purpose.Quote }).Decision);
            var ahead = GoodProof.Before with { ProofRatingN = input.ProofRatingN, ProofLoadFrom = input.ProofLoadFrom,
                ExclusionZone = input.ExclusionZone };
            Assert.InRange(GoodProof.Evaluate(ahead with { Purpose = Purpose.Plan }).Decision, Decision.Proceed, Decision.ProceedWithCare);
            Assert.Equal(Decision.Proceed, GoodProof.Evaluate(ahead with { Purpose = Purpose.Quote }).Decision);
        }, iter: 200);
    }

    /// <summary>
    /// What a load is to its rope is the same in the evaluation, the match and the record: nothing up to half, care up to the breaking
    /// force, no from there on.
    /// </summary>
    [Fact]
    public void Load_on_the_rope_is_judged_alike_in_evaluation_match_and_record() =>
        Gen.OneOf(Gen.Double[20e3, 320e3], Gen.Const(126e3), Gen.Const(252e3)).Sample(loadN =>
    {
        string[] expected = loadN >= 252e3 ? ["proof-at-breaking-force"] : loadN > 126e3 ? ["proof-above-half-breaking"] : [];
        IEnumerable<string> Of(IReadOnlyList<Finding> findings) => findings.Select(finding => finding.Definition.Code)
            .Where(code => code is "proof-at-breaking-force" or "proof-above-half-breaking");
        Assert.Equal(expected,
            Of(GoodProof.Evaluate(GoodProof.Before with { RuleSet = "general", ProofLoadN = loadN, ProofRatingN = 400e3 }).Findings));
        Assert.Equal(expected,
            Of(GoodMatch.Match(GoodMatch.Input with { Duty = GoodMatch.Input.Duty with { ProofLoadN = loadN } }).Findings));
        Assert.Equal(expected,
            Of(GoodRecord.Audit(GoodRecord.Loaded(proof => proof with { AskedN = loadN, LoadN = loadN })(GoodRecord.Input)).Findings));
    }, iter: 40);

    /// <summary>
    /// Two loads of which one is half the other, whatever they are and in whatever unit they were read: the half is not above the half,
    /// in the evaluation as in the match. A pound-force is 4.4482216152605 N by definition.
    /// </summary>
    [Fact]
    public void Half_of_the_breaking_force_is_not_more_than_half_of_it() =>
        Gen.Select(Gen.Int[10_000, 60_000], Gen.OneOf(Gen.Const(1.0), Gen.Const(4.4482216152605), Gen.Const(9.80665)))
        .Sample((load, unit) =>
    {
        var (proofN, breakingN) = (load * unit, 2 * load * unit);
        var rope = GoodProof.Before.Rope with { CertifiedBreakingForceN = breakingN };
        var test =
            GoodProof.Evaluate(GoodProof.Before with { RuleSet = "general", Rope = rope, ProofLoadN = proofN, ProofRatingN = proofN });
        // So random a certificate need not go with the rope, which is a finding of its own.
        Assert.DoesNotContain(test.Findings,
            finding => finding.Definition.Code is "proof-above-half-breaking" or "proof-above-socket-rating");
        var match = GoodMatch.Match(GoodMatch.Input with
        {
            Rope = GoodMatch.Input.Rope with { CertifiedBreakingForceN = breakingN },
                Socket = GoodMatch.Input.Socket with { ProofRatingN = proofN },
            Duty = GoodMatch.Input.Duty with { ProofLoadN = proofN },
        });
        Assert.DoesNotContain(match.Findings,
            finding => finding.Definition.Code is "proof-above-half-breaking" or "proof-above-socket-rating");
    }, iter: 100);
}
