using CalcService.Engine.Compounds;
using CalcService.Engine.Pouring;

namespace CalcService.Engine.Tests.Pouring;

/// <summary>The dates of a lot and its parts on 12 March 2026.</summary>
public sealed class LotDateTests
{
    [Theory]
    [InlineData("2026-12-31", null, null, null, true)]
    [InlineData("2026-12-31", "2026-03-12", "2026-03-12", "2026-03-12", true)]
    [InlineData("2026-12-31", "2026-03-11", null, null, false)]
    [InlineData("2026-12-31", null, "2026-03-11", null, false)]
    [InlineData("2026-03-11", "2026-12-31", "2026-12-31", "2026-12-31", false)]
    [InlineData(null, "2026-12-31", "2026-12-31", null, true)] // no dose goes in at 20 °C
    [InlineData(null, "2026-12-31", null, null, false)]
    [InlineData(null, null, "2026-12-31", null, false)]
    [InlineData(null, null, null, "2026-12-31", false)]
    [InlineData("2026-12-31", null, null, "2026-03-11", true)]
    public void Lot_is_used_up_to_the_earliest_date_of_what_goes_into_the_mix(string? kit, string? resin, string? hardener, string? dose,
        bool used) =>
        Assert.Equal(used, IsUsed(Lot(kit, resin, hardener, dose)));

    [Theory]
    [InlineData("2026-12-31", "2026-03-11", false)]
    [InlineData("2026-12-31", "2026-03-12", true)]
    [InlineData("2026-12-31", null, true)]
    [InlineData(null, "2026-12-31", true)]
    [InlineData(null, null, false)] // resin and hardener are good; the dose may not be
    public void Date_of_the_dose_counts_where_the_cold_asks_for_one(string? kit, string? dose, bool used) =>
        Assert.Equal(used,
        IsUsed(Lot(kit, "2026-12-31", "2026-12-31", dose),
        conditions => conditions with { SteelK = 6 + GoodPour.Zero, AirK = 6 + GoodPour.Zero }));

    [Fact]
    public void Date_of_the_dose_counts_where_nobody_knows_the_dose() =>
        Assert.False(IsUsed(Lot("2026-12-31", null, null, "2026-03-11"), conditions => conditions with { SteelK = null }));

    [Fact]
    public void Lots_are_used_by_the_first_expiry_of_any_part()
    {
        var plan = GoodPour.Plan(GoodPour.Input with
        {
            Stock = [GoodPour.Lot("KIT", "small", 4, "2026-05-31"),
                GoodPour.Lot("PART", "small", 4, "2026-12-31") with { HardenerExpiresOn = new(2026, 4, 30) }],
        });
        Assert.Equal("PART", Assert.Single(plan.Result.Mixes[0].Kits).Lot);
    }

    [Fact]
    public void Finding_names_lot_and_part()
    {
        var plan = GoodPour.Plan(GoodPour.Input with { Stock = [Lot("2026-12-31", "2026-03-09", "2026-03-10", null)] });
        var finding = Assert.Single(plan.Findings, found => found.Definition == PouringFindings.LotExpired);
        Assert.Equal("/stock/0/resinExpiresOn", finding.Pointer);
        Assert.Equal([("lot", "A"), ("part", "resin"), ("expiresOn", "2026-03-09"), ("days", "3")],
            finding.Words.Select(word => (word.Name, word.Text!)));
    }

    private static StockLot Lot(string? kit, string? resin, string? hardener, string? dose) =>
        GoodPour.Lot("A", "small", 9, kit) with { ResinExpiresOn = Day(resin), HardenerExpiresOn = Day(hardener),
        DoseExpiresOn = Day(dose) };

    private static DateOnly? Day(string? text) => GoodPour.Lot("", "", 0, text).ExpiresOn;

    private static bool IsUsed(StockLot lot, Func<PourConditions, PourConditions>? change = null) =>
        GoodPour.Plan(GoodPour.Input with { Stock = [lot],
        Conditions = change?.Invoke(GoodPour.Input.Conditions) ?? GoodPour.Input.Conditions })
            .Result.Mixes[0].Kits.Any(kit => kit.Lot is not null);
}
