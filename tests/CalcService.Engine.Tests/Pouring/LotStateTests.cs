using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Pouring;

namespace CalcService.Engine.Tests.Pouring;

/// <summary>
/// Which lots the plan draws on, by their state. That opened, leaking, quarantined or expired kits aren't mixed is common
/// practice, no source.
/// </summary>
public sealed class LotStateTests
{
    private const double Zero = GoodPour.Zero;

    private static StockLot Good => GoodPour.Lot("A", "small", 9, "2026-12-31");

    [Theory]
    [InlineData(LotState.Unknown, true)]
    [InlineData(LotState.Sealed, true)]
    [InlineData(LotState.Opened, false)]
    [InlineData(LotState.Damaged, false)]
    public void Lot_is_used_unless_it_is_known_not_to_be_sealed(LotState state, bool used) =>
        Assert.Equal(used, IsUsed(Good with { State = state }));

    [Theory]
    [InlineData(false, true)]
    [InlineData(true, false)]
    public void Lot_in_quarantine_is_never_used(bool quarantined, bool used) =>
        Assert.Equal(used, IsUsed(Good with { Quarantined = quarantined ? Fact.Yes : Fact.No }));

    [Theory]
    [InlineData(null, "JOB-1", true)]
    [InlineData(null, null, true)]
    [InlineData("JOB-1", "JOB-1", true)]
    [InlineData("JOB-1", "job-1", false)]
    [InlineData("JOB-1", "JOB-10", false)]
    [InlineData("JOB-1", null, false)]
    public void Lot_that_is_kept_for_a_job_is_used_for_that_job_alone(string? reservedFor, string? reference, bool used) =>
        Assert.Equal(used, IsUsed(Good with { ReservedFor = reservedFor }, pour => pour with { Reference = reference }));

    [Theory]
    [InlineData(5.0, 25.0, true)] // both ends are allowed
    [InlineData(4.999, 20.0, false)]
    [InlineData(10.0, 25.001, false)]
    [InlineData(-10.0, 40.0, false)]
    [InlineData(null, 25.001, false)]
    [InlineData(4.999, null, false)]
    [InlineData(25.001, null, false)]
    [InlineData(null, 4.999, false)]
    [InlineData(10.0, null, true)]
    [InlineData(null, null, true)]
    public void Lot_is_used_where_no_reading_lies_outside_the_storage_range(double? lowest, double? highest, bool used) =>
        Assert.Equal(used, IsUsed(Good with { Storage = new(lowest + Zero, highest + Zero, Fact.Yes) }, WithRange));

    [Theory]
    [InlineData(null, null, null, true, Severity.Caution)]
    [InlineData(null, null, Fact.Unknown, true, Severity.Unknown)]
    [InlineData(null, null, Fact.No, true, Severity.Unknown)]
    [InlineData(null, null, Fact.Yes, true, Severity.Caution)] // known, but not against what the sheet asks
    [InlineData(10.0, null, Fact.Yes, true, Severity.Caution)]
    [InlineData(10.0, 20.0, null, true, null)]
    [InlineData(null, null, null, false, Severity.Caution)]
    [InlineData(null, null, Fact.Yes, false, null)] // the sheet asks for nothing
    [InlineData(null, null, Fact.Unknown, false, Severity.Caution)]
    [InlineData(10.0, 20.0, null, false, null)]
    [InlineData(null, 20.0, null, false, Severity.Caution)]
    public void Storage_is_asked_for_where_nobody_can_tell(double? lowest, double? highest, Fact? known, bool range, Severity? asked)
    {
        var plan = Plan(range ? WithRange : pour => pour, Good with { Storage = new(lowest + Zero, highest + Zero, known) });
        Assert.Equal(asked is { } severity ? [("facts-not-stated", severity)] : [],
            plan.Findings.Select(finding => (finding.Definition.Code, finding.Severity)));
    }

    [Fact]
    public void Storage_is_asked_for_once_for_each_lot_that_is_used_and_for_no_other()
    {
        // Thirty ends take three large kits; two mixes of the same lot would ask twice.
        var plan = Plan(
            pour => pour with { Ends = [GoodPour.End("A", 30)], PourTimeS = 60 },
            Unstored("FIRST", 1, "2026-04-30"), Unstored("SECOND", 9, "2026-05-31"), Unstored("SPARE", 9, "2027-12-31"),
            Unstored("NONE", 0, "2026-04-01"));

        Assert.True(plan.Result.Mixes.Count > 1);
        var asked = plan.Findings.Single(finding => finding.Definition == StatedFacts.NotStated);
        Assert.Equal(["/stock/0/storage", "/stock/1/storage"], asked.Related.Prepend(asked.Pointer));
    }

    [Fact]
    public void Lot_that_is_wrong_in_several_ways_has_one_finding()
    {
        var plan = Plan(WithRange, Good with
        {
            ExpiresOn = new(2026, 3, 11), State = LotState.Damaged, Quarantined = Fact.Yes, ReservedFor = "X",
                Storage = new(0 + Zero, 60 + Zero, Fact.Yes),
        });
        Assert.Equal(["lot-expired"], plan.Findings.Select(finding => finding.Definition.Code));
    }

    [Fact]
    public void Lot_for_another_job_does_not_turn_a_faulty_one_into_a_stop()
    {
        // One faulty kit would not have been enough either; what is kept for another job isn't this job's to need.
        var plan = Plan(
            pour => pour with { Ends = [GoodPour.End("A", 5)] },
            Good with { Count = 1, State = LotState.Opened }, Good with { ReservedFor = "X" });
        Assert.Equal(Severity.Note, plan.Findings.Single(finding => finding.Definition == PouringFindings.LotNotSealed).Severity);
        Assert.Equal(Decision.ProceedWithCare, plan.Decision);
    }

    [Fact]
    public void Lots_that_would_be_enough_only_together_stop_each()
    {
        var plan = Plan(
            pour => pour with { Ends = [GoodPour.End("A", 5)] },
            Good with { Count = 1, State = LotState.Opened }, Good with { Count = 1, Quarantined = Fact.Yes });
        Assert.Equal(["lot-quarantined", "lot-not-sealed"],
            plan.Findings.Where(finding => finding.Severity == Severity.Stop).Select(finding => finding.Definition.Code)
                .OrderByDescending(code => code, StringComparer.Ordinal));
    }

    private static PourPlanInput WithRange(PourPlanInput pour) =>
        pour with { Compound = pour.Compound with { Storage = new(5 + Zero, 25 + Zero) } };

    private static StockLot Unstored(string lot, int count, string expiresOn) =>
        GoodPour.Lot(lot, "large", count, expiresOn) with { Storage = null };

    private static bool IsUsed(StockLot lot, Func<PourPlanInput, PourPlanInput>? change = null) =>
        Plan(change ?? (pour => pour), lot).Result.Mixes[0].Kits.Any(kit => kit.Lot is not null);

    private static Outcome<PourPlanResult> Plan(Func<PourPlanInput, PourPlanInput> change, params StockLot[] stock) =>
        GoodPour.Plan(change(GoodPour.Input) with { Stock = stock });
}
