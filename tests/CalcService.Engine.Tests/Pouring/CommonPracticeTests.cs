using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Pouring;
using CalcService.Engine.Tests.Numerics;

namespace CalcService.Engine.Tests.Pouring;

/// <summary>
/// What the trade does, held against a plan: common practice, no source. The sheet is written here and belongs to no
/// compound.
/// </summary>
public sealed class CommonPracticeTests
{
    private static readonly CompoundSheet Sheet = GoodPour.Sheet with
    {
        Name = "practice of the trade",
        Pouring = new(Fahrenheit(27), Fahrenheit(110)),
        Doses = [new(Fahrenheit(27), Fahrenheit(35), 2), new(Fahrenheit(35), Fahrenheit(48), 1), new(Fahrenheit(48), Fahrenheit(110), 0)],
        GelTimes = [new(Fahrenheit(65), 0, 15 * 60), new(Fahrenheit(40), 1, 15 * 60), new(Fahrenheit(30), 2, 15 * 60)],
        MixingTimeS = 120,
        ShelfLifeMonths = 18,
        Storage = null,
    };

    [Theory]
    [InlineData(27, 2)]
    [InlineData(34.9, 2)]
    [InlineData(35, 1)]
    [InlineData(47.9, 1)]
    [InlineData(48, 0)]
    [InlineData(110, 0)]
    public void Dose_goes_by_the_band_of_the_cold_steel(double fahrenheit, int perKit)
    {
        var plan = At(fahrenheit);
        Assert.Equal(perKit, plan.Result.Dose!.PerKit);
        Assert.DoesNotContain(plan.Findings, finding => finding.Definition == PouringFindings.OutsidePouringRange);
    }

    [Theory]
    [InlineData(26.9)]
    [InlineData(110.1)]
    public void Nobody_pours_outside_the_range(double fahrenheit) => Assert.Equal(Decision.DoNotProceed, At(fahrenheit).Decision);

    [Fact]
    public void Compound_at_65_degrees_gels_in_a_quarter_of_an_hour_after_two_minutes_of_mixing()
    {
        var plan = At(65).Result;
        Printed.Matches(15 * 60, plan.Gel!.InVessel.ExpectedS);
        Printed.Matches(120 + (2 * 120), Assert.Single(plan.Mixes).UsedInS!.Value);
    }

    [Theory]
    [InlineData("2024-09-12", true)]
    [InlineData("2024-09-11", false)]
    public void Kit_keeps_for_eighteen_months(string madeOn, bool good)
    {
        var lot = new StockLot("A", "small", 4, null, DateOnly.Parse(madeOn, System.Globalization.CultureInfo.InvariantCulture)) { Storage = GoodPour.Stored };
        var plan = GoodPour.Plan(GoodPour.Input with { Compound = Sheet, Stock = [lot] });
        Assert.Equal(good, plan.Result.Mixes.All(mix => mix.Kits.All(kit => kit.Lot == "A")));
    }

    [Fact]
    public void Broom_of_60_degrees_and_vent_of_a_half_inch_rope_are_inside_what_the_rules_say()
    {
        var end = GoodPour.End("A", 1);
        bool Has(PourEnd with, FindingDefinition definition) => GoodPour.Plan(GoodPour.Input with { Ends = [with] }).Findings.Any(finding => finding.Definition == definition);
        Assert.False(Has(end with { BroomAngleRad = Math.PI / 3 }, PouringFindings.BroomWide));
        Assert.True(Has(end with { Rope = end.Rope with { DiameterM = .0127 } }, PouringFindings.VentSmallBasket));
    }

    [Fact]
    public void Kits_are_mixed_whole() =>
        Assert.All(At(65).Result.Mixes, mix => Assert.Equal(mix.MixedM3, mix.Kits.Sum(kit => kit.Count * Sheet.Kits.Single(known => known.Code == kit.Kit).VolumeM3), 1e-15));

    private static Outcome<PourPlanResult> At(double fahrenheit) => GoodPour.Plan(GoodPour.Input with
    {
        Compound = Sheet,
        Conditions = GoodPour.Input.Conditions with { AirK = Fahrenheit(fahrenheit), SteelK = Fahrenheit(fahrenheit), CompoundK = Fahrenheit(fahrenheit), RelativeHumidity = .3 },
    });

    private static double Fahrenheit(double degrees) => (degrees + 459.67) * 5 / 9;
}
