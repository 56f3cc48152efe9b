using System.Text.Json.Nodes;
using System.Xml.Linq;
using CalcService.Api.OpenApi;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Capabilities.Curing;

public sealed class CureScheduleTests(Service service)
{
    private const string Path = "/v1/cure-schedules";

    public static TheoryData<string> Names => [.. RequestExamples.Of("cure-schedules").Select(example => example.Name)];

    [Fact]
    public async Task Cure_at_65_degF_gels_in_15_minutes_and_is_full_60_minutes_later()
    {
        // Common practice, no source: at 65 °F gel in about 15 minutes, full strength 60 minutes after gel. The sheet is made here for
        // that.
        var f65 = NodeEdits.Quantity(65, "degF");
        var body = Example("table")
            .With("/compound", new JsonObject
            {
                ["sheet"] = new JsonObject
                {
                    ["name"] = "common practice, no source",
                    ["kits"] = new JsonArray(new JsonObject { ["code"] = "one", ["volume"] = NodeEdits.Quantity(300, "mL") }),
                    ["pouring"] = new JsonObject { ["minimum"] = NodeEdits.Quantity(40, "degF"),
                        ["maximum"] = NodeEdits.Quantity(95, "degF") },
                    ["doses"] =
                        new JsonArray(new JsonObject { ["from"] = NodeEdits.Quantity(40, "degF"),
                        ["below"] = NodeEdits.Quantity(95, "degF"), ["perKit"] = 0 }),
                    ["gelTimes"] =
                        new JsonArray(new JsonObject { ["temperature"] = f65.DeepClone(), ["doses"] = 0,
                        ["time"] = NodeEdits.Quantity(15, "min") }),
                    ["fullStrength"] =
                        new JsonArray(new JsonObject { ["temperature"] = f65.DeepClone(), ["afterGel"] = NodeEdits.Quantity(60, "min") }),
                },
            })
            .With("/conditions/air/constant", f65.DeepClone())
            .With("/conditions/steelTemperature", f65.DeepClone())
            .With("/conditions/compoundTemperature", f65.DeepClone());
        var end = (await service.AnswerAsync(Path, body)).At("/result/ends/0")!;

        Assert.Equal("2026-03-12T13:15:00+01:00", (string?)end.At("/gelAt/expected"));
        Assert.Equal("2026-03-12T14:15:00+01:00", (string?)end["proofLoadFrom"]);
        Assert.Equal("2026-03-12T14:15:00+01:00", (string?)end["serviceFrom"]);
    }

    [Fact]
    public async Task Cone_of_the_contract_is_followed_by_its_own_heat()
    {
        var answer = await service.AnswerAsync(Path, Example("schedule").Without("/observations").Without("/thermalModel"));
        var end = answer.At("/result/ends/0")!;
        Assert.NotNull(end["peak"]);
        Assert.True((double)end.At("/energyBalanceError/value")! < 1e-4);
        Assert.Equal(Math.Round((double)end.At("/energyBalanceError/value")!, 9), (double)end.At("/energyBalanceError/value")!);
        Assert.True(At(end, "/gelAt/earliest") < At(end, "/gelAt/latest") && At(end, "/undisturbedUntil") < At(end, "/proofLoadFrom"));
        Assert.All(["undisturbedUntil", "proofLoadFrom", "serviceFrom"],
            member => Assert.EndsWith(":00+01:00", (string)end[member]!, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Shop_gives_every_end_its_seven_tasks()
    {
        var result = (await service.AnswerAsync(Path, Example("shop")))["result"]!;
        Assert.Equal(6 * 7, result["tasks"]!.AsArray().Count);
        Assert.Equal((string?)result["finishedAt"], (string?)result["tasks"]!.AsArray().MaxBy(task => (DateTimeOffset)task!["to"]!)!["to"]);
        Assert.NotNull(result["optimality"]);
    }

    [Fact]
    public async Task Schedule_without_a_shop_has_no_tasks()
    {
        var result = (await service.AnswerAsync(Path, Example("table")))["result"]!.AsObject();
        Assert.Empty(result["tasks"]!.AsArray());
        Assert.True(result.ContainsKey("finishedAt") && result["finishedAt"] is null);
        Assert.True(result.ContainsKey("optimality") && result["optimality"] is null);
    }

    [Fact]
    public async Task Socket_that_is_colder_than_the_steel_decides()
    {
        var colder = Example("table").With("/ends/0/socket/temperature", new JsonObject { ["value"] = NodeEdits.Quantity(9, "degC") });
        var codes = Plans.Codes(await service.AnswerAsync(Path, colder));
        Assert.Contains("steel-holds-cure-back", codes);
    }

    [Theory]
    [InlineData("/conditions/air", """{"constant":{"value":9,"unit":"degC"},"series":[]}""", "/conditions/air/constant", "/conditions/air/series")]
    [InlineData("/conditions/air", "{}", "/conditions/air/constant", "/conditions/air/series")]
    [InlineData("/conditions/air", """{"series":[{"at":"2026-03-12T12:00:00+01:00","temperature":{"value":9,"unit":"degC"}}]}""", "/conditions/air/series")]
    [InlineData("/conditions/air", """{"series":[{"at":"2026-03-12T12:00:00+01:00","temperature":{"value":9,"unit":"degC"}},{"at":"2026-03-12T11:00:00Z","temperature":{"value":9,"unit":"degC"}}]}""",
        "/conditions/air/series/0/at", "/conditions/air/series/1/at")]
    [InlineData("/observations", """[{"end":"B","gelAt":"2026-03-12T12:59:00+01:00"}]""", "/observations/0/gelAt", "/mixedAt")]
    [InlineData("/observations", """[{"end":"C","gelAt":"2026-03-12T13:20:00+01:00"}]""", "/observations/0/end")]
    [InlineData("/ends/0/socket/outerAtMouth", """{"value":58,"unit":"mm"}""", "/ends/0/socket/outerAtMouth", "/ends/0/socket/basket/largeEndDiameter")]
    [InlineData("/shop", """{"shifts":[{"from":"2026-03-12T14:00:00Z","to":"2026-03-12T13:00:00Z"}],"taskTimes":{"prepare":{"value":1,"unit":"h"},"position":{"value":1,"unit":"h"},"proof":{"value":1,"unit":"h"},"record":{"value":1,"unit":"h"}}}""",
        "/shop/shifts/0/from", "/shop/shifts/0/to")]
    public async Task Request_that_contradicts_itself_is_refused_where_it_does(string pointer, string value, params string[] pointers)
    {
        var reply = await service.PostAsync(Path, Example("table").With(pointer, JsonNode.Parse(value)));
        ProblemAssert.IsProblem(reply, 422);
        Assert.Equal(pointers.Order(StringComparer.Ordinal), ProblemAssert.Pointers(reply.Json).Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task Sheet_of_times_contradicts_no_lowest_cure()
    {
        var body = Example("table");
        var sheet = (await Plans.WithSheetAsync(service))["compound"]!.DeepClone();
        sheet["sheet"]!["lowestCure"] = NodeEdits.Quantity(21, "degC");
        var reply = await service.PostAsync(Path, body.With("/compound", sheet));
        Assert.Contains("/compound/sheet/lowestCure", ProblemAssert.Pointers(reply.Json));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public async Task Sheet_says_what_the_answer_says(string name)
    {
        var answer = await service.AnswerAsync(Path, Example(name));
        var sheet = await service.PostAsync(Path + "/sheet", Example(name));

        Assert.Equal((200, "text/html"), (sheet.Status, sheet.MediaType));
        var text = System.Net.WebUtility.HtmlDecode(sheet.Text);
        Assert.Contains($"decision {(string?)answer["decision"]}", text, StringComparison.Ordinal);
        Assert.All(answer["findings"]!.AsArray(), finding => Assert.Contains((string)finding!["message"]!, text, StringComparison.Ordinal));
        Assert.All(answer["safetyNotes"]!.AsArray(), note => Assert.Contains((string)note!["text"]!, text, StringComparison.Ordinal));
        Assert.Contains((string)answer["provenance"]!["recordId"]!, text, StringComparison.Ordinal);
        Assert.Contains((string)answer["provenance"]!["resultDigest"]!, text, StringComparison.Ordinal);
        Assert.DoesNotContain("<script", sheet.Text, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task Picture_draws_the_cure_the_temperatures_and_the_tasks()
    {
        using var request = new HttpRequestMessage(HttpMethod.Post,
            Path + "/sheet") { Content = new StringContent(Example("shop").ToJsonString(), System.Text.Encoding.UTF8, "application/json") };
        request.Headers.Add("Accept", "image/svg+xml");
        var picture = await Reply.SendAsync(service.Client, request);

        Assert.Equal((200, "image/svg+xml"), (picture.Status, picture.MediaType));
        XNamespace svg = "http://www.w3.org/2000/svg";
        var drawing = XDocument.Parse(picture.Text);
        var centre = drawing.Descendants(svg + "polyline").Single(line => (string?)line.Attribute("class") == "centre");
        Assert.Equal(49, ((string)centre.Attribute("points")!).Split(' ', StringSplitOptions.RemoveEmptyEntries).Length);
        Assert.Single(drawing.Descendants(svg + "polygon"), area => (string?)area.Attribute("class") == "band");
        // Each task is a box that says who does it.
        Assert.Equal(42,
            drawing.Descendants(svg + "rect")
            .Count(box => box.Element(svg + "title") is { } title && title.Value.Contains(": ", StringComparison.Ordinal)));
    }

    private static JsonObject Example(string name) => JsonNode.Parse(RequestExamples.Of("cure-schedules", name).Body)!.AsObject();

    private static DateTimeOffset At(JsonNode node, string pointer) =>
        DateTimeOffset.Parse((string)node.At(pointer)!, System.Globalization.CultureInfo.InvariantCulture);
}
