using CalcService.Engine.Findings;
using CalcService.Engine.Pouring;
using CalcService.Engine.Pouring.Preparation;
using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;
using CalcService.Engine.Tests.Numerics;
using CalcService.Engine.Tests.Provenance;

namespace CalcService.Engine.Tests.Pouring;

public sealed class SequenceTests
{
    private const double Zero = GoodPour.Zero;

    [Fact]
    [Verifies("broom-length", Check.Analytic, "Pythagoras: 3, 4, 5")]
    public void Broom_is_as_long_as_the_wall_that_its_outer_wires_follow() =>
        Printed.Matches(.5, PreparationNumbers.BroomLengthM(.4, 3.0 / 4, Trace.None));

    [Fact]
    public void Work_goes_from_the_rope_as_delivered_to_the_set_cone() =>
        Assert.Equal(
            [
                "measure", "seize", "cut", "openBroom", "core", "clean", "dry", "drawIn", "space", "align", "seal",
                "read", "mix", "witnessSample", "fill", "leave",
            ],
            Steps(GoodPour.Input).Select(step => step.Definition.Task));

    [Theory]
    [InlineData(RopeCore.Fibre, "Cut the fibre core out")]
    [InlineData(RopeCore.Iwrc, "Open the wire core too")]
    [InlineData(RopeCore.Unknown, "Find out what the core is")]
    public void Core_is_treated_by_what_it_is(RopeCore core, string words) =>
        Assert.StartsWith(words,
        Steps(Rope(rope => rope with { Core = core })).Single(step => step.Definition.Task == "core").Definition.Text,
        StringComparison.Ordinal);

    [Theory]
    [InlineData(WireFinish.Bright, "with fresh solvent")]
    [InlineData(WireFinish.Galvanized, "Leave the zinc on")]
    [InlineData(WireFinish.Stainless, "for stainless wire")]
    [InlineData(WireFinish.Unknown, "Find out whether")]
    public void Wires_are_cleaned_by_their_coating(WireFinish finish, string words)
    {
        var text = Steps(Rope(rope => rope with { Finish = finish })).Single(step => step.Definition.Task == "clean").Definition.Text;
        Assert.Contains(words, text, StringComparison.Ordinal);
        // API RP 9B: neither acid nor flux with resin, whatever the wire.
        Assert.Contains("No acid, no flux", text.Replace("no acid", "No acid", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void Lubricant_plastic_and_a_small_basket_add_their_steps()
    {
        var tasks = Steps(Rope(rope => rope with { Lubricant = Lubricant.Heavy, PlasticFilled = Fact.Yes, DiameterM = .012 }))
            .Select(step => step.Definition.Task).ToArray();
        Assert.Equal(["plastic", "degrease", "clean"], tasks.SkipWhile(task => task != "plastic").Take(3));
        Assert.Contains("vent", tasks);
    }

    [Fact]
    public void Rope_of_three_quarters_of_an_inch_gets_three_seizings()
    {
        // NAVEDTRA 14081: three for each inch, rounded up; its example is 3/4 in with three.
        var seize = Steps(Rope(rope => rope with { DiameterM = .75 * .0254 })).Single(step => step.Definition.Task == "seize");
        Assert.Equal(3, seize.Values.Single(value => value.Name == "seizings").Value.Si);
    }

    [Fact]
    public void Sheet_sets_the_order_of_the_mix_and_its_vessels()
    {
        var pour = GoodPour.Input with
        {
            Compound = GoodPour.Sheet with
            {
                MixingOrder = [Engine.Compounds.MixPart.Filler, Engine.Compounds.MixPart.Resin, Engine.Compounds.MixPart.Dose,
                    Engine.Compounds.MixPart.Hardener],
                Vessels = ["clean steel pail"],
            },
            Conditions = GoodPour.Input.Conditions with { SteelK = 6 + Zero, RelativeHumidity = .2 },
        };
        var words = Steps(pour).Single(step => step.Definition.Task == "mix").Words;
        Assert.Equal("the filler, then the resin, then 2 doses, stirred in, then the hardener",
            words.Single(word => word.Name == "order").Text);
        Assert.Equal(", in clean steel pail", words.Single(word => word.Name == "vessel").Text);
    }

    [Fact]
    public void Every_mix_is_mixed_sampled_and_filled_in_turn()
    {
        var pour = GoodPour.Input with { Reference = "J-7", Ends = [GoodPour.End("A", 9)] };
        var plan = GoodPour.Plan(pour).Result;
        Assert.True(plan.Mixes.Count > 1);
        Assert.Equal(plan.Mixes.SelectMany(mix => new[] { ("mix", mix.Number), ("witnessSample", mix.Number), ("fill", mix.Number) }),
            plan.Sequence.Where(step => step.Mix is not null).Select(step => (step.Definition.Task, step.Mix!.Value)));
        Assert.Equal(plan.Mixes.Select((_, i) => $"J-7/{i + 1}"), plan.Mixes.Select(mix => mix.WitnessLabel));
    }

    [Fact]
    public void Witness_sample_that_is_stated_comes_on_top_of_what_the_baskets_take()
    {
        double Needed(double? sample) => GoodPour.Plan(GoodPour.Input with { WitnessSampleM3 = sample }).Result.NeededM3!.Value;
        Printed.Matches(Needed(null) + 50e-6, Needed(50e-6));
    }

    [Fact]
    public void Hold_points_say_what_was_read_and_what_is_allowed()
    {
        var points = GoodPour.Plan(GoodPour.Input).Result.HoldPoints;
        // Sheet of the test: 2 to 34 °C. Air 22 °C at 50 %: dew point 11.0946 °C by hand, and three kelvins more for the steel. Steel at 20
        // °C:
        // air of 22 °C wets steel of 17 °C at e(17)/e(22) = 19.37/26.44 hPa (Magnus by hand), 73.3 %.
        var steel = points.Single(point => point.What == "steel");
        Printed.Agrees(20, steel.Reading!.Value.Si - Zero, 3);
        Printed.Agrees(14.0946, steel.Minimum!.Value.Si - Zero, 6);
        Printed.Agrees(34, steel.Maximum!.Value.Si - Zero, 4);
        Printed.Agrees(73.3, points.Single(point => point.What == "humidity").Maximum!.Value.Si * 100, 3);
        Assert.Equal(["fit", "broom", "alignment", "air", "steel", "compound", "humidity", "lots", "ignition", "stopPouring", "gel"],
            points.Select(point => point.What));
        Assert.All(points, point => Assert.Contains(StepCatalogue.All, step => step.Task == point.Task));
    }

    [Fact]
    public void Step_has_a_word_for_every_place_of_its_text() =>
        Assert.All(
            new[]
            {
                GoodPour.Input,
                GoodPour.Input with { Ends =
                [GoodPour.End("A", 1) with { WireEndsBelowMouthM = .003, TiltRad = null, StraightBelowM = null }] },
                Rope(rope => rope with { Construction = "locked coil" }),
                GoodPour.Input with { Compound = GoodPour.Sheet with { MixingTimeS = null, GelTimes = [] }, Conditions = new() },
            }.SelectMany(Steps),
            step =>
            {
                var given = step.Values.Select(value => value.Name).Concat(step.Words.Select(word => word.Name))
                    .ToHashSet(StringComparer.Ordinal);
                Assert.All(step.Definition.Text.Split('{').Skip(1).Select(part => part[..part.IndexOf('}', StringComparison.Ordinal)]),
                    name => Assert.Contains(name, given));
            });

    [Fact]
    public void Catalogue_says_where_each_way_of_working_comes_from() =>
        Assert.All(StepCatalogue.All, step =>
        {
            Assert.Matches("^[a-z]+([A-Z][a-z]+)*$", step.Task);
            Assert.False(string.IsNullOrWhiteSpace(step.Source.Document));
        });

    private static PourPlanInput Rope(Func<Rope, Rope> change) =>
        GoodPour.Input with { Ends = [GoodPour.Input.Ends[0] with { Rope = change(GoodPour.Input.Ends[0].Rope) }] };

    private static IReadOnlyList<PlannedStep> Steps(PourPlanInput pour) => GoodPour.Plan(pour).Result.Sequence;
}
