using CalcService.Engine.Findings;
using CalcService.Engine.Pouring;
using CalcService.Engine.Tests.Numerics;
using CsCheck;

namespace CalcService.Engine.Tests.Pouring;

public sealed class FlipTests
{
    private const double Zero = GoodPour.Zero;

    [Fact]
    public void Good_pour_flips_at_the_edges_that_the_sheet_and_the_air_set()
    {
        // Sheet of the test: pouring 2 to 34 °C, one dose below 7 °C, gel times without a dose from 5 °C on. Air 22 °C at 50 %: dew point
        // 11.0946 °C (Magnus by hand),
        // and three kelvins above it are asked for.
        var flips = GoodPour.Plan(GoodPour.Input).Result.Flips;

        Assert.Equal(
        [
            ("airTemperature", "below", Decision.ProceedWithCare), ("airTemperature", "above", Decision.ProceedWithCare),
            ("steelTemperature", "below", Decision.ProceedWithCare), ("steelTemperature", "above", Decision.DoNotProceed),
            ("compoundTemperature", "below", Decision.ProceedWithCare), ("compoundTemperature", "above", Decision.DoNotProceed),
            ("relativeHumidity", "above", Decision.ProceedWithCare),
        ], flips.Select(flip => (flip.Reading, flip.When, flip.To)));
        Printed.Agrees(7, flips[0].Value - Zero, 4);
        Printed.Agrees(14.0946, flips[2].Value - Zero, 6);
        Printed.Agrees(34, flips[3].Value - Zero, 4);
        Printed.Agrees(5, flips[4].Value - Zero, 4);
        Printed.Agrees(34, flips[5].Value - Zero, 4);
    }

    [Fact]
    public void Compound_flips_where_its_pot_life_is_no_longer_enough()
    {
        // A fill of 11 min after 1.5 min of mixing needs 12.5 min of pot life, three quarters of a gel time of 16.67 min:
        // by hand through the rows 24 min at 20 °C and 10 min at 35 °C that is 25.9 °C.
        var pour = GoodPour.Input with { PourTimeS = 660 };
        var flip = Assert.Single(GoodPour.Plan(pour).Result.Flips, flip => flip is { Reading: "compoundTemperature", When: "above" });
        Assert.Equal(Decision.DoNotProceed, flip.To);
        Printed.Agrees(26, flip.Value - Zero, 2);
    }

    [Fact]
    public void Pour_that_something_else_stops_has_nothing_to_flip() =>
        Assert.Empty(GoodPour.Plan(GoodPour.Input with { Ends = [GoodPour.Input.Ends[0] with { Cleaner = Cleaner.Acid }] }).Result.Flips);

    [Fact]
    public void Decision_is_what_a_flip_says_beyond_it_and_as_before_short_of_it() =>
        (from air in Gen.Double[-5, 40]
         from steel in Gen.Double[-5, 40]
         from compound in Gen.Double[0, 40]
         from humidity in Gen.Double[.1, .98]
         // None, or more than the steps that the test takes to either side.
         from uncertain in Gen.OneOf(Gen.Const(0.0), Gen.Double[.01, 2])
         select GoodPour.Input with
         {
             Conditions = GoodPour.Input.Conditions with
             {
                 AirK = air + Zero, SteelK = steel + Zero, CompoundK = compound + Zero, RelativeHumidity = humidity,
                     UncertaintyK = uncertain,
             },
         }).Sample(
            pour =>
            {
                var now = GoodPour.Plan(pour);
                foreach (var flip in now.Result.Flips)
                {
                    var step = (flip.When == "above" ? 1 : -1) * 2e-6;
                    Assert.Equal(flip.To, GoodPour.Plan(With(pour, flip.Reading, flip.Value + step)).Decision);
                    Assert.Equal(now.Decision, GoodPour.Plan(With(pour, flip.Reading, flip.Value - step)).Decision);
                }
            },
            iter: 400);

    private static PourPlanInput With(PourPlanInput pour, string reading, double value) => pour with
    {
        Conditions = reading switch
        {
            "airTemperature" => pour.Conditions with { AirK = value },
            "steelTemperature" => pour.Conditions with { SteelK = value },
            "compoundTemperature" => pour.Conditions with { CompoundK = value },
            _ => pour.Conditions with { RelativeHumidity = value },
        },
    };
}
