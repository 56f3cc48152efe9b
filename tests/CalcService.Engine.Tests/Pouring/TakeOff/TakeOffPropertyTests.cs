using CalcService.Engine.Pouring;
using CalcService.Engine.Pouring.TakeOff;
using CalcService.Engine.Tests.Numerics;
using CsCheck;

namespace CalcService.Engine.Tests.Pouring.TakeOff;

/// <summary>What holds for every quote.</summary>
public sealed class TakeOffPropertyTests
{
    private static readonly Gen<PourEnd> AnyEnd =
        from quantity in Gen.Int[1, 20]
        from diameter in Gen.Double[.008, .060]
        select Scaled(quantity, diameter);

    private static readonly Gen<Price> AnyPrice =
        from cents in Gen.Int[0, 100_000]
        from per in Gen.Double[.001, 1000]
        select new Price(cents / 100m, per);

    private static readonly Gen<Quote> AnyQuote =
        from wire in AnyPrice
        from seal in AnyPrice
        from cleaner in AnyPrice
        from dose in Gen.Int[0, 10_000]
        from rate in Gen.Int[0, 50_000]
        from spare in Gen.Int[0, 3]
        select GoodQuote.Quote with
        {
            SeizingWireDiameterM = null, SealPerEndM3 = null, SeizingWirePrice = wire, SealPrice = seal, CleanerPrice = cleaner,
            DosePrice = dose / 100m, HourlyRate = rate / 100m, SpareKits = new(spare, null),
        };

    /// <summary>One mix, so that nothing but the take-off is under test; cold enough for doses.</summary>
    private static readonly Gen<PourPlanInput> AnyJob =
        from ends in AnyEnd.Array[1, 4]
        from quote in AnyQuote
        select GoodQuote.Cold with { Ends = Named(ends), Quote = quote, PourTimeS = 1, Mixers = 10_000 };

    [Fact]
    public void Ends_told_one_by_one_are_the_ends_told_as_a_quantity() =>
        AnyJob.Sample(
            job =>
            {
                var split =
                    job with { Ends = Named(job.Ends.SelectMany(end => Enumerable.Repeat(end with { Quantity = 1 }, end.Quantity))) };
                AssertSame(GoodQuote.TakeOff(job), GoodQuote.TakeOff(split));
            },
            iter: 100);

    [Fact]
    public void Order_of_the_ends_changes_nothing() =>
        AnyJob.Sample(job => AssertSame(GoodQuote.TakeOff(job), GoodQuote.TakeOff(job with { Ends = [.. job.Ends.Reverse()] })), iter: 100);

    [Fact]
    public void Twice_the_ends_take_twice_the_materials_and_the_work_at_each_end_and_no_more_than_twice_the_kits_cost() =>
        AnyJob.Sample(
            job =>
            {
                var once = GoodQuote.TakeOff(job);
                var twice = GoodQuote.TakeOff(job with { Ends = [.. job.Ends.Select(end => end with { Quantity = 2 * end.Quantity })] });
                Assert.All(once.Materials.Zip(twice.Materials), pair =>
                {
                    Printed.Matches(2 * pair.First.Amount.Si, pair.Second.Amount.Si, relative: 1e-14);
                    // Each is rounded to four decimals.
                    Assert.InRange(pair.Second.Cost!.Value - (2 * pair.First.Cost!.Value), -.00015m, .00015m);
                });
                Assert.All(once.Labour.Zip(twice.Labour).Where(pair => pair.First.Per == "end"),
                    pair => Assert.Equal(2 * pair.First.TotalS, pair.Second.TotalS));
                decimal Mixed(TakeOffResult takeOff) => takeOff.Kits.Sum(kit => kit.Needed * kit.Price!.Value);
                Assert.True(Mixed(twice) <= 2 * Mixed(once));
            },
            iter: 100);

    [Fact]
    public void Dearer_price_never_lowers_a_cost() =>
        Gen.Select(AnyJob, Gen.Int[0, 5], Gen.Int[0, 100_000]).Sample(
            (job, which, cents) =>
            {
                var more = cents / 100m;
                Price Dearer(Price? price) => price! with { Amount = price!.Amount + more };
                var quote = job.Quote!;
                var dearer = which switch
                {
                    0 => quote with { DosePrice = quote.DosePrice + more },
                    1 => quote with { SeizingWirePrice = Dearer(quote.SeizingWirePrice) },
                    2 => quote with { SealPrice = Dearer(quote.SealPrice) },
                    3 => quote with { CleanerPrice = Dearer(quote.CleanerPrice) },
                    4 => quote with { HourlyRate = quote.HourlyRate + more },
                    _ => quote with { TaskRates = new Dictionary<string, decimal> { ["record"] = quote.HourlyRate!.Value + more } },
                };
                var (before, after) = (GoodQuote.TakeOff(job), GoodQuote.TakeOff(job with { Quote = dearer }));
                Assert.True(after.MaterialsCost >= before.MaterialsCost && after.LabourCost >= before.LabourCost
                    && after.TotalCost >= before.TotalCost);
            },
            iter: 200);

    [Fact]
    public void Total_is_the_sum_of_the_lines() =>
        AnyJob.Sample(
            job =>
            {
                var takeOff = GoodQuote.TakeOff(job);
                var lines = takeOff.Kits.Select(kit => kit.Cost).Append(takeOff.Doses!.Cost)
                    .Concat(takeOff.Materials.Select(line => line.Cost))
                    .Concat(takeOff.Labour.Select(line => line.Cost));
                Assert.Equal(lines.Sum(cost => cost!.Value), takeOff.TotalCost);
                Assert.Equal(takeOff.Doses.Needed, takeOff.Kits.Sum(kit => kit.Needed + kit.Spare) * takeOff.Doses.PerKit);
            },
            iter: 100);

    private static PourEnd[] Named(IEnumerable<PourEnd> ends) => [.. ends.Select((end, i) => end with { Id = $"E{i}" })];

    private static PourEnd Scaled(int quantity, double diameter)
    {
        var end = GoodPour.End("A", quantity);
        return end with
        {
            Rope = end.Rope with { DiameterM = diameter },
            Basket = end.Basket with { SmallEndDiameterM = diameter * 1.15, LargeEndDiameterM = diameter * 2.2, LengthM = diameter * 5,
            ToleranceM = .0002 },
        };
    }

    private static void AssertSame(TakeOffResult one, TakeOffResult other)
    {
        Assert.Equal(one.Kits, other.Kits);
        Assert.Equal(one.Doses, other.Doses);
        Assert.Equal(one.Materials, other.Materials);
        Assert.Equal(one.Labour, other.Labour);
        Assert.Equal((one.MaterialsCost, one.LabourCost, one.TotalCost), (other.MaterialsCost, other.LabourCost, other.TotalCost));
    }
}
