using CalcService.Engine.Compounds;
using CalcService.Engine.Pouring;
using CalcService.Engine.Tests.Numerics;
using CsCheck;

namespace CalcService.Engine.Tests.Pouring;

/// <summary>What holds for every pour.</summary>
public sealed class PourPropertyTests
{
    private static readonly Gen<PourEnd> AnyEnd =
        from quantity in Gen.Int[1, 8]
        from diameter in Gen.Double[.008, .040]
        from opening in Gen.Double[1.6, 2.2]
        from construction in OneOf<string?>("6x7", "6x19", "6x36", "8x36", null)
        select Scaled(quantity, diameter, opening, construction);

    private static readonly Gen<StockLot> AnyLot =
        from kit in OneOf("small", "medium", "large")
        from count in Gen.Int[0, 6]
        from expires in OneOf<string?>(null, "2026-03-11", "2026-03-12", "2026-09-30", "2027-01-31")
        from lot in Gen.Int[0, 99]
        select GoodPour.Lot($"L{lot}", kit, count, expires);

    private static readonly Gen<PourPlanInput> AnyPour =
        from ends in AnyEnd.Array[1, 4]
        from stock in AnyLot.Array[0, 5]
        from objective in OneOf(PourObjective.LeastCost, PourObjective.LeastWaste, PourObjective.FewestKits)
        select GoodPour.Input with { Ends = [.. ends.Select((end, i) => end with { Id = $"E{i}" })], Stock = stock, Objective = objective,
            PourTimeS = 1, Mixers = 1000 };

    [Fact]
    public void Kits_cover_the_need_and_come_from_good_lots_as_far_as_they_reach() =>
        AnyPour.Sample(
            pour =>
            {
                var result = GoodPour.Plan(pour).Result;
                var good = pour.Stock!.Where(lot => lot.ExpiresOn >= new DateOnly(2026, 3, 12)).ToArray();
                Assert.True(result.Mixes[0].MixedM3 >= result.NeededM3 - 1e-12);
                Assert.All(result.Kits, kit =>
                {
                    Assert.InRange(kit.FromStock, 0, good.Where(lot => lot.Kit == kit.Kit).Sum(lot => lot.Count));
                    Assert.Equal(kit.FromStock,
                        result.Mixes[0].Kits.Where(mixed => mixed.Kit == kit.Kit && mixed.Lot is not null).Sum(mixed => mixed.Count));
                    Assert.Equal(kit.ToBuy,
                        result.Mixes[0].Kits.Where(mixed => mixed.Kit == kit.Kit && mixed.Lot is null).Sum(mixed => mixed.Count));
                });
                Assert.All(result.Mixes[0].Kits.Where(mixed => mixed.Lot is not null),
                    mixed => Assert.Contains(good, lot => lot.Lot == mixed.Lot && lot.Kit == mixed.Kit && lot.Count >= mixed.Count));
            },
            iter: 500);

    [Fact]
    public void More_stock_never_costs_more_to_buy() =>
        Gen.Select(AnyPour, AnyLot).Sample(
            (pour, more) =>
            {
                var before = GoodPour.Plan(pour).Result.Cost;
                Assert.True(GoodPour.Plan(pour with { Stock = [.. pour.Stock!, more] }).Result.Cost <= before);
            },
            iter: 500);

    [Fact]
    public void Order_of_the_ends_changes_nothing_but_their_order() =>
        AnyPour.Sample(
            pour =>
            {
                var (one, other) = (GoodPour.Plan(pour), GoodPour.Plan(pour with { Ends = [.. pour.Ends.Reverse()] }));
                AssertSameTotals(one.Result, other.Result);
                Assert.Equal(one.Decision, other.Decision);
                Assert.Equal(one.Result.Ends.Select(end => end.Id), other.Result.Ends.Reverse().Select(end => end.Id));
            },
            iter: 300);

    [Fact]
    public void Ends_told_one_by_one_are_the_ends_told_as_a_quantity() =>
        AnyPour.Sample(
            pour => AssertSameTotals(
                GoodPour.Plan(pour).Result,
                GoodPour.Plan(
                pour with { Ends = [.. pour.Ends.SelectMany(end => Enumerable.Repeat(end with { Quantity = 1 }, end.Quantity))] }).Result),
            iter: 300);

    [Fact]
    public void Warmer_compound_never_lengthens_the_pot_life() =>
        Gen.Select(Gen.Double[2, 34], Gen.Double[2, 34], Gen.Double[2, 34], Gen.Double[0, 10]).Sample(
            (air, steel, compound, warmer) =>
            {
                double PotLife(double celsius) => GoodPour.Plan(GoodPour.Input with
                {
                    Conditions = GoodPour.Input.Conditions with
                    {
                        AirK = air + GoodPour.Zero, SteelK = steel + GoodPour.Zero, CompoundK = celsius + GoodPour.Zero,
                    },
                }).Result.Gel!.PotLifeS!.Value;
                Assert.True(PotLife(compound + warmer) <= PotLife(compound) * (1 + 1e-12));
            },
            iter: 500);

    [Fact]
    public void Band_of_the_gel_in_the_cone_is_in_order() =>
        Gen.Select(Gen.Double[2, 34], Gen.Double[2, 34], Gen.Double[2, 34]).Sample(
            (air, steel, compound) =>
            {
                var cone = GoodPour.Plan(GoodPour.Input with
                {
                    Conditions = GoodPour.Input.Conditions with
                    {
                        AirK = air + GoodPour.Zero, SteelK = steel + GoodPour.Zero, CompoundK = compound + GoodPour.Zero,
                    },
                }).Result.Gel!.InCone;
                Assert.True(cone.EarliestS <= cone.ExpectedS && cone.ExpectedS <= cone.LatestS);
            },
            iter: 500);

    private static Gen<T> OneOf<T>(params T[] choices) => Gen.Int[0, choices.Length - 1].Select(index => choices[index]);

    private static PourEnd Scaled(int quantity, double diameter, double opening, string? construction)
    {
        var end = GoodPour.End("A", quantity);
        return end with
        {
            Rope = end.Rope with { DiameterM = diameter, Construction = construction },
            Basket = end.Basket with
            {
                SmallEndDiameterM = diameter * 1.15, LargeEndDiameterM = diameter * 1.15 * opening, LengthM = diameter * 5,
                    ToleranceM = .0002,
            },
        };
    }

    private static void AssertSameTotals(PourPlanResult one, PourPlanResult other)
    {
        Printed.Matches(one.NeededM3!.Value, other.NeededM3!.Value);
        Assert.Equal(one.Kits, other.Kits);
        Assert.Equal(one.Mixes[0].Kits, other.Mixes[0].Kits);
        Assert.Equal((one.Cost, one.StockValue, one.Mixes[0].UsedInS), (other.Cost, other.StockValue, other.Mixes[0].UsedInS));
        Printed.Matches(one.Vapour!.Peak, other.Vapour!.Peak);
    }
}
