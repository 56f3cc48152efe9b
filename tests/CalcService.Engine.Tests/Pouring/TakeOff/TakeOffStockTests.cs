using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Pouring.TakeOff;

namespace CalcService.Engine.Tests.Pouring.TakeOff;

/// <summary>What the shelf holds has not to be bought.</summary>
public sealed class TakeOffStockTests
{
    private static readonly StockLot Lot = GoodPour.Lot("L1", "small", 2, "2027-01-31");

    [Fact]
    public void Kits_from_the_shelf_cost_nothing_and_spare_ones_come_from_it_as_far_as_it_reaches()
    {
        // Two are needed and one is spare.
        Assert.Equal(new KitLine("small", null, 2, 1, 2, 1, 19, 19), Kit([Lot]));
        Assert.Equal(new KitLine("small", null, 2, 1, 3, 0, 19, 0), Kit([Lot with { Count = 3 }]));
        Assert.Equal(new KitLine("small", null, 2, 1, 3, 0, 19, 0), Kit([Lot with { Count = 9 }]));
        Assert.Equal(new KitLine("small", null, 2, 1, 3, 0, 19, 0), Kit([Lot, Lot with { Lot = "L2", Count = 1 }]));
        // A lot that may not be used is no spare either.
        Assert.Equal(new KitLine("small", null, 2, 1, 2, 1, 19, 19), Kit([Lot, Lot with { Lot = "L2", Quarantined = Fact.Yes }]));
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(.10, 1)] // 0.6
    [InlineData(.50, 3)] // 3 exactly
    [InlineData(.51, 4)] // 3.06
    [InlineData(1, 6)]
    public void Spare_share_of_six_kits_is_rounded_up_to_whole_ones(double share, long spare)
    {
        // Eighteen ends need 3 × 518.67 = 1556 cm³: six small kits, where the sheet has no others.
        var takeOff = GoodQuote.TakeOff(GoodQuote.Input with
        {
            Ends = [GoodPour.End("A", 18)], PourTimeS = 1,
            Compound = GoodPour.Sheet with { Kits = [GoodPour.Sheet.Kits[0]] },
            Quote = GoodQuote.Quote with { SpareKits = new(null, share) },
        });

        Assert.Equal((6, spare, 6 + spare), (takeOff.Kits[0].Needed, takeOff.Kits[0].Spare, takeOff.Kits[0].ToBuy));
    }

    [Fact]
    public void Spare_kits_are_none_where_nobody_asks() =>
        Assert.Equal(0, Assert.Single(GoodQuote.With(quote => quote with { SpareKits = null }).Kits).Spare);

    [Fact]
    public void Doses_are_for_all_kits_less_those_on_the_shelf()
    {
        // At 5 °C two for each kit: two kits needed, one spare. At 2.50 each.
        Assert.Equal(new DoseLine(2, 6, 0, 6, 2.5m, 15), Doses(null));
        Assert.Equal(new DoseLine(2, 6, 0, 6, 2.5m, 15), Doses([Lot]));
        Assert.Equal(new DoseLine(2, 6, 2, 4, 2.5m, 10), Doses([Lot with { DoseCount = 2 }]));
        Assert.Equal(new DoseLine(2, 6, 6, 0, 2.5m, 0),
            Doses([Lot with { DoseCount = 2 }, Lot with { Lot = "L2", Count = 0, DoseCount = 50 }]));
    }

    [Theory]
    [InlineData("quarantined")]
    [InlineData("opened")]
    [InlineData("dose expired")]
    public void Doses_of_a_lot_that_may_not_be_used_do_not_count(string why)
    {
        var barred = Lot with { Lot = "L2", DoseCount = 50 };
        barred = why switch
        {
            "quarantined" => barred with { Quarantined = Fact.Yes },
            "opened" => barred with { State = LotState.Opened },
            _ => barred with { DoseExpiresOn = new DateOnly(2026, 3, 11) },
        };
        Assert.Equal(0, Doses([Lot, barred])!.FromStock);
    }

    [Fact]
    public void Lead_time_is_left_out_where_nothing_has_to_be_bought()
    {
        var input = GoodQuote.Input with { Stock = [Lot with { Count = 3 }] };
        Assert.Null(GoodQuote.TakeOff(input).LeadTimeS);
        Assert.Equal(GoodQuote.Quote.LeadTimeS, GoodQuote.TakeOff(input with { Stock = [Lot] }).LeadTimeS);
    }

    private static KitLine Kit(IReadOnlyList<StockLot> stock) =>
        Assert.Single(GoodQuote.TakeOff(GoodQuote.Input with { Stock = stock }).Kits);

    private static DoseLine? Doses(IReadOnlyList<StockLot>? stock) => GoodQuote.TakeOff(GoodQuote.Cold with { Stock = stock }).Doses;
}
