using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Pouring;
using CalcService.Engine.Tests.Numerics;

namespace CalcService.Engine.Tests.Pouring;

/// <summary>
/// What the trade does, held against a plan: common practice, no source. The sheet is invented here, in degrees
/// Fahrenheit, and belongs to no compound.
/// </summary>
public sealed class CommonPracticeTests
{
    private static readonly CompoundSheet Sheet = GoodPour.Sheet with
    {
        Name = "invented, in degrees Fahrenheit",
        Pouring = new(Fahrenheit(33), Fahrenheit(100)),
        Doses = [new(Fahrenheit(33), Fahrenheit(41), 5), new(Fahrenheit(41), Fahrenheit(53), 2), new(Fahrenheit(53), Fahrenheit(100), 0)],
        GelTimes = [new(Fahrenheit(72), 0, 21 * 60), new(Fahrenheit(45), 2, 26 * 60), new(Fahrenheit(35), 5, 31 * 60)],
        MixingTimeS = 100,
        ShelfLifeMonths = 11,
        Storage = null,
    };

    [Theory]
    [InlineData(33, 5)]
    [InlineData(40.9, 5)]
    [InlineData(41, 2)]
    [InlineData(52.9, 2)]
    [InlineData(53, 0)]
    [InlineData(100, 0)]
    public void Dose_goes_by_the_band_of_the_cold_steel(double fahrenheit, int perKit)
    {
        var plan = At(fahrenheit);
        Assert.Equal(perKit, plan.Result.Dose!.PerKit);
        Assert.DoesNotContain(plan.Findings, finding => finding.Definition == CompoundFindings.OutsidePouringRange);
    }

    [Theory]
    [InlineData(32.9)]
    [InlineData(100.1)]
    public void Nobody_pours_outside_the_range(double fahrenheit) => Assert.Equal(Decision.DoNotProceed, At(fahrenheit).Decision);

    [Fact]
    public void Compound_gels_as_its_sheet_says_and_is_used_up_after_mixing_and_filling()
    {
        var plan = At(72).Result;
        Printed.Matches(21 * 60, plan.Gel!.InVessel.ExpectedS);
        Printed.Matches(100 + (2 * 120), Assert.Single(plan.Mixes).UsedInS!.Value);
    }

    [Theory]
    [InlineData("2025-04-12", true)]
    [InlineData("2025-04-11", false)]
    public void Kit_keeps_as_long_as_the_sheet_says(string madeOn, bool good)
    {
        var lot = new StockLot("A", "small", 4, null,
            DateOnly.Parse(madeOn, System.Globalization.CultureInfo.InvariantCulture)) { Storage = GoodPour.Stored };
        var plan = GoodPour.Plan(GoodPour.Input with { Compound = Sheet, Stock = [lot] });
        Assert.Equal(good, plan.Result.Mixes.All(mix => mix.Kits.All(kit => kit.Lot == "A")));
    }

    [Fact]
    public void Broom_of_60_degrees_and_vent_of_a_half_inch_rope_are_inside_what_the_rules_say()
    {
        var end = GoodPour.End("A", 1);
        bool Has(PourEnd with, FindingDefinition definition) =>
            GoodPour.Plan(GoodPour.Input with { Ends = [with] }).Findings.Any(finding => finding.Definition == definition);
        Assert.False(Has(end with { BroomAngleRad = Math.PI / 3 }, PouringFindings.BroomWide));
        Assert.True(Has(end with { Rope = end.Rope with { DiameterM = .0127 } }, PouringFindings.VentSmallBasket));
    }

    [Fact]
    public void Kits_are_mixed_whole() =>
        Assert.All(At(72).Result.Mixes,
        mix => Assert.Equal(mix.MixedM3, mix.Kits.Sum(kit => kit.Count * Sheet.Kits.Single(known => known.Code == kit.Kit).VolumeM3),
        1e-15));

    private static Outcome<PourPlanResult> At(double fahrenheit) => GoodPour.Plan(GoodPour.Input with
    {
        Compound = Sheet,
        Conditions = GoodPour.Input.Conditions with { AirK = Fahrenheit(fahrenheit), SteelK = Fahrenheit(fahrenheit),
        CompoundK = Fahrenheit(fahrenheit), RelativeHumidity = .3 },
    });

    private static double Fahrenheit(double degrees) => (degrees + 459.67) * 5 / 9;
}
