using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Pouring;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Tests.Pouring;

/// <summary>What holds exactly on the edge of a rule, and just beyond it.</summary>
public sealed class PourBoundaryTests
{
    private const double Zero = GoodPour.Zero;

    [Theory]
    [InlineData(2, 2)]
    [InlineData(5, 2)]
    [InlineData(6.999999, 2)]
    [InlineData(7, 0)]
    [InlineData(34, 0)]
    public void Dose_is_that_of_the_band_of_the_steel(double celsius, int doses)
    {
        var plan = Plan(c => c with { AirK = Math.Max(celsius, 20) + Zero, SteelK = celsius + Zero, RelativeHumidity = .2 });
        Assert.Equal(doses, plan.Result.Dose?.PerKit);
    }

    [Theory]
    [InlineData(6, 20, "steel", 2)]
    [InlineData(20, 6, "air", 2)]
    [InlineData(20, 20, "steel", 0)]
    public void Dose_goes_by_the_colder_of_air_and_steel(double steel, double air, string place, int doses)
    {
        var plan = Plan(c => c with { AirK = air + Zero, SteelK = steel + Zero, RelativeHumidity = .2 });
        Assert.Equal(new DosePlan(doses, place, Math.Min(steel, air) + Zero), plan.Result.Dose);
    }

    [Theory]
    [InlineData(2, false)]
    [InlineData(34, false)]
    [InlineData(1.999999, true)]
    [InlineData(34.000001, true)]
    public void Pouring_range_holds_both_its_ends(double celsius, bool stops)
    {
        var plan = Plan(c => c with { AirK = celsius + Zero, SteelK = celsius + Zero, CompoundK = celsius + Zero, RelativeHumidity = .2 });
        // One fact, however many readings show it.
        var outside = plan.Findings.Where(finding => finding.Definition == CompoundFindings.OutsidePouringRange).ToArray();
        Assert.Equal(stops ? 1 : 0, outside.Length);
        Assert.All(outside,
            finding =>
            Assert.Equal(["/conditions/compoundTemperature", "/conditions/steelTemperature", "/compound/sheet/pouring"], finding.Related));
    }

    [Theory]
    [InlineData(3, null)]
    [InlineData(2.999999, "steel-near-dew-point")]
    [InlineData(1e-6, "steel-near-dew-point")]
    [InlineData(0, "steel-at-dew-point")]
    [InlineData(-5, "steel-at-dew-point")]
    public void Steel_at_the_margin_above_the_dew_point_is_dry_and_below_it_is_not(double above, string? code)
    {
        var dewPoint = DewPoint.OverWaterK(22 + Zero, .6, Trace.None);
        var plan = Plan(c => c with { RelativeHumidity = .6, SteelK = dewPoint + above });
        Assert.Equal(dewPoint, plan.Result.DewPointK);
        Assert.Null(plan.Result.FrostPointK);
        Assert.Equal(code, plan.Findings.SingleOrDefault()?.Definition.Code);
    }

    [Fact]
    public void Steel_below_freezing_is_held_against_the_frost_point()
    {
        // 4 °C and 60 %: dew at −3.0 °C, frost already at −2.7 °C.
        var frostPoint = DewPoint.OverIceK(4 + Zero, .6, Trace.None);
        var plan = Plan(c => c with { AirK = 4 + Zero, RelativeHumidity = .6, SteelK = frostPoint - .001 });

        Assert.True(frostPoint > plan.Result.DewPointK);
        Assert.Equal(frostPoint, plan.Result.FrostPointK);
        Assert.Equal(Measure.Temperature(frostPoint),
            Assert.Single(plan.Findings, f => f.Definition == SteelFindings.SteelAtDewPoint).Limit);
    }

    [Fact]
    public void Mix_used_up_exactly_at_the_end_of_its_pot_life_is_in_time()
    {
        var potLife = GoodPour.Plan(GoodPour.Input).Result.Gel!.PotLifeS!.Value;
        Outcome<PourPlanResult> With(double mixing) =>
            GoodPour.Plan(GoodPour.Input with { Compound = GoodPour.Sheet with { MixingTimeS = mixing } });

        // Times are compared in whole milliseconds, the pot life rounded down and the work up.
        var inTime = With(Math.Floor(potLife) - 240);
        Assert.Equal(Math.Floor(potLife), Assert.Single(inTime.Result.Mixes).UsedInS);
        Assert.Empty(inTime.Findings);
        Assert.Equal(2, With(potLife - 239).Result.Mixes.Count);
    }

    [Theory]
    [InlineData("2026-03-12", true)]
    [InlineData("2026-03-11", false)]
    public void Lot_is_good_on_its_last_good_day(string expiresOn, bool used)
    {
        var plan = GoodPour.Plan(GoodPour.Input with { Stock = [GoodPour.Lot("A", "small", 9, expiresOn)] });
        Assert.Equal(used, plan.Result.Mixes[0].Kits.Any(kit => kit.Lot == "A"));
    }

    [Fact]
    public void Lot_is_judged_by_the_day_where_the_pour_is()
    {
        // Half past midnight on the 12th there, still the 11th in Greenwich.
        var plan = GoodPour.Plan(GoodPour.Input with
        {
            PourAt = new(2026, 3, 12, 0, 30, 0, TimeSpan.FromHours(13)),
            Stock = [GoodPour.Lot("A", "small", 9, "2026-03-11")],
        });
        Assert.Contains(plan.Findings, finding => finding.Definition == PouringFindings.LotExpired && finding.Severity == Severity.Stop);
    }

    [Fact]
    public void Lot_marked_good_until_the_last_day_of_its_shelf_life_is_marked_right() =>
        Assert.Empty(
        GoodPour.Plan(GoodPour.Input with { Stock = [GoodPour.Lot("A", "small", 4, "2027-03-01") with { MadeOn = new(2026, 1, 1) }] })
        .Findings);

    [Theory]
    [InlineData(1, 60, "vapour-may-exceed-law peak")]
    [InlineData(2, 60, "vapour-above-recommended peak")]
    [InlineData(5, 0, "vapour-above-law eight-hour mean")]
    [InlineData(8, 0, "vapour-above-recommended eight-hour mean")]
    public void Peak_and_mean_are_each_held_against_their_own_limits_and_the_one_passed_furthest_is_found(double volumeM3,
        double changesPerHour, string expected)
    {
        // A ventilated cabinet has a high peak and a low mean, a closed one keeps its peak all day. Only where nothing is
        // ventilated is the law exceeded without an assumed mixing factor.
        var plan = Plan(c => c with { Room = new(volumeM3, changesPerHour / 3600), MixingFactor = null });
        var findings = plan.Findings;
        Assert.Equal(expected, string.Join(", ", findings
            .Select(finding => $"{finding.Definition.Code} {finding.Words.Single(word => word.Name == "which").Text}")
            .Order(StringComparer.Ordinal)));
        foreach (var finding in findings)
        {
            var peak = finding.Words.Any(word => word.Text == "peak");
            Assert.Equal(peak ? plan.Result.Vapour!.Peak : plan.Result.Vapour!.TimeWeighted, finding.Measured!.Value.Si);
            var law = finding.Definition == PouringFindings.VapourAboveLaw || finding.Definition == PouringFindings.VapourMayExceedLaw;
            Assert.Equal((law, peak) switch { (true, true) => 200e-6, (false, false) => 50e-6, _ => 100e-6 }, finding.Limit!.Value.Si);
        }
    }

    [Fact]
    public void Grade_1960_is_ordinary() =>
        Assert.Empty(GoodPour.Plan(GoodPour.Input with
        {
            Ends = [GoodPour.End("A", 1) with { Rope = GoodPour.End("A", 1).Rope with { Grade = 1960 } }],
        }).Findings);

    private static Outcome<PourPlanResult> Plan(Func<PourConditions, PourConditions> change) =>
        GoodPour.Plan(GoodPour.Input with { Conditions = change(GoodPour.Input.Conditions) });
}
