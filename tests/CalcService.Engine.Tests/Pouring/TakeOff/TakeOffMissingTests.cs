using CalcService.Engine.Compounds;
using CalcService.Engine.Pouring.TakeOff;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Tests.Pouring.TakeOff;

/// <summary>What nobody said is null and named, never 0.</summary>
public sealed class TakeOffMissingTests
{
    public static TheoryData<string, Func<Quote, Quote>> Prices => new()
    {
        { "/quote/prices/dose", quote => quote with { DosePrice = null } },
        { "/quote/prices/seizingWire", quote => quote with { SeizingWirePrice = null } },
        { "/quote/prices/seal", quote => quote with { SealPrice = null } },
        { "/quote/prices/cleaner", quote => quote with { CleanerPrice = null } },
    };

    [Theory]
    [MemberData(nameof(Prices), DisableDiscoveryEnumeration = true)]
    public void Price_that_is_missing_leaves_the_materials_and_the_total_null(string pointer, Func<Quote, Quote> without)
    {
        var takeOff = GoodQuote.TakeOff(GoodQuote.Cold with { Quote = without(GoodQuote.Quote) });

        Assert.Equal([pointer], takeOff.Missing);
        Assert.Null(takeOff.MaterialsCost);
        Assert.Null(takeOff.TotalCost);
        Assert.NotNull(takeOff.LabourCost);
    }

    [Fact]
    public void Kit_without_a_cost_is_named_by_its_place_on_the_sheet()
    {
        var takeOff = GoodQuote.TakeOff(GoodQuote.Input with
        {
            Compound = GoodPour.Sheet with { Kits = [new("small", 300e-6, null), new("medium", 700e-6, null)] }, Objective = null,
        });

        // Without costs least waste decides: two small ones leave 81 cm³, a medium one 181.
        Assert.Equal("small", Assert.Single(takeOff.Kits).Kit);
        Assert.Equal(["/compound/sheet/kits/0/cost"], takeOff.Missing);
        Assert.Null(takeOff.Kits[0].Cost);
        Assert.Null(takeOff.MaterialsCost);
    }

    [Fact]
    public void Rate_that_is_missing_leaves_the_labour_null_and_the_materials_known()
    {
        var takeOff = GoodQuote.With(quote => quote with { HourlyRate = null });

        Assert.Equal(["/quote/hourlyRate"], takeOff.Missing);
        Assert.Null(takeOff.LabourCost);
        Assert.Null(takeOff.TotalCost);
        Assert.NotNull(takeOff.MaterialsCost);
    }

    [Fact]
    public void Task_without_time_needs_no_rate()
    {
        var rates = LabourTask.All.Where(task => task.Name != "setUp").ToDictionary(task => task.Name, _ => 60m);
        var takeOff = GoodQuote.With(quote => quote with
        {
            HourlyRate = null, TaskRates = rates, TaskTimesS = new Dictionary<string, double>(quote.TaskTimesS) { ["setUp"] = 0 },
        });

        Assert.Empty(takeOff.Missing);
        Assert.Equal(585m - 30, takeOff.LabourCost);
    }

    [Fact]
    public void Reading_that_is_missing_leaves_dose_wait_and_totals_null()
    {
        var takeOff = GoodQuote.TakeOff(GoodQuote.Input with
        {
            Conditions = GoodQuote.Input.Conditions with { SteelK = null },
                Quote = GoodQuote.Quote with { TaskTimesS = new Dictionary<string, double>() },
        });

        Assert.Equal(["/conditions/steelTemperature", "/quote/taskTimes/waitForGel"], takeOff.Missing);
        Assert.Null(takeOff.Doses);
        Assert.Null(takeOff.Labour.Single(line => line.Task == LabourTask.WaitForGel).TotalS);
        Assert.Null(takeOff.MaterialsCost);
        Assert.Null(takeOff.LabourCost);
    }

    [Theory]
    [InlineData(DosePlace.Unknown, "/conditions/airTemperature")]
    [InlineData(DosePlace.Air, "/conditions/airTemperature")]
    [InlineData(DosePlace.Steel, "/conditions/steelTemperature")]
    [InlineData(DosePlace.Compound, "/conditions/compoundTemperature")]
    public void Dose_lacks_the_reading_that_it_goes_by(DosePlace place, string pointer)
    {
        var takeOff =
            GoodQuote.TakeOff(GoodQuote.Input with { Compound = GoodPour.Sheet with { DoseByTemperatureOf = place }, Conditions = new() });
        Assert.Equal(pointer, takeOff.Missing[0]);
    }

    [Fact]
    public void Dose_that_the_sheet_does_not_have_lacks_the_sheets_doses()
    {
        Assert.Equal("/compound/sheet/doses",
            GoodQuote.TakeOff(GoodQuote.Input with { Compound = GoodPour.Sheet with { Doses = [] } }).Missing[0]);
        Assert.Equal("/compound/sheet/doses",
            GoodQuote.TakeOff(GoodQuote.Input with { Conditions = GoodQuote.Input.Conditions with { SteelK = GoodPour.Zero - 5 } })
            .Missing[0]);
    }

    [Fact]
    public void Pour_time_that_is_missing_leaves_mixing_and_pouring_null()
    {
        var takeOff = GoodQuote.TakeOff(GoodQuote.Input with { PourTimeS = null });

        Assert.Equal(["/quote/taskTimes/mixAndPour"], takeOff.Missing);
        Assert.Null(takeOff.LabourCost);
    }

    [Fact]
    public void Basket_without_room_leaves_kits_doses_and_waste_out()
    {
        var end = GoodPour.End("A", 1);
        var takeOff = GoodQuote.TakeOff(GoodQuote.Input with { Ends = [end with { Rope = end.Rope with { MetallicAreaM2 = 1500e-6 } }] });

        Assert.Empty(takeOff.Kits);
        Assert.Null(takeOff.Doses);
        Assert.Null(takeOff.Waste);
        Assert.Null(takeOff.MaterialsCost);
        Assert.Contains("/ends", takeOff.Missing);
    }

    [Fact]
    public void Plan_without_a_quote_lists_amounts_and_times_and_says_of_each_line_where_it_comes_from()
    {
        var outcome = GoodPour.Plan(GoodQuote.Input with { Quote = null });
        Assert.DoesNotContain(outcome.Assumptions, assumption => assumption.Pointer.StartsWith("/quote", StringComparison.Ordinal));
        var takeOff = outcome.Result.TakeOff;

        Assert.All(takeOff.Materials, line => Assert.True(line is { Amount.Si: > 0, Cost: null, From: "estimate" }));
        Assert.All(takeOff.Labour, line => Assert.True(line is { TotalS: > 0, Cost: null, From: "default" or "plan" }));
        Assert.Equal(["/quote/prices/seizingWire", "/quote/prices/seal", "/quote/prices/cleaner", "/quote/hourlyRate"], takeOff.Missing);
        // Money that nobody named has no currency and no day.
        Assert.True(takeOff is { Currency: null, PriceDate: null, LeadTimeS: null, TotalCost: null });
    }

    [Fact]
    public void Quote_says_each_assumption_that_it_makes()
    {
        var outcome = GoodPour.Plan(GoodQuote.Input with { Quote = new() });
        Assert.Equal(
            [
                "/quote/seizing/count", "/quote/seizing/wireDiameter", "/quote/sealPerEnd", "/quote/cleanerPerEnd",
                .. outcome.Result.TakeOff.Labour.Select(line => "/quote/taskTimes/" + line.Task),
            ],
            outcome.Assumptions.Select(assumption => assumption.Pointer)
                .Where(pointer => pointer.StartsWith("/quote", StringComparison.Ordinal)));
    }

    [Fact]
    public void What_the_request_says_is_not_assumed()
    {
        var times = LabourTask.All.ToDictionary(task => task.Name, _ => 60.0);
        var quote = GoodQuote.Quote with { SeizingCount = 3, CleanerPerEndM3 = 1e-4, TaskTimesS = times };
        Assert.DoesNotContain(GoodPour.Plan(GoodQuote.Input with { Quote = quote }).Assumptions,
            assumption => assumption.Pointer.StartsWith("/quote", StringComparison.Ordinal));
    }

    [Fact]
    public void Assumption_gives_a_number_where_all_ends_have_the_same()
    {
        var end = GoodPour.End("B", 1);
        var other = end with { Rope = end.Rope with { DiameterM = .021 } };
        Measure? Seal(Engine.Pouring.PourEnd[] ends) => GoodPour.Plan(GoodPour.Input with { Ends = ends, Quote = new() }).Assumptions
            .Single(assumption => assumption.Pointer == "/quote/sealPerEnd").Value;

        Assert.NotNull(Seal([GoodPour.End("A", 2), end]));
        Assert.Null(Seal([GoodPour.End("A", 2), other]));
    }

    [Fact]
    public void Gel_that_never_comes_is_no_time_to_quote()
    {
        // Two gel times one degree apart that differ ten thousandfold: at 8 °C their line says more years than there are.
        var takeOff = GoodQuote.TakeOff(GoodQuote.Input with
        {
            Compound = GoodPour.Sheet with { GelTimes = [new(30 + GoodPour.Zero, 0, 600_000), new(31 + GoodPour.Zero, 0, 60)] },
            Conditions = GoodQuote.Input.Conditions with { SteelK = 8 + GoodPour.Zero },
            Quote = GoodQuote.Quote with { TaskTimesS = new Dictionary<string, double>() },
        });

        Assert.Contains("/quote/taskTimes/waitForGel", takeOff.Missing);
    }
}
