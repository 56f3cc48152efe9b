using CalcService.Engine.Compounds;
using CalcService.Engine.Curing;
using CalcService.Engine.Findings;
using CalcService.Engine.Releases;

namespace CalcService.Engine.Tests.Curing;

/// <summary>The schedule by the cone's own heat.</summary>
public sealed class CoupledScheduleTests
{
    private const double Zero = GoodCure.Zero;

    [Fact]
    public void Cone_with_nothing_wrong_proceeds_without_a_finding()
    {
        var schedule = GoodCure.Schedule(GoodCure.Coupled);
        Assert.Empty(schedule.Findings);
        Assert.Equal(["/conditions", "/ends/0/rope/metallicArea"],
            schedule.Assumptions.Select(assumption => assumption.Pointer).Order(StringComparer.Ordinal));
        var end = schedule.Result.Ends[0];
        Assert.True(end.EnergyBalanceError < 1e-6);
        Assert.True(end.GelAt.Earliest < end.GelAt.Expected && end.GelAt.Expected < end.GelAt.Latest);
        Assert.True(end.GelAt.Latest <= end.UndisturbedUntil && end.UndisturbedUntil < end.ProofLoadFrom
            && end.ProofLoadFrom <= end.ServiceFrom);
        Assert.Equal("sheet", end.GovernedBy.ServiceFrom);
        Assert.Equal(.90, end.LeastCured!.DegreeOfCure, 1e-6);
        Assert.Equal(49, end.Curve.Count);
    }

    [Fact]
    public void Cold_steel_holds_the_cone_back_though_the_air_is_warm()
    {
        CuredEnd With(double steel) =>
            GoodCure.First(GoodCure.Coupled with { Conditions = GoodCure.Coupled.Conditions with { SteelK = steel + Zero } });
        Assert.True(With(10).ServiceFrom > With(20).ServiceFrom);
    }

    [Fact]
    public void Cold_compound_starts_late()
    {
        CuredEnd With(double compound) =>
            GoodCure.First(GoodCure.Coupled with { Conditions = GoodCure.Coupled.Conditions with { CompoundK = compound + Zero } });
        Assert.True(With(8).GelAt.Expected > With(20).GelAt.Expected);
    }

    [Fact]
    public void Compound_without_heat_in_steel_and_air_of_one_temperature_is_the_table_on_the_wall()
    {
        // With next to no heat of reaction nothing warms: every place follows the sheet, so both models have to say the same.
        var sheet = GoodCure.Coupled.Compound with { Reaction = new(1, .01) };
        var table = GoodCure.First(GoodCure.Input);
        var cone = GoodCure.First(GoodCure.Coupled with { Compound = sheet });
        Assert.Equal(0, (cone.GelAt.Expected!.Value - table.GelAt.Expected!.Value).TotalSeconds, 3.0);
        Assert.Equal(0, (cone.GelAt.Earliest!.Value - cone.GelAt.Latest!.Value).TotalSeconds, 1.0);
        Assert.Equal(0, (cone.ProofLoadFrom!.Value - table.ProofLoadFrom!.Value).TotalMinutes, 1.0);
    }

    [Fact]
    public void Band_of_one_gel_time_is_followed_too()
    {
        var end = GoodCure.First(GoodCure.Coupled with
        {
            Compound = GoodCure.Coupled.Compound with { GelTimes = [new(30 + Zero, 0, 900) { SelfHeating = SelfHeating.No }] },
        });
        var fixedEnergy = GoodCure.First(GoodCure.Coupled with
        {
            Compound = GoodCure.Coupled.Compound with { GelTimes = [new(30 + Zero, 0, 900) { SelfHeating = SelfHeating.No }],
                ActivationEnergyJPerMol = 50e3 },
        });
        Assert.True(end.GelAt.Earliest < fixedEnergy.GelAt.Earliest && end.GelAt.Latest > fixedEnergy.GelAt.Latest);
        // The shape of the cure goes by the slowest gel times of the sheet, so that the band reaches the expected gel by a second.
        Assert.Equal(0, (fixedEnergy.GelAt.Expected!.Value - end.GelAt.Expected!.Value).TotalSeconds, 2.0);
    }

    [Fact]
    public void Gel_seen_at_the_mouth_later_than_computed_moves_the_rest()
    {
        var without = GoodCure.First(GoodCure.Coupled);
        var seen = (without.GelAt.Latest!.Value - GoodCure.MixedAt).TotalMinutes * 1.2;
        var with = GoodCure.First(CureFindingCases.Seen(seen, GelPlace.Mouth)(GoodCure.Coupled));
        Assert.True(with.ServiceFrom > without.ServiceFrom);
        Assert.Equal(seen, (with.GelAt.Expected!.Value - GoodCure.MixedAt).TotalMinutes, .02);
    }

    [Fact]
    public void Cone_hotter_than_it_may_serve_waits_until_it_has_cooled()
    {
        var peak = GoodCure.First(GoodCure.Coupled).Peak!.Kelvins;
        var end =
            GoodCure.First(
            GoodCure.Coupled with { Compound = GoodCure.Coupled.Compound with { Service = new(240, 293.15 + ((peak - 293.15) * .2)) } });
        Assert.Equal("cooling", end.GovernedBy.ServiceFrom);
        Assert.True(end.ServiceFrom > GoodCure.First(GoodCure.Coupled).ServiceFrom);
    }

    [Theory]
    [InlineData(ThermalModel.Uniform)]
    [InlineData(ThermalModel.Coupled)]
    public void Hold_that_ends_after_the_temperatures_do_is_no_release(ThermalModel model)
    {
        var input = GoodCure.Coupled with { ThermalModel = model, Conditions = GoodCure.Through((0, 20), (12, 20)).Conditions };
        Assert.NotNull(GoodCure.First(input).ProofLoadFrom);
        var held = GoodCure.Schedule(input with { Compound = input.Compound with { MinimumHoldS = 12 * 3600 } });
        Assert.Null(held.Result.Ends[0].ProofLoadFrom);
        Assert.Equal(Decision.Undetermined, held.Decision);
    }

    [Fact]
    public void Steel_below_the_lowest_cure_temperature_is_not_determined()
    {
        var schedule = GoodCure.Schedule(GoodCure.Coupled with
        {
            Compound = GoodCure.Coupled.Compound with { LowestCureK = 8 + Zero },
            Conditions = GoodCure.Coupled.Conditions with { SteelK = 7.5 + Zero },
        });
        Assert.Equal(Decision.Undetermined, schedule.Decision);
    }
}
