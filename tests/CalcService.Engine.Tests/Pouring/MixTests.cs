using CalcService.Engine.Pouring;

namespace CalcService.Engine.Tests.Pouring;

public sealed class MixTests
{
    [Fact]
    public void Job_that_outlasts_the_pot_life_is_divided_into_mixes_one_after_another()
    {
        // Pot life 16.5 min at 22 °C, 2 min a basket: 30 baskets are an hour of pouring.
        var plan = GoodPour.Plan(GoodPour.Input with { Ends = [GoodPour.End("A", 20), GoodPour.End("B", 10)] });
        var potLife = plan.Result.Gel!.PotLifeS!.Value;

        Assert.InRange(plan.Result.Mixes.Count, 60 * 60 / potLife, 30);
        Assert.Equal(20, plan.Result.Mixes.SelectMany(mix => mix.Fills).Where(fill => fill.End == "A").Sum(fill => fill.Count));
        Assert.Equal(10, plan.Result.Mixes.SelectMany(mix => mix.Fills).Where(fill => fill.End == "B").Sum(fill => fill.Count));
        var startsAt = GoodPour.Input.PourAt;
        foreach (var mix in plan.Result.Mixes)
        {
            Assert.Equal(startsAt, mix.StartsAt);
            Assert.InRange(mix.UsedInS!.Value, 0, potLife);
            Assert.InRange(mix.MixedM3, mix.NeededM3, double.MaxValue);
            Assert.Equal(startsAt.AddSeconds(Math.Floor(potLife)), mix.StopPouringAt);
            startsAt = startsAt.AddSeconds(mix.UsedInS.Value);
        }
    }

    [Fact]
    public void Pot_life_that_ends_beyond_the_calendar_has_no_clock_time()
    {
        // Two gel times one degree apart that differ ten thousandfold: at 8 °C their line says more years than there are.
        var plan = GoodPour.Plan(GoodPour.Input with
        {
            Compound = GoodPour.Sheet with { GelTimes = [new(30 + GoodPour.Zero, 0, 600_000), new(31 + GoodPour.Zero, 0, 60)] },
            Conditions = GoodPour.Input.Conditions with { AirK = 8 + GoodPour.Zero, SteelK = 8 + GoodPour.Zero,
            CompoundK = 8 + GoodPour.Zero },
        });

        Assert.True(plan.Result.Gel!.PotLifeS > TimeSpan.MaxValue.TotalSeconds);
        Assert.Null(Assert.Single(plan.Result.Mixes).StopPouringAt);
    }

    [Fact]
    public void Lots_go_into_the_mixes_first_expiry_first()
    {
        var plan = GoodPour.Plan(GoodPour.Input with
        {
            Ends = [GoodPour.End("A", 30)],
            Stock = [GoodPour.Lot("LATE", "large", 9, "2027-06-30"), GoodPour.Lot("SOON", "large", 2, "2026-03-31"),
                GoodPour.Lot("OLD", "large", 9, "2026-01-31")],
        });

        var lots = plan.Result.Mixes.SelectMany(mix => mix.Kits).Select(kit => kit.Lot).ToArray();
        Assert.Equal(["SOON", "SOON"], lots[..2]);
        Assert.All(lots[2..], lot => Assert.Equal("LATE", lot));
    }

    [Fact]
    public void Basket_that_takes_several_kits_is_mixed_side_by_side_or_not_at_all()
    {
        // Five litres and a largest kit of 1.1 L: five kits of 4 min each don't fit a pot life of 16.5 min one by one.
        var large = GoodPour.Input with
        {
            Ends = [GoodPour.Cylinder("A", 1, 5e-3)],
            Allowance = 0,
            Compound = GoodPour.Sheet with { MixingTimeS = 240 },
        };

        Assert.Contains(GoodPour.Plan(large).Findings, finding => finding.Definition == PouringFindings.PotLifeTooShort);
        var together = GoodPour.Plan(large with { Mixers = 5 });
        Assert.DoesNotContain(together.Findings, finding => finding.Definition == PouringFindings.PotLifeTooShort);
        Assert.InRange(Assert.Single(together.Result.Mixes).UsedInS!.Value, 0, together.Result.Gel!.PotLifeS!.Value);
    }

    [Fact]
    public void End_that_takes_longer_to_fill_counts_with_its_own_time()
    {
        var plan = GoodPour.Plan(GoodPour.Input with { Ends = [GoodPour.End("A", 1), GoodPour.End("B", 1) with { PourTimeS = 300 }] });
        Assert.Equal(90 + 120 + 300, Assert.Single(plan.Result.Mixes).UsedInS);
    }

    [Fact]
    public void Thirty_baskets_of_five_sizes_with_three_lots_are_planned_and_proven()
    {
        var ends = new[] { 16, 20, 24, 28, 32 }.Select((millimetres, i) => Sized($"E{i}", 8 - i, millimetres)).ToArray();
        var plan = GoodPour.Plan(GoodPour.Input with
        {
            Ends = ends,
            Stock = [GoodPour.Lot("A", "small", 6, "2026-12-31"), GoodPour.Lot("B", "medium", 3, "2026-06-30"),
            GoodPour.Lot("C", "large", 1, "2026-09-30")],
        });

        Assert.Equal(30, plan.Result.Mixes.Sum(mix => mix.Fills.Sum(fill => fill.Count)));
        Assert.Equal((true, 0), plan.Result.Optimality);
    }

    [Fact]
    public void Job_whose_best_mixes_take_too_long_to_find_still_gets_mixes()
    {
        // Colder air than compound: the pot life is longer, so there are many more ways to make a mix.
        var ends = new[] { 16, 20, 24, 28,
            32 }.Select((millimetres, i) => Sized($"E{i}", 8 - i, millimetres) with { SocketBreakingForceN = null }).ToArray();
        var plan = GoodPour.Plan(GoodPour.Input with
        {
            Ends = ends,
            Conditions = GoodPour.Input.Conditions with { AirK = 9 + GoodPour.Zero, SteelK = 8 + GoodPour.Zero,
            CompoundK = 18 + GoodPour.Zero },
            Stock = [GoodPour.Lot("A", "small", 6, "2026-12-31"), GoodPour.Lot("B", "medium", 3, "2026-06-30"),
            GoodPour.Lot("C", "large", 1, "2026-09-30")],
        });

        Assert.Equal(30, plan.Result.Mixes.Sum(mix => mix.Fills.Sum(fill => fill.Count)));
        Assert.InRange(plan.Result.Optimality!.Value.Gap, 0, 1);
    }

    private static PourEnd Sized(string id, int quantity, double millimetres)
    {
        var end = GoodPour.End(id, quantity);
        var d = millimetres / 1000;
        return end with
        {
            Rope = end.Rope with { DiameterM = d },
            Basket = end.Basket with { SmallEndDiameterM = 1.15 * d, LargeEndDiameterM = 2.25 * d, LengthM = 5 * d },
            SocketBreakingForceN = 1e6,
        };
    }
}
