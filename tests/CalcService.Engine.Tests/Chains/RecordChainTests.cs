using CalcService.Engine.Audits;
using CalcService.Engine.Curing;
using CalcService.Engine.Findings;
using CalcService.Engine.Releases;
using CalcService.Engine.Tests.Audits;
using CsCheck;
using static CalcService.Engine.Tests.Chains.Chain;

namespace CalcService.Engine.Tests.Chains;

/// <summary>
/// What a schedule allows, the audit of its record accepts on that very minute. The names tell the relations by their numbers in
/// docs/relations.md.
/// </summary>
public sealed class RecordChainTests
{
    private static readonly string[] Rest = ["moved"], Loads = ["released-cured", "proof-cured", "service-cured"];

    [Theory]
    [InlineData(ThermalModel.Uniform)]
    [InlineData(ThermalModel.Coupled)]
    public void Relation_2_record_at_the_minutes_of_its_schedule_passes_and_a_minute_before_does_not(ThermalModel model) =>
        VirtualJob.Watched.Sample(job =>
    {
        var input = Cure(job, model);
        if (End(input) is not { UndisturbedUntil: { } still, ProofLoadFrom: { } load })
        {
            return;
        }

        var (onTime, early) = (Audit(job, input, still, load), Audit(job, input, still.AddMinutes(-1), load.AddMinutes(-1)));
        Assert.All([.. Rest, .. Loads], id => Assert.Equal(CheckOutcome.Pass, Of(onTime, id)));
        Assert.All(Rest, id => Assert.Equal(CheckOutcome.Fail, Of(early, id)));
        Assert.All(Loads, id => Assert.Contains(Of(early, id), new[] { CheckOutcome.Fail, CheckOutcome.Undetermined }));
        Assert.Equal((still, load), (onTime.Recomputed.UndisturbedUntil!.Value, onTime.Recomputed.LoadFrom!.Value));
    }, iter: model == ThermalModel.Uniform ? Count : CoupledCount);

    [Fact]
    public void Relation_8_record_that_names_no_model_is_never_accepted_before_its_schedule() => VirtualJob.Any.Sample(job =>
    {
        if (End(job, ThermalModel.Coupled) is { UndisturbedUntil: { } still, ProofLoadFrom: { } load }
            && Audit(job, Cure(job), still, load).Recomputed.LoadFrom is { } byUniform)
        {
            Assert.True(byUniform.AddMinutes(1) >= load, $"{byUniform:t} {load:t}");
        }
    }, iter: CoupledCount);

    private static AuditResult Audit(VirtualJob job, CureScheduleInput cure, DateTimeOffset moved, DateTimeOffset loaded) =>
        GoodRecord.Audit(GoodRecord.Input with
    {
        AuditedOn = DateOnly.FromDateTime(loaded.DateTime.AddDays(30)),
        Compound = job.Sheet,
        ThermalModel = cure.ThermalModel,
        Rope = job.Rope with { CertifiedBreakingForceN = 252e3 },
        Socket = GoodRecord.Input.Socket with { Basket = job.Basket, OuterAtSmallEndM = cure.Ends[0].OuterAtSmallEndM,
        OuterAtMouthM = cure.Ends[0].OuterAtMouthM },
        Readings = new() { ConstantAirK = cure.Conditions.ConstantAirK, AirSeries = cure.Conditions.AirSeries,
        SteelK = cure.Conditions.SteelK, CompoundK = cure.Conditions.CompoundK, RelativeHumidity = .3 },
        Mix = GoodRecord.Input.Mix with { DosesPerKit = 0 },
        GelSeenIn = job.Place,
        Times = GoodRecord.Input.Times with
        {
            MixedAt = MixedAt, PouredAt = MixedAt.AddSeconds(30), GelAt = cure.Observations is [var seen] ? seen.GelAt : null,
            MovedAt = moved, ReleasedAt = loaded, ProofAt = loaded, InServiceAt = loaded,
        },
    }).Result;

    private static CheckOutcome Of(AuditResult audit, string id) => audit.Checks.Single(check => check.Id == id).Outcome;
}
