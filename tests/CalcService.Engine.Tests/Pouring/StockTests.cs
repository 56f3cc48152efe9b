using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Pouring;

namespace CalcService.Engine.Tests.Pouring;

public sealed class StockTests
{
    [Fact]
    public void Expired_lot_is_never_used_even_where_the_stock_falls_short()
    {
        var plan = Plan(30, GoodPour.Lot("OLD", "large", 50, "2026-03-11"), GoodPour.Lot("GOOD", "small", 1, "2026-12-31"));

        Assert.DoesNotContain(plan.Result.Mixes[0].Kits, kit => kit.Lot == "OLD");
        Assert.Contains(plan.Result.Mixes[0].Kits, kit => kit.Lot == "GOOD");
        Assert.Contains(plan.Result.Mixes[0].Kits, kit => kit.Lot is null);
    }

    [Fact]
    public void Lot_without_a_date_is_never_used() =>
        Assert.All(Plan(2, GoodPour.Lot("?", "small", 50, null)).Result.Mixes[0].Kits, kit => Assert.Null(kit.Lot));

    [Fact]
    public void Lots_are_used_first_expiry_first()
    {
        // 30 ends take three large kits, the only size on the shelf.
        var plan = Plan(
            30, GoodPour.Lot("LATE", "large", 9, "2027-06-30"), GoodPour.Lot("SOON", "large", 1, "2026-03-31"),
            GoodPour.Lot("NEXT", "large", 1, "2026-04-30"), GoodPour.Lot("OLD", "large", 5, "2026-01-31"));

        Assert.Equal([("large", "SOON", 1), ("large", "NEXT", 1), ("large", "LATE", 1)],
            plan.Result.Mixes[0].Kits.Select(kit => (kit.Kit, kit.Lot!, kit.Count)));
        Assert.Equal(new KitCount("large", 3, 0), plan.Result.Kits.Single(kit => kit.Kit == "large"));
    }

    [Fact]
    public void Lots_of_one_expiry_are_used_in_the_order_of_the_request()
    {
        var plan = Plan(30, GoodPour.Lot("B", "large", 2, "2026-12-31"), GoodPour.Lot("A", "large", 2, "2026-12-31"));
        Assert.Equal([("B", 2), ("A", 1)], plan.Result.Mixes[0].Kits.Select(kit => (kit.Lot!, kit.Count)));
    }

    [Fact]
    public void Lot_expires_by_its_date_of_manufacture_where_nothing_is_printed()
    {
        // Fourteen months of shelf life: made on 12 January 2025 it is good on 12 March 2026.
        var plan = Plan(2, new StockLot("MADE", "small", 9, null, new(2025, 1, 12)));
        Assert.Equal("MADE", Assert.Single(plan.Result.Mixes[0].Kits).Lot);
    }

    [Fact]
    public void Stock_that_covers_the_job_is_used_before_anything_is_bought()
    {
        // Two ends need one small kit; the shelf has only large ones.
        var plan = Plan(2, GoodPour.Lot("A", "large", 1, "2026-12-31"));
        Assert.Equal(new MixKit("large", "A", 1), Assert.Single(plan.Result.Mixes[0].Kits));
        Assert.Equal((0m, 62m), (plan.Result.Cost, plan.Result.StockValue));
        Assert.Empty(plan.Findings);
    }

    [Fact]
    public void Quote_draws_on_no_shelf_and_finds_nothing_missing()
    {
        var plan = GoodPour.Plan(GoodPour.Input with { Purpose = Purpose.Quote, Stock = null });
        Assert.Equal(new MixKit("small", null, 1), Assert.Single(plan.Result.Mixes[0].Kits));
        Assert.Equal((19m, 0m), (plan.Result.Cost, plan.Result.StockValue));
        Assert.Empty(plan.Findings);
    }

    [Theory]
    [InlineData(300, true)]
    [InlineData(300.001, false)]
    public void Stock_that_holds_exactly_what_is_needed_is_enough(double neededMillilitres, bool enough)
    {
        var plan = GoodPour.Plan(Needing(neededMillilitres) with { Stock = [GoodPour.Lot("A", "small", 1, "2026-12-31")] });
        Assert.Equal(enough, plan.Findings.All(finding => finding.Definition != PouringFindings.StockShort));
        Assert.Equal(enough, plan.Result.Kits.All(kit => kit.ToBuy == 0));
    }

    [Fact]
    public void Lot_is_used_no_longer_than_its_shelf_life_whatever_is_printed_on_it()
    {
        // Made in 2020 with a shelf life of 14 months, marked good until 2030.
        var plan = Plan(1, new StockLot("A", "small", 4, new(2030, 1, 1), new(2020, 1, 1)));
        Assert.Equal(1, plan.Result.Kits.Sum(kit => kit.ToBuy));
        Assert.Contains(plan.Findings, finding => finding.Definition == PouringFindings.LotExpired && finding.Severity == Severity.Stop);
    }

    [Fact]
    public void Expired_lot_that_would_not_have_been_enough_either_is_a_note()
    {
        var plan = Plan(5, GoodPour.Lot("A", "small", 1, "2026-03-11"));
        Assert.Equal(Severity.Note, Assert.Single(plan.Findings, finding => finding.Definition == PouringFindings.LotExpired).Severity);
        Assert.Equal(Decision.ProceedWithCare, plan.Decision);
    }

    [Fact]
    public void Kit_never_counts_for_more_than_it_holds()
    {
        // 300.2 mL don't cover 300.5 mL, though both are about 300 and both round up to 301.
        var pour = Needing(300.5);
        var plan = GoodPour.Plan(pour with { Compound = pour.Compound with { Kits = [new("odd", 300.2e-6, 1)] } });
        Assert.Equal(2, Assert.Single(plan.Result.Kits).ToBuy);
    }

    [Theory]
    [InlineData(PourObjective.LeastCost, "4 1 1")] // 179 in 3000 mL
    [InlineData(PourObjective.LeastWaste, "4 1 1")] // 3000 mL is the next multiple of 100, and this its cheapest cover
    [InlineData(PourObjective.FewestKits, "0 0 3")] // three kits; 0 1 2 would be 50 mL too little
    public void Objective_chooses_the_kits(PourObjective objective, string kits)
    {
        var plan = GoodPour.Plan(Needing(2950) with { Objective = objective });
        Assert.Equal(kits, string.Join(' ', plan.Result.Kits.Select(kit => kit.ToBuy)));
    }

    /// <summary>A basket of 1 mL and a vessel that keeps the rest, so that the need is known to the last digit.</summary>
    private static PourPlanInput Needing(double millilitres) => GoodPour.Input with
    {
        Ends = [GoodPour.Cylinder("A", 1, 1e-6)],
        Stock = null,
        Allowance = 0,
        VesselResidueM3 = (millilitres - 1) / 1e6,
    };

    private static Outcome<PourPlanResult> Plan(int ends, params StockLot[] stock) =>
        GoodPour.Plan(GoodPour.Input with { Ends = [GoodPour.End("A", ends)], Stock = stock, PourTimeS = 1, Mixers = 100 });
}
