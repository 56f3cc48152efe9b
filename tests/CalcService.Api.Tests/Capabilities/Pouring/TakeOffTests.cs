using System.Text.Json.Nodes;
using CalcService.Api.OpenApi;
using CalcService.Api.Reading;
using CalcService.Api.Tests.Fixtures;
using CalcService.Engine.Pouring.TakeOff;

namespace CalcService.Api.Tests.Capabilities.Pouring;

/// <summary>The take-off over HTTP.</summary>
public sealed class TakeOffTests(Service service)
{
    private static JsonObject Quote => Plans.Example("quote");

    [Fact]
    public async Task Quote_costs_what_was_worked_by_hand()
    {
        var takeOff = await TakeOffAsync(Quote);

        // Twelve ends: 1.1 × 12 × 78.586 = 1037.3 cm³, one large kit of 1100 mL for 62, and a tenth of it, rounded up, to spare.
        Assert.Equal((1, 1, 2, 124m),
            ((int)takeOff["kits"]![0]!["needed"]!, (int)takeOff["kits"]![0]!["spare"]!, (int)takeOff["kits"]![0]!["toBuy"]!,
            (decimal)takeOff["kits"]![0]!["cost"]!));
        // 12 × 3 seizings × 20 turns × π·21.5 mm = 48.632 m at 12 for 50 m; 12 collars of π·10·30·20 mm³ at 8 a litre; 12 × 2 × 93.9598 cm³
        // at 30 for 5 L.
        Assert.Equal([11.6716m, 1.8096m, 13.5302m], takeOff["materials"]!.AsArray().Select(line => (decimal)line!["cost"]!));
        // 30 + 12·(15 + 25 + 15 + 15 + 10 + 20 + 10) + 90 s + 12 min, at one a minute; the wait is free.
        Assert.Equal(1363.5m, (decimal)takeOff["totals"]!["labour"]!);
        Assert.Equal(151.0114m, (decimal)takeOff["totals"]!["materials"]!);
        Assert.Equal(1514.5114m, (decimal)takeOff["totals"]!["total"]!);
        Assert.Empty(takeOff["missing"]!.AsArray());
        Assert.Equal(("EUR", "2026-04-01", 5.0),
            ((string)takeOff["currency"]!, (string)takeOff["priceDate"]!, (double)takeOff["leadTime"]!["value"]!));
    }

    [Fact]
    public async Task Unit_of_a_price_or_of_the_answer_changes_no_cost()
    {
        var plain = await TakeOffAsync(Quote);
        var inch = await TakeOffAsync(Quote.With("/units", "inch").With("/quote/prices/seizingWire/per", NodeEdits.Quantity(5000, "cm"))
            .With("/quote/prices/seal/per", NodeEdits.Quantity(1000, "mL")));

        Assert.Equal(plain["totals"]!.ToJsonString(), inch["totals"]!.ToJsonString());
        Assert.Equal("in", (string?)inch["materials"]![0]!["amount"]!["unit"]);
    }

    [Fact]
    public async Task Part_number_and_dangerous_goods_come_from_the_sheet()
    {
        var takeOff = await TakeOffAsync((await Plans.WithSheetAsync(service))
            .With("/compound/sheet/kits/0/partNumber", "P-300").With("/compound/sheet/dangerousGoods", "UN 0000, invented"));

        Assert.Equal("P-300", (string?)takeOff["kits"]![0]!["partNumber"]);
        Assert.Equal("UN 0000, invented", (string?)takeOff["dangerousGoods"]);
    }

    [Fact]
    public async Task Doses_on_the_shelf_have_not_to_be_bought()
    {
        // At 5 °C two doses for each of two kits.
        var cold = Plans.Plan.With("/conditions/steelTemperature/value", 5);
        Assert.Equal((4, 0, 4), Doses(await TakeOffAsync(cold)));
        Assert.Equal((4, 1, 3), Doses(await TakeOffAsync(cold.With("/stock/0/doseCount", 1))));
        Assert.Equal((4, 4, 0), Doses(await TakeOffAsync(cold.With("/stock/0/doseCount", 9))));

        static (int, int, int) Doses(JsonNode takeOff) =>
            ((int)takeOff["doses"]!["needed"]!, (int)takeOff["doses"]!["fromStock"]!, (int)takeOff["doses"]!["toBuy"]!);
    }

    [Fact]
    public async Task Missing_member_can_be_sent_and_is_then_no_longer_missing()
    {
        var contract = await ServedContract.ReadAsync(service);
        var schema = contract.Calculations.Single(route => route.Path == Plans.Path).SchemaName;
        foreach (var example in RequestExamples.Of("pour-plans"))
        {
            var missing = (await TakeOffAsync(Plans.Example(example.Name)))["missing"]!.AsArray().Select(pointer => (string)pointer!)
                .ToArray();
            Assert.Equal(example.Name == "quote", missing.Length == 0);
            Assert.All(missing, pointer => Assert.True(contract.Has(schema, pointer), pointer));
        }

        var without = Quote.With("/quote/prices/seal", null);
        Assert.Equal(["/quote/prices/seal"], (await TakeOffAsync(without))["missing"]!.AsArray().Select(pointer => (string)pointer!));
        Assert.Null((await TakeOffAsync(without))["totals"]!["materials"]);
    }

    [Fact]
    public void Task_has_one_name_in_times_rates_and_answer()
    {
        var tasks = LabourTask.All.Select(task => task.Name).ToArray();
        Assert.Equal(tasks, ShapeTable.Of<Api.Capabilities.Pouring.TakeOff.TaskTimes>().Members.Select(member => member.Name));
        Assert.Equal(tasks, ShapeTable.Of<Api.Capabilities.Pouring.TakeOff.TaskRates>().Members.Select(member => member.Name));
    }

    [Fact]
    public async Task Time_and_rate_of_each_task_reach_its_line()
    {
        var i = 0;
        var request = LabourTask.All.Aggregate(Quote.With("/quote/taskTimes", new JsonObject()).With("/quote/taskRates", new JsonObject()),
            (body, task) => body
            .With("/quote/taskTimes/" + task.Name, NodeEdits.Quantity(10 + ++i, "min")).With("/quote/taskRates/" + task.Name, 100 + i));
        var lines = (await TakeOffAsync(request))["labour"]!.AsArray();

        Assert.Equal(LabourTask.All.Count, lines.Count);
        Assert.All(lines.Select((line, at) => (line!, at + 1)), pair =>
        {
            Assert.Equal(("request", 10.0 + pair.Item2, 100m + pair.Item2),
                ((string)pair.Item1["from"]!, (double)pair.Item1["each"]!["value"]!, (decimal)pair.Item1["rate"]!));
        });
    }

    [Theory]
    [InlineData("/quote/currency", "\"USD\"", "/quote/currency contradiction,/compound contradiction")]
    [InlineData("/quote/spareKits", """{"count":1,"share":{"value":1,"unit":"%"}}""", "/quote/spareKits/count contradiction,/quote/spareKits/share contradiction")]
    [InlineData("/quote/spareKits", "{}", "/quote/spareKits/count contradiction,/quote/spareKits/share contradiction")]
    [InlineData("/quote/seizing/wireDiameter", """{"value":20,"unit":"mm"}""", null)]
    [InlineData("/ends/0/rope/diameter", """{"value":1.4,"unit":"mm"}""", "/quote/seizing/wireDiameter contradiction,/ends/0/rope/diameter contradiction")]
    [InlineData("/quote/hourlyRate", "-1", "/quote/hourlyRate range")]
    [InlineData("/quote/hourlyRate", "1.00001", "/quote/hourlyRate range")]
    [InlineData("/quote/taskRates/record", "1000001", "/quote/taskRates/record range")]
    [InlineData("/quote/taskTimes/record", """{"value":-1,"unit":"min"}""", "/quote/taskTimes/record range")]
    [InlineData("/quote/prices/dose", "-0.01", "/quote/prices/dose range")]
    [InlineData("/quote/prices/seal/amount", "0.00001", "/quote/prices/seal/amount range")]
    [InlineData("/quote/prices/seal/per", """{"value":0,"unit":"L"}""", "/quote/prices/seal/per range")]
    [InlineData("/quote/prices/seizingWire/per", """{"value":0,"unit":"m"}""", "/quote/prices/seizingWire/per range")]
    [InlineData("/quote/prices/seizingWire/per", """{"value":1,"unit":"L"}""", "/quote/prices/seizingWire/per/unit unit")]
    [InlineData("/quote/seizing/count", "101", "/quote/seizing/count range")]
    [InlineData("/quote/leadTime", """{"value":-1,"unit":"d"}""", "/quote/leadTime range")]
    [InlineData("/quote/priceDate", "\"2026-02-30\"", "/quote/priceDate date")]
    public async Task Quote_that_makes_no_sense_is_refused_where_it_stands(string pointer, string raw, string? errors)
    {
        var reply = await service.PostAsync(Plans.Path, Quote.With(pointer, JsonNode.Parse(raw)));

        Assert.Equal(errors is null ? 200 : 422, reply.Status);
        if (errors is not null)
        {
            ProblemAssert.IsProblem(reply, 422);
            Assert.Equal(errors.Split(',').Order(StringComparer.Ordinal), ProblemAssert.Errors(reply.Json).Order(StringComparer.Ordinal));
        }
    }

    [Fact]
    public async Task Currency_is_free_where_the_sheet_has_no_costs()
    {
        var sheet = (await Plans.WithSheetAsync(service)).Without("/objective").With("/quote", new JsonObject { ["currency"] = "USD" });
        sheet = Enumerable.Range(0, 3).Aggregate(sheet, (body, kit) => body.Without($"/compound/sheet/kits/{kit}/cost"));
        Assert.Equal("USD", (string?)(await TakeOffAsync(sheet))["currency"]);
    }

    private async Task<JsonObject> TakeOffAsync(JsonObject request) =>
        (await service.AnswerAsync(Plans.Path, request))["result"]!["takeOff"]!.AsObject();
}
