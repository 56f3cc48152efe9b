using System.Text.Json.Nodes;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Capabilities.Pouring;

/// <summary>What a pour plan says over HTTP.</summary>
public sealed class PourPlanTests(Service service)
{
    /// <summary>
    /// Solid geometry by hand: frustum of 23, 45 and 100 mm is π·100/12·(45² + 45·23 + 23²) mm³; 184 mm² is 0.460·20²
    /// (EN 12385, as tabulated in K. Feyrer, Wire Ropes, Table 1.9); the wires lean as the contract's example says, 1.00302.
    /// </summary>
    [Fact]
    public async Task Plan_of_the_example_has_the_volumes_worked_out_by_hand()
    {
        var end = (await service.AnswerAsync(Plans.Path, Plans.Plan)).At("/result/ends/0")!;

        var gross = Math.PI * 10 / 12 * ((4.5 * 4.5) + (4.5 * 2.3) + (2.3 * 2.3));
        var steel = .460 * 4 * 10 * 1.00302;
        // Half of the last digit that the contract prints, and of the one that the answer prints.
        const double Printed = .0005 + .00005;
        Assert.Equal(93.960, gross, .0005);
        Assert.Equal(93.960, Cubic(end, "basketVolume"), Printed);
        Assert.Equal(18.455, Cubic(end, "steelVolume"), Printed);
        Assert.Equal(steel, Cubic(end, "steelVolume"), Printed);
        Assert.Equal(75.504, Cubic(end["resinVolume"]!, "nominal"), Printed);
        Assert.True(Cubic(end["resinVolume"]!, "low") < 75.504 && Cubic(end["resinVolume"]!, "high") > 75.504);
    }

    [Fact]
    public async Task Plan_of_the_example_takes_whole_kits_that_cover_what_is_needed()
    {
        var result = (await service.AnswerAsync(Plans.Path, Plans.Plan))["result"]!;
        // The invented sheet: kits of 300, 700 and 1100 mL.
        var volumes = new Dictionary<string, double> { ["small"] = 300, ["medium"] = 700, ["large"] = 1100 };

        var mixed = result["kits"]!.AsArray().Sum(kit => volumes[(string)kit!["kit"]!] * ((int)kit["fromStock"]! + (int)kit["toBuy"]!));
        var needed = 6 * Cubic(result.At("/ends/0/resinVolume")!, "high") * 1.10;
        Assert.Equal(needed, Cubic(result["totals"]!, "needed"), .001);
        Assert.Equal(mixed, Cubic(result["totals"]!, "mixed"), 1e-9);
        Assert.True(mixed >= needed);
        Assert.Equal(mixed - needed, Cubic(result["totals"]!, "leftover"), .001);
        // 518.7 mL: two small kits are on the shelf, and nothing is bought.
        Assert.Equal(600, mixed);
        Assert.All(result["kits"]!.AsArray(), kit => Assert.Equal(0, (int)kit!["toBuy"]!));
    }

    [Fact]
    public async Task Steel_of_8_degC_in_air_of_97_percent_is_wet_and_stops()
    {
        var answer = await service.AnswerAsync(Plans.Path, Plans.Plan.With("/conditions/relativeHumidity/value", 97));

        Assert.Equal("doNotProceed", (string?)answer["decision"]);
        var found = Plans.Find(answer, "steel-at-dew-point");
        Assert.Equal("stop", (string?)found["severity"]);
        Assert.Equal(Plans.SteelTemperature, (string?)found["pointer"]);
        Assert.Equal(["/conditions/airTemperature", "/conditions/relativeHumidity"],
            found["related"]!.AsArray().Select(pointer => (string)pointer!));
        Assert.Equal(8, (double)found["measured"]!["value"]!, 1e-9);
        // Dew point of air at 9 °C and 97 %: 8.55 °C by the Magnus form with 17.62 and 243.12 °C (WMO-No. 8).
        Assert.Equal(8.55, (double)found["limit"]!["value"]!, .01);
    }

    [Theory]
    [InlineData(76, "proceedWithCare", null)]
    [InlineData(90, "proceedWithCare", "steel-near-dew-point")]
    [InlineData(97, "doNotProceed", "steel-at-dew-point")]
    public async Task Humidity_that_rises_turns_the_decision_at_the_dew_point(int humidity, string decision, string? code)
    {
        var answer = await service.AnswerAsync(Plans.Path,
            Plans.Plan.With("/conditions/relativeHumidity/value", humidity).With("/conditions/steelTemperature/value", 8.3));

        Assert.Equal(decision, (string?)answer["decision"]);
        Assert.Equal(code, Plans.Codes(answer).SingleOrDefault(found => found.Contains("dew-point", StringComparison.Ordinal)));
    }

    [Fact]
    public async Task Lot_that_is_past_its_last_good_day_is_never_used()
    {
        var stock = new JsonArray(Lot("OLD", "2026-03-11", 4), Lot("LAST", "2026-03-12", 1), Lot("GOOD", "2027-01-31", 4));
        var answer = await service.AnswerAsync(Plans.Path, Plans.Plan.With("/stock", stock));

        Assert.Equal(["LAST", "GOOD"], Lots(answer));
        var expired = Plans.Find(answer, "lot-expired");
        Assert.Equal("note", (string?)expired["severity"]);
        Assert.Equal("/stock/0/expiresOn", (string?)expired["pointer"]);
        Assert.Equal(-1, (double)expired["measured"]!["value"]!);
    }

    [Fact]
    public async Task Lot_that_is_past_its_last_good_day_and_needed_stops()
    {
        var answer = await service.AnswerAsync(Plans.Path, Plans.Plan.With("/stock", new JsonArray(Lot("OLD", "2026-03-11", 4))));

        Assert.Equal("doNotProceed", (string?)answer["decision"]);
        Assert.Equal("stop", (string?)Plans.Find(answer, "lot-expired")["severity"]);
        Assert.All(Lots(answer), lot => Assert.Null(lot));
    }

    [Theory]
    [InlineData("2026-03-12T23:30:00+01:00", true)]
    [InlineData("2026-03-12T22:30:00Z", true)]
    [InlineData("2026-03-13T00:30:00+01:00", false)]
    [InlineData("2026-03-12T23:30:00Z", true)]
    [InlineData("2026-03-13T07:30:00+14:00", false)]
    public async Task Last_good_day_is_the_day_at_the_offset_of_the_pour(string pourAt, bool isGood)
    {
        var answer = await service.AnswerAsync(Plans.Path,
            Plans.Plan.With("/pourAt", pourAt).With("/stock", new JsonArray(Lot("L", "2026-03-12", 4))));

        Assert.Equal(isGood, Lots(answer).Contains("L"));
    }

    [Theory]
    [InlineData("steelTemperature")]
    [InlineData("airTemperature")]
    [InlineData("compoundTemperature")]
    [InlineData("relativeHumidity")]
    public async Task Reading_that_is_missing_leaves_the_plan_undetermined(string reading)
    {
        var answer = await service.AnswerAsync(Plans.Path, Plans.Plan.Without("/conditions/" + reading));

        Assert.Equal("undetermined", (string?)answer["decision"]);
        Assert.Contains(answer["findings"]!.AsArray(), found =>
            (string?)found!["code"] == "reading-missing" && (string?)found["severity"] == "unknown"
            && (string?)found["pointer"] == "/conditions/" + reading);
        // Never taken from another reading: nothing that hangs on it is computed.
        Assert.Null(answer.At(reading == "relativeHumidity" ? "/result/dewPoint" : "/result/potLife"));
    }

    /// <summary>Bands of the invented sheet: 5 doses from 2 to below 4 °C, 2 to below 7, none to 34 and at 34.</summary>
    [Theory]
    [InlineData(2, 5)]
    [InlineData(3.999, 5)]
    [InlineData(4, 2)]
    [InlineData(5, 2)]
    [InlineData(6.999, 2)]
    [InlineData(7, 0)]
    [InlineData(34, 0)]
    public async Task Dose_is_that_of_the_band_of_the_colder_of_air_and_steel(double temperature, int doses)
    {
        foreach (var (cold, warm) in new[] { ("steelTemperature", "airTemperature"), ("airTemperature", "steelTemperature") })
        {
            var answer = await service.AnswerAsync(Plans.Path, Plans.Plan
                .With($"/conditions/{cold}/value", temperature).With($"/conditions/{warm}/value", Math.Max(9, temperature))
                .With("/conditions/relativeHumidity/value", 20));

            Assert.Equal(doses, (int)answer.At("/result/dose/perKit")!);
            Assert.Equal(temperature, (double)answer.At("/result/doseBasis/temperature/value")!, 1e-9);
            Assert.Equal(doses > 0, Plans.Codes(answer).Contains("dose-edge"));
        }
    }

    [Fact]
    public async Task Dose_in_the_inch_system_is_decided_at_the_same_edge()
    {
        // 44.6 °F is 7 °C: the band without doses begins there.
        var answer = await service.AnswerAsync(Plans.Path, Plans.Plan.With(Plans.SteelTemperature, NodeEdits.Quantity(44.6, "degF")));

        Assert.Equal(0, (int)answer.At("/result/dose/perKit")!);
    }

    [Fact]
    public async Task Plan_without_stock_is_a_quote_without_a_finding_about_stock()
    {
        var answer = await service.AnswerAsync(Plans.Path, Plans.Plan.Without("/stock"));

        Assert.DoesNotContain(Plans.Codes(answer), code => code.StartsWith("stock", StringComparison.Ordinal)
            || code.StartsWith("lot", StringComparison.Ordinal));
        Assert.All(Lots(answer), lot => Assert.Null(lot));
        Assert.True((decimal)answer.At("/result/totals/cost")! > 0);
    }

    [Fact]
    public async Task Stock_that_falls_short_is_a_caution()
    {
        var answer = await service.AnswerAsync(Plans.Path, Plans.Plan.With("/stock/0/count", 1));

        Assert.Equal("caution", (string?)Plans.Find(answer, "stock-short")["severity"]);
    }

    private static double Cubic(JsonNode owner, string member)
    {
        Assert.Equal("cm3", (string?)owner[member]!["unit"]);
        return (double)owner[member]!["value"]!;
    }

    private static JsonObject Lot(string lot, string expiresOn, int count) =>
        new() { ["lot"] = lot, ["kit"] = "small", ["count"] = count, ["expiresOn"] = expiresOn };

    private static IEnumerable<string?> Lots(JsonObject answer) =>
        answer["result"]!["mixes"]!.AsArray().SelectMany(mix => mix!["kits"]!.AsArray()).Select(kit => (string?)kit!["lot"]);
}
