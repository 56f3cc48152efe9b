using CalcService.Engine.Audits;
using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Matching;
using CalcService.Engine.Pouring;
using CalcService.Engine.Proof;
using CalcService.Engine.Tests.Audits;
using CalcService.Engine.Tests.Matching;
using CalcService.Engine.Tests.Pouring;
using CalcService.Engine.Tests.Proof;
using CsCheck;
using static CalcService.Engine.Tests.Chains.Chain;

namespace CalcService.Engine.Tests.Chains;

/// <summary>
/// One end, asked of plan, schedule, match, proof and audit. The names tell the relations by their numbers in docs/relations.md.
/// </summary>
public sealed class PlanChainTests
{
    private const double Zero = VirtualJob.Zero;

    private static readonly string[] OnTheDay = ["outside-pouring-range", "dose-contradicts-sheet", "dose-unknown"];

    /// <summary>A sheet with two doses, by whichever temperature, and a day with its humidity.</summary>
    private static readonly Gen<(VirtualJob Job, double Humidity)> Days = Gen.Select(VirtualJob.Any, Gen.Enum<DosePlace>(),
        Gen.Double[.2, 1], (job, place, humidity) => (job with
    {
        Air = [job.Air[0]],
        Sheet = job.Sheet with
        {
            DoseByTemperatureOf = place,
            Doses = [new(2 + Zero, 12 + Zero, 2), new(12 + Zero, 34 + Zero, 0)],
            GelTimes = [.. job.Sheet.GelTimes, .. job.Sheet.GelTimes.Select(row => row with { Doses = 2, TimeS = row.TimeS / 2 })],
        },
    }, humidity));

    [Fact]
    public void Relation_10_plan_that_proceeds_has_no_stop_in_its_schedule() => Days.Sample(day =>
    {
        if (Plan(day.Job, day.Humidity).Decision <= Decision.ProceedWithCare)
        {
            Assert.DoesNotContain(Schedule(Cure(day.Job)).Findings, finding => finding.Severity == Severity.Stop
                && OnTheDay.Contains(finding.Definition.Code));
        }
    }, iter: Count);

    [Fact]
    public void Relation_11_dose_is_one_in_plan_schedule_and_audit() => Days.Sample(day =>
    {
        var planned = Plan(day.Job, day.Humidity).Result.Dose?.PerKit;
        Assert.Equal(planned, Schedule(Cure(day.Job)).Result.Doses);
        Assert.Equal(planned, Record(day.Job, day.Humidity, planned).Result.Recomputed.DosesPerKit);
    }, iter: Count);

    [Fact]
    public void Relation_12_latest_gel_of_the_plan_is_that_of_the_uniform_schedule() => Days.Sample(day =>
    {
        var planned = Plan(day.Job, day.Humidity).Result.Gel?.InCone.LatestS;
        var scheduled = Minutes(End(day.Job).GelAt.Latest) * 60;
        Assert.True((planned is null) == (scheduled is null) && (planned is null || Math.Abs(planned.Value - scheduled!.Value) <= .5),
            $"{planned} {scheduled}");
    }, iter: Count);

    [Fact]
    public void Relation_13_14_pot_life_and_dew_point_are_one_in_plan_and_audit() => Days.Sample(day =>
    {
        var plan = Plan(day.Job, day.Humidity);
        var audit = Record(day.Job, day.Humidity, plan.Result.Dose?.PerKit);
        Assert.Equal(plan.Result.Gel?.PotLifeS, audit.Result.Recomputed.PotLifeS);
        Assert.Equal((plan.Result.DewPointK, plan.Result.FrostPointK),
            (audit.Result.Recomputed.DewPointK, audit.Result.Recomputed.FrostPointK));
        foreach (var code in new[] { "steel-at-dew-point", "steel-near-dew-point" })
        {
            Assert.Equal(Raises(plan.Findings, code), Raises(audit.Findings, code));
        }
    }, iter: Count);

    [Fact]
    public void Relation_16_resin_of_the_plan_is_that_of_the_audit_and_its_kits_are_enough() => Days.Sample(day =>
    {
        var plan = Plan(day.Job, day.Humidity);
        var kits = plan.Result.Mixes.SelectMany(mix => mix.Kits)
            .Select(kit => new StockLot("L", kit.Kit, kit.Count, new(2030, 1, 1), null) { State = LotState.Sealed, Quarantined = Fact.No })
            .ToArray();
        var audit = Record(day.Job, day.Humidity, plan.Result.Dose?.PerKit, kits);
        var (planned, audited) = (plan.Result.Ends[0].Fill, audit.Result.Recomputed.Fill!);
        Assert.Equal((planned.LowM3, planned.NominalM3, planned.HighM3), (audited.LowM3, audited.NominalM3, audited.HighM3));
        if (kits.Length > 0)
        {
            Assert.Equal(CheckOutcome.Pass, audit.Result.Checks.Single(check => check.Id == "kits").Outcome);
        }
    }, iter: Count);

    /// <summary>Ropes from far too thick to far too thin for their socket, of sockets from far too weak to strong.</summary>
    [Fact]
    public void Relation_19_fit_and_strength_are_one_verdict_everywhere() =>
        Gen.Select(VirtualJob.Any, Gen.Double[.5, 1.6], Gen.Double[.6, 1.5]).Sample((job, size, strength) =>
    {
        var end = job with { Rope = job.Rope with { DiameterM = job.Rope.DiameterM * size, CertifiedBreakingForceN = null } };
        var socketN = strength * 356 * 1770 * Math.Pow(end.Rope.DiameterM, 2) * 1e3;
        var (plan, schedule, match, audit) = (Plan(end, .4, socketN).Findings, Schedule(Cure(end) is var cure
            ? cure with { Ends = [cure.Ends[0] with { SocketBreakingForceN = socketN }] } : null!).Findings, Match(end, socketN).Findings,
            Record(end, .4, 0, socketN: socketN).Findings);
        foreach (var code in new[] { "wires-do-not-fit", "rope-does-not-enter", "socket-weaker-than-rope", "basket-no-cone",
            "basket-too-short" })
        {
            var verdict = Raises(plan, code);
            Assert.True(verdict == Raises(schedule, code) && verdict == Raises(match, code) && verdict == Raises(audit, code),
                $"{code}: plan {verdict}, schedule {Raises(schedule, code)}, match {Raises(match, code)}, audit {Raises(audit, code)}");
        }
    }, iter: Count);

    /// <summary>Scheduled, loaded on that very minute, recorded as it was done.</summary>
    [Fact]
    public void Relation_2_22_23_end_that_is_loaded_on_its_minute_and_passes_is_accepted() => VirtualJob.Any.Sample(job =>
    {
        if (End(job) is not { ProofLoadFrom: { } from, UndisturbedUntil: { } still })
        {
            return;
        }

        var loadN = .35 * 356 * 1770 * Math.Pow(job.Rope.DiameterM, 2) * 1e3;
        var test = Load(job, from, loadN, null);
        Assert.DoesNotContain(test.Findings, finding => finding.Definition.Code == "not-cured-for-proof");
        Assert.Contains(Load(job, from, loadN, null, from.AddMinutes(-1)).Findings,
            finding => finding.Definition.Code == "not-cured-for-proof");
        if (test.Result.Expected is not { } band)
        {
            return;
        }

        var seatedM = (band.LowM + band.HighM) / 2;
        var after = Load(job, from, loadN, seatedM);
        var audit = Record(job, .4, 0, moved: still, loaded: from, loadN: loadN, seatingM: seatedM).Result.Checks;
        foreach (var id in new[] { "moved", "released-cured", "proof-cured", "service-cured", "proof-load", "proof-rating", "seating" })
        {
            Assert.True(after.Decision == Decision.DoNotProceed || audit.Single(check => check.Id == id).Outcome == CheckOutcome.Pass,
                $"{id} {after.Decision}");
        }
    }, iter: Count);

    private static Outcome<PourPlanResult> Plan(VirtualJob job, double humidity, double? socketN = null) =>
        GoodPour.Plan(GoodPour.Input with
    {
        PourAt = MixedAt,
        Compound = job.Sheet,
        Conditions = GoodPour.Input.Conditions with { AirK = job.Air[0] + Zero, SteelK = job.Steel + Zero, CompoundK = job.Compound + Zero,
        RelativeHumidity = humidity },
        Ends = [GoodPour.End("A", 1) with { Rope = job.Rope, Basket = job.Basket, SocketBreakingForceN = socketN ?? Strong(job),
        DriedAt = MixedAt.AddHours(-1) }],
    });

    private static Outcome<MatchResult> Match(VirtualJob job, double socketN) => GoodMatch.Match(GoodMatch.Input with
    {
        Rope = job.Rope,
        // A type test is a fact that only a match asks for.
        Duty = GoodMatch.Input.Duty with { TypeTested = false },
        Socket = GoodMatch.Input.Socket with
        {
            Basket = job.Basket, OuterAtSmallEndM = job.Basket.SmallEndDiameterM * job.Wall,
                OuterAtMouthM = job.Basket.LargeEndDiameterM * job.Wall,
            BreakingForceN = socketN, RopeRange = null,
        },
    });

    private static Outcome<ProofResult> Load(VirtualJob job, DateTimeOffset from, double loadN, double? seatedM,
        DateTimeOffset? at = null) => GoodProof.Evaluate((seatedM is null ? GoodProof.Before : GoodProof.After) with
    {
        TestedAt = at ?? from,
        RuleSet = "general",
        Compound = job.Sheet with { Cured = GoodProof.Sheet.Cured },
        Rope = job.Rope with { CertifiedBreakingForceN = Strength(job) },
        Basket = job.Basket,
        OuterAtSmallEndM = job.Basket.SmallEndDiameterM * job.Wall,
        OuterAtMouthM = job.Basket.LargeEndDiameterM * job.Wall,
        ProofLoadN = loadN,
        ProofRatingN = loadN,
        RatedLoadN = loadN / 2,
        ProofLoadFrom = from,
        Measured = seatedM is { } seated ? [new(loadN, seated)] : [],
    });

    private static Outcome<AuditResult> Record(VirtualJob job, double humidity, int? doses, StockLot[]? kits = null, double? socketN = null,
        DateTimeOffset? moved = null, DateTimeOffset? loaded = null, double? loadN = null, double? seatingM = null) =>
        GoodRecord.Audit(GoodRecord.Input with
    {
        AuditedOn = new(2027, 1, 1),
        Compound = job.Sheet with { Cured = GoodProof.Sheet.Cured },
        Rope = job.Rope with { CertifiedBreakingForceN = socketN is null ? Strength(job) : null },
        Socket = GoodRecord.Input.Socket with
        {
            Basket = job.Basket, OuterAtSmallEndM = job.Basket.SmallEndDiameterM * job.Wall,
                OuterAtMouthM = job.Basket.LargeEndDiameterM * job.Wall,
            BreakingForceN = socketN ?? Strong(job), ProofRatingN = loadN ?? GoodRecord.Input.Socket.ProofRatingN,
        },
        Readings = Cure(job).Conditions is var day
            ? new() { ConstantAirK = day.ConstantAirK, AirSeries = day.AirSeries, SteelK = day.SteelK, CompoundK = day.CompoundK,
            RelativeHumidity = humidity } : new(),
        Mix = GoodRecord.Input.Mix with { DosesPerKit = doses, Baskets = 1, Kits = kits ?? GoodRecord.Input.Mix.Kits },
        GelSeenIn = GelPlace.Unknown,
        Times = GoodRecord.Input.Times with
        {
            MixedAt = MixedAt, PouredAt = MixedAt.AddSeconds(30), GelAt = null, MovedAt = moved, ReleasedAt = loaded, ProofAt = loaded,
                InServiceAt = loaded,
        },
        Proof = GoodRecord.Input.Proof with { AskedN = loadN ?? GoodRecord.Input.Proof.AskedN,
        LoadN = loadN ?? GoodRecord.Input.Proof.LoadN, SeatingM = seatingM ?? GoodRecord.Input.Proof.SeatingM },
    });

    private static double Strength(VirtualJob job) => 356 * 1770 * Math.Pow(job.Rope.DiameterM, 2) * 1e3;

    private static double Strong(VirtualJob job) => 1.3 * Strength(job);

    private static bool Raises(IEnumerable<Finding> findings, string code) => findings.Any(finding => finding.Definition.Code == code);
}
