using System.Text.Json.Nodes;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Capabilities.Pouring;

/// <summary>The state of a lot over HTTP.</summary>
public sealed class LotTests(Service service)
{
    [Theory]
    [InlineData("state", "\"opened\"", "lot-not-sealed", "state")]
    [InlineData("state", "\"damaged\"", "lot-not-sealed", "state")]
    [InlineData("quarantined", "\"yes\"", "lot-quarantined", "quarantined")]
    [InlineData("resinExpiresOn", "\"2026-03-11\"", "lot-expired", "resinExpiresOn")]
    [InlineData("hardenerExpiresOn", "\"2026-03-11\"", "lot-expired", "hardenerExpiresOn")]
    [InlineData("storage", """{"lowest":{"value":40.9,"unit":"degF"},"highest":{"value":20,"unit":"degC"}}""", "storage-outside-range", "storage/lowest")]
    [InlineData("storage", """{"lowest":{"value":5,"unit":"degC"},"highest":{"value":31,"unit":"degC"}}""", "storage-outside-range", "storage/highest")]
    public async Task Only_lot_that_may_not_be_used_stops_the_plan(string member, string raw, string code, string pointer)
    {
        var answer = await AnswerAsync(member, raw);

        Assert.Equal("doNotProceed", (string?)answer["decision"]);
        Assert.Equal(("stop", "/stock/0/" + pointer),
            ((string?)Plans.Find(answer, code)["severity"], (string?)Plans.Find(answer, code)["pointer"]));
        Assert.Contains("A-118", (string)Plans.Find(answer, code)["message"]!, StringComparison.Ordinal);
        Assert.All(Lots(answer), Assert.Null);
    }

    [Theory]
    [InlineData("state", "\"sealed\"")]
    [InlineData("quarantined", "\"no\"")]
    [InlineData("reservedFor", "\"JOB-0417\"")]
    [InlineData("resinExpiresOn", "\"2026-03-12\"")]
    [InlineData("doseExpiresOn", "\"2026-03-11\"")] // no dose goes in at 8 °C
    [InlineData("storage", """{"lowest":{"value":41,"unit":"degF"},"highest":{"value":30,"unit":"degC"}}""")]
    public async Task Lot_that_may_be_used_leaves_the_decision_as_it_was(string member, string raw)
    {
        var answer = await AnswerAsync(member, raw);

        Assert.Equal("proceedWithCare", (string?)answer["decision"]);
        Assert.All(Lots(answer), lot => Assert.Equal("A-118", lot));
        Assert.DoesNotContain("facts-not-stated", Plans.Codes(answer));
    }

    [Fact]
    public async Task Lot_that_is_kept_for_another_job_is_left_for_it()
    {
        var answer = await AnswerAsync("reservedFor", "\"JOB-0001\"");

        Assert.Equal("proceedWithCare", (string?)answer["decision"]);
        Assert.Equal("note", (string?)Plans.Find(answer, "lot-reserved")["severity"]);
        Assert.All(Lots(answer), Assert.Null);
    }

    /// <summary>The invented sheet with a storage range of 5 to 30 °C.</summary>
    private async Task<JsonObject> AnswerAsync(string member, string raw) =>
        await service.AnswerAsync(Plans.Path, (await Plans.WithSheetAsync(service))
        .With("/compound/sheet/storage",
        new JsonObject { ["minimum"] = NodeEdits.Quantity(5, "degC"), ["maximum"] = NodeEdits.Quantity(30, "degC") })
        .With("/stock/0/" + member, JsonNode.Parse(raw)));

    private static IEnumerable<string?> Lots(JsonObject answer) =>
        answer["result"]!["mixes"]!.AsArray().SelectMany(mix => mix!["kits"]!.AsArray()).Select(kit => (string?)kit!["lot"]);
}
