using CalcService.Engine.Audits;
using CalcService.Engine.Findings;
using CalcService.Engine.Tests.Numerics;
using static CalcService.Engine.Tests.Audits.GoodRecord;

namespace CalcService.Engine.Tests.Audits;

public sealed class RecordAuditTests
{
    [Fact]
    public void Whole_record_is_accepted_and_every_check_passes()
    {
        var audit = Audit(Input);
        Assert.Empty(audit.Findings.Select(finding => $"{finding.Definition.Code} {finding.Pointer}"));
        Assert.Equal(RecordStanding.Accepted, audit.Result.Standing);
        // It took no dose.
        Assert.Equal(["dose-moment"], audit.Result.Checks.Where(check => check.Outcome != CheckOutcome.Pass).Select(check => check.Id));
        Assert.Distinct(audit.Result.Checks.Select(check => check.Id));
        Assert.Empty(audit.Result.Missing);
    }

    /// <summary>
    /// The contract's example: 75.504 cm³; the sheet at 20 °C: gel after 24 min, pot life three quarters, full strength 90 min after gel.
    /// </summary>
    [Fact]
    public void Numbers_of_the_plan_come_out_as_the_sheet_and_the_contract_have_them()
    {
        var plan = Audit(Input).Result.Recomputed;
        Printed.Agrees(75.504e-6, plan.Fill!.NominalM3!.Value, 5);
        Assert.Equal(300e-6, plan.MixedM3!.Value, 1e-12);
        Assert.Equal(18 * 60, plan.PotLifeS!.Value, 1e-6);
        Assert.Equal(1, plan.Gel.Ratio!.Value, 1e-9);
        Assert.Equal(After(24), plan.UndisturbedUntil);
        Assert.Equal(After(114), plan.LoadFrom);
        Assert.Equal((95e3, 100e3), (plan.LeastTestLoadN, plan.MostTestLoadN));
        Assert.Equal(0, plan.DosesPerKit);
    }

    /// <summary>A tenth later than expected is a ratio of 1.1, wherever in the family.</summary>
    [Theory]
    [InlineData(26.4, 1.1)]
    [InlineData(21.6, .9)]
    public void Ratio_is_the_gel_that_was_seen_over_the_expected_one(double minutes, double ratio) =>
        Assert.Equal(ratio, Audit(At(times => times with { GelAt = After(minutes) })(Input)).Result.Recomputed.Gel.Ratio!.Value, 1e-9);

    /// <summary>
    /// A cold night after the pour moves the earliest load: it is recomputed from the recorded air, not from the reading at mixing.
    /// </summary>
    [Fact]
    public void Cold_night_moves_the_earliest_load()
    {
        var cold = Audit(Input with { Readings = Air((0, 20), (.5, 20), (1, 8), (40, 8)) }).Result.Recomputed.LoadFrom;
        Assert.True(cold > After(114 + 30), $"{cold}");
    }

    /// <summary>A lot that has run out is a stop, whatever else the record lacks: missing never softens it.</summary>
    [Fact]
    public void Empty_record_with_an_expired_lot_is_refused()
    {
        var audit =
            Audit(new() { AuditedOn = new(2026, 3, 20), Compound = Sheet, Times = new() { MixedAt = MixedAt },
            Mix = new() { Kits = [new("A", "small", 1, new(2026, 3, 1), null)] } });
        Assert.Equal(RecordStanding.Refused, audit.Result.Standing);
        Assert.Equal(CheckOutcome.Fail, audit.Result.Checks.Single(check => check.Id == "lot-dates").Outcome);
    }

    [Fact]
    public void Record_that_holds_nothing_is_incomplete_and_no_check_passes_but_those_with_nothing_to_check()
    {
        var audit = Audit(new() { AuditedOn = new(2026, 3, 20), Compound = Sheet });
        Assert.Equal(RecordStanding.Incomplete, audit.Result.Standing);
        Assert.Equal(["time-of-audit", "time-order"],
            audit.Result.Checks.Where(check => check.Outcome == CheckOutcome.Pass).Select(check => check.Id).Order(StringComparer.Ordinal));
        Assert.Equal(Audit(Input).Result.Checks.Select(check => check.Id).Order(StringComparer.Ordinal),
            audit.Result.Checks.Select(check => check.Id).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void End_that_is_not_to_be_proof_loaded_has_no_checks_of_it()
    {
        var audit = Audit(At(times => times with { ProofAt = null })(Input) with
        {
            Proof = new() { IsAsked = false },
            People = [.. Input.People.Where(person => person.Role != WorkRole.ProofTester)],
            Looks = Input.Looks with { AfterLoad = LookResult.Unknown },
        });
        Assert.Empty(audit.Findings.Select(finding => $"{finding.Definition.Code} {finding.Pointer}"));
        Assert.Equal(11, audit.Result.Checks.Count(check => check.Outcome == CheckOutcome.NotApplicable));
    }

    /// <summary>Steel that stayed cold explains a gel that came late: the lot isn't doubted for it.</summary>
    [Fact]
    public void Late_gel_on_cold_steel_is_no_stranger_in_the_family()
    {
        var cold = Read(read =>
            read with { SteelK = 10 + Zero })(Input) with { Times = Input.Times with { GelAt = After(36), MovedAt = After(80),
            ReleasedAt = After(600), ProofAt = After(700) } };
        Assert.DoesNotContain(Audit(cold).Findings, finding => finding.Definition.Code == "gel-out-of-family");
    }
}
