using CalcService.Engine.Compounds;
using CalcService.Engine.Curing;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Tests.Numerics;
using CalcService.Engine.Tests.Provenance;
using CsCheck;

namespace CalcService.Engine.Tests.Curing;

public sealed class CureScheduleTests
{
    private const double Zero = GoodCure.Zero;

    [Fact]
    public void Cure_at_65_degF_gels_in_15_minutes_and_is_full_60_minutes_later()
    {
        // Common practice, no source: at 65 °F gel in about 15 minutes, full strength 60 minutes after gel. The sheet is made here for
        // that.
        var f65 = ((65 - 32) / 1.8) + Zero;
        var sheet = new CompoundSheet
        {
            Name = "common practice, no source", Kits = [], GelTimes = [new(f65, 0, 900)], FullStrength = [new(f65, 3600)],
            Pouring = new(275, 310), Doses = [new(275, 310, 0)],
        };
        var end =
            GoodCure.First(GoodCure.Input with { Compound = sheet,
            Conditions = new() { ConstantAirK = f65, SteelK = f65, CompoundK = f65 } });

        Assert.Equal(new(GoodCure.After(15), GoodCure.After(15), GoodCure.After(15)), end.GelAt);
        Assert.Equal(GoodCure.After(15), end.UndisturbedUntil);
        Assert.Equal(GoodCure.After(75), end.ProofLoadFrom);
        Assert.Equal(GoodCure.After(75), end.ServiceFrom);
    }

    [Fact]
    public void Cold_after_full_strength_does_no_harm()
    {
        // Common practice, no source: once cured, cold does no harm.
        var warm = GoodCure.Schedule(GoodCure.Through((0, 20), (3, 20), (6, 20)));
        var cold = GoodCure.Schedule(GoodCure.Through((0, 20), (3, 20), (6, -54)));
        Assert.Equal(Decision.Proceed, cold.Decision);
        Assert.Equal(warm.Result.Ends[0].ServiceFrom, cold.Result.Ends[0].ServiceFrom);
    }

    [Fact]
    public void Gel_on_a_ramp_comes_when_an_independent_quadrature_says()
    {
        // 10 → 30 °C in 60 min, 30 min at 20 °C, 60 kJ/mol: 38.713 min.
        var ramp = GoodCure.Through((0, 10), (1, 30), (9, 30));
        var end =
            GoodCure.First(ramp with { Compound = GoodCure.Sheet with { GelTimes = [new(20 + Zero, 0, 1800)],
            ActivationEnergyJPerMol = 60e3 } });
        Assert.Equal(38.713, (end.GelAt.Expected!.Value - GoodCure.MixedAt).TotalMinutes, .5 / 60);
    }

    [Fact]
    public void Hold_of_the_sheet_keeps_the_rope_still_after_the_latest_gel()
    {
        var end = GoodCure.First(GoodCure.Input with { Compound = GoodCure.Sheet with { MinimumHoldS = 630 } });
        Assert.Equal(GoodCure.After(24), end.GelAt.Latest);
        Assert.Equal(GoodCure.After(24 + 11), end.UndisturbedUntil);
        Assert.Equal("minimumHold", end.GovernedBy.UndisturbedUntil);
        Assert.Equal(GoodCure.After(24 + 90), end.ProofLoadFrom);
    }

    [Fact]
    public void Hold_longer_than_the_cure_governs_the_load()
    {
        var end = GoodCure.First(GoodCure.Input with { Compound = GoodCure.Sheet with { MinimumHoldS = 2 * 3600 } });
        Assert.Equal(GoodCure.After(24 + 120), end.ProofLoadFrom);
        Assert.Equal("minimumHold", end.GovernedBy.ProofLoadFrom);
    }

    [Fact]
    public void Band_spans_the_temperatures_of_air_steel_and_compound()
    {
        // The sheet: 66 min at 5 °C, 24 at 20 °C, 10 at 35 °C. Nothing gels sooner than all warm, nothing later than all cold.
        var end = GoodCure.First(GoodCure.Input with
        {
            Conditions = new() { ConstantAirK = 20 + Zero, SteelK = 5 + Zero, CompoundK = 35 + Zero },
            Compound = GoodCure.Sheet with { Doses = [new(2 + Zero, 36 + Zero, 0)], Pouring = new(2 + Zero, 36 + Zero) },
        });
        Assert.Equal(new(GoodCure.After(10), GoodCure.After(24), GoodCure.After(66)), end.GelAt);
        Assert.Equal(("steel", "sheet"), (end.GovernedBy.GelAt, end.GovernedBy.ProofLoadFrom));
        // After gel too the steel is taken; below the sheet's row by 60 kJ/mol, the upper end of the published band.
        Assert.Equal(GoodCure.After(Math.Ceiling(66 + (90 * Math.Exp(60e3 / 8.31446261815324 * ((1 / (5 + Zero)) - (1 / (20 + Zero))))))),
            end.ProofLoadFrom);
    }

    [Theory]
    [InlineData(true, false)]
    [InlineData(false, true)]
    public void Missing_reading_leaves_no_time_to_act_on(bool steel, bool compound)
    {
        var end = GoodCure.First(GoodCure.Input with
        {
            Conditions = GoodCure.Input.Conditions with { SteelK = steel ? 293.15 : null, CompoundK = compound ? 293.15 : null },
        });
        Assert.Equal(new(null, GoodCure.After(24), null), end.GelAt);
        Assert.Equal((null, null, null), (end.UndisturbedUntil, end.ProofLoadFrom, end.ServiceFrom));
        Assert.Equal(new(null, null, null, null), end.GovernedBy);
    }

    [Fact]
    public void Forecast_that_ends_early_has_no_time_for_what_comes_after()
    {
        var end = GoodCure.First(GoodCure.Through((0, 20), (1, 20)));
        Assert.Equal(GoodCure.After(24), end.GelAt.Latest);
        Assert.Equal(GoodCure.After(24), end.UndisturbedUntil);
        Assert.Equal((null, null), (end.ProofLoadFrom, end.ServiceFrom));
    }

    [Fact]
    public void Forecast_that_ends_early_is_said_though_nobody_read_the_steel()
    {
        var input = GoodCure.Through((0, 20), (1, 20));
        var codes = GoodCure.Schedule(input with { Conditions = input.Conditions with { SteelK = null } })
            .Findings.Select(finding => finding.Definition.Code);
        Assert.Equal(["forecast-too-short", "reading-missing"], codes.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Dose_goes_by_the_place_that_the_sheet_names()
    {
        // 6 °C asks for two doses, 20 °C for none.
        int? Of(DosePlace place) => GoodCure.Schedule(GoodCure.Input with
        {
            Doses = null,
            Compound = GoodCure.Sheet with { DoseByTemperatureOf = place },
            Conditions = GoodCure.Input.Conditions with { SteelK = 6 + Zero },
        }).Result.Doses;
        Assert.Equal([2, 2, 0, 2, 0],
            new[] { DosePlace.Unknown, DosePlace.Colder, DosePlace.Air, DosePlace.Steel,
            DosePlace.Compound }.Select(place => Of(place)!.Value));
    }

    [Fact]
    public void Dose_that_is_not_given_is_that_of_the_colder_of_air_and_steel()
    {
        var schedule =
            GoodCure.Schedule(GoodCure.Input with { Doses = null, Conditions = GoodCure.Input.Conditions with { SteelK = 6 + Zero } });
        Assert.Equal(2, schedule.Result.Doses);
        Assert.Contains(schedule.Assumptions, assumption => assumption.Pointer == "/doses" && assumption.Value == Measure.Count(2));
    }

    [Fact]
    public void From_time_is_the_next_whole_minute_and_not_one_more()
    {
        DateTimeOffset? After(double afterGelS) =>
            GoodCure.First(GoodCure.Input with { Compound = GoodCure.Sheet with { FullStrength = [new(20 + Zero, afterGelS)] } })
            .ProofLoadFrom;
        Assert.Equal(GoodCure.After(24 + 75), After(4500.000001));
        Assert.Equal(GoodCure.After(24 + 76), After(4500.5));
        Assert.Equal(GoodCure.After(24 + 75), After(4499.999999));
    }

    [Fact]
    public void Warmer_air_never_cures_later() => Gen.Select(Gen.Double[3, 30].Array[3, 8], Gen.Double[0, 4]).Sample((celsius, more) =>
    {
        CuredEnd At(double shift) => GoodCure.First(GoodCure.Through([.. celsius.Select((c, i) => (i * 24.0, Math.Min(34, c + shift)))]));
        var (cool, warm) = (At(0), At(more));
        Assert.True(warm.GelAt.Expected <= cool.GelAt.Expected);
        Assert.True(warm.ServiceFrom <= cool.ServiceFrom);
        Assert.True(cool.GelAt.Earliest <= cool.GelAt.Expected && cool.GelAt.Expected <= cool.GelAt.Latest);
        Assert.True(cool.UndisturbedUntil <= cool.ProofLoadFrom && cool.ProofLoadFrom <= cool.ServiceFrom);
    });

    [Fact]
    public void Curve_rises_from_nothing_past_full_strength()
    {
        var curve = GoodCure.First(GoodCure.Through((0, 20), (2, 12), (30, 16))).Curve;
        Assert.Equal(0, curve[0].CureCentre);
        Assert.All(curve.Zip(curve.Skip(1)),
            pair => Assert.True(pair.First.CureCentre < pair.Second.CureCentre && pair.First.At < pair.Second.At));
        Assert.True(curve[^1].CureLatest >= .899);
        Assert.All(curve, point => Assert.True(point.CureLatest <= point.CureCentre && point.CureCentre <= point.CureEarliest));
    }

    [Fact]
    public void Series_at_any_offset_is_the_same_series()
    {
        var one = GoodCure.Through((-1, 14), (3, 22), (30, 9));
        var other = one with
        {
            Conditions =
                one.Conditions with { AirSeries =
                [.. one.Conditions.AirSeries.Select((point, i) => point with { At = point.At.ToOffset(TimeSpan.FromHours(i - 7)) })] },
        };
        Assert.Equal(GoodCure.First(one).ServiceFrom, GoodCure.First(other).ServiceFrom);
        Assert.Equal(TimeSpan.FromHours(1), GoodCure.First(other).ServiceFrom!.Value.Offset);
    }

    [Fact]
    [Verifies("gel-posterior", Check.WorkedExample,
        "by hand: spreads 10 % and 5 %, one gel at 1.25 times: weight 400/(100 + 400), 1.25^0.8 = 1.1954")]
    [Verifies("gel-posterior", Check.Analytic, "many gels seen leave nothing of the prior")]
    public void Observed_gel_weighs_against_the_spread_of_lots()
    {
        Printed.Agrees(1.1954, GelPosterior.Factor(Math.Log(1.25), 1, .10, .05, Trace.None), 5);
        Printed.Matches(1.25, GelPosterior.Factor(Math.Log(1.25), 1000000000, .10, .05, Trace.None), 1e-8);
    }
}
