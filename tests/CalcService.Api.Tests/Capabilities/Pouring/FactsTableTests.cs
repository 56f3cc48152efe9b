using System.Text.Json.Nodes;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Capabilities.Pouring;

/// <summary>The table of docs/facts.md, row by row: what the answer is where a fact is absent, said to be unknown, or bad.</summary>
public sealed class FactsTableTests(Service service)
{
    private const string Stop = "doNotProceed", Unknown = "undetermined", Care = "proceedWithCare";

    /// <summary>Pointer, the fact that makes it count, a bad value, the decisions for bad, absent and unknown, and the finding that the bad one raises.</summary>
    public static TheoryData<string, string?, string, string, string, string?, string> Rows => new()
    {
        { "/ends/0/socket/bore", null, "\"oldResin\"", Stop, Unknown, Unknown, "bore-not-clean" },
        { "/ends/0/fibreCore", "/ends/0/rope/core=fibre", "\"left\"", Stop, Unknown, Unknown, "left-in-broom" },
        { "/ends/0/plastic", "/ends/0/rope/plasticFilled=yes", "\"left\"", Stop, Unknown, Unknown, "left-in-broom" },
        { "/ends/0/plastic", "/ends/0/rope/plasticFilled=", "\"left\"", Stop, Care, Unknown, "left-in-broom" },
        { "/ends/0/cleaner", "/ends/0/rope/lubricant=heavy", "\"acid\"", Stop, Unknown, Unknown, "cleaner-forbidden" },
        { "/ends/0/cleaner", "/ends/0/rope/lubricant=unknown", "\"acid\"", Stop, Unknown, Unknown, "cleaner-forbidden" },
        { "/ends/0/cleaner", null, "\"flux\"", Stop, Care, Unknown, "cleaner-forbidden" },
        { "/ends/0/driedAt", null, "\"2026-03-12T09:00:00+01:00\"", Stop, Care, null, "broom-not-dry" },
        { "/ends/0/straightBelow", null, """{"value": 0, "unit": "m"}""", Stop, Care, null, "no-straight-rope" },
        { "/ends/0/tilt", null, """{"value": 6, "unit": "deg"}""", Unknown, Care, null, "rope-tilted" },
        { "/ends/0/socket/material/kind", null, "\"greyIron\"", Stop, Care, Unknown, "socket-metal-unfit" },
        { "/ends/0/socket/breakingForce", null, """{"value": 200, "unit": "kN"}""", Stop, Care, null, "socket-weaker-than-rope" },
        { "/stock/0/state", null, "\"opened\"", Stop, Unknown, Unknown, "lot-not-sealed" },
        { "/stock/0/quarantined", null, "\"yes\"", Stop, Unknown, Unknown, "lot-quarantined" },
        { "/stock/0/storage", null, """{"highest": {"value": 60, "unit": "degC"}}""", Stop, Care, null, "storage-outside-range" },
        { "/conditions/ignitionSource", null, "\"yes\"", Stop, Unknown, Unknown, "ignition-source" },
        { "/conditions/place", null, "\"confined\"", Care, Care, Unknown, "confined-space" },
        { "/dose/added", "/dose={}", "\"afterHardener\"", Stop, Care, Unknown, "dose-after-hardener" },
    };

    [Theory]
    [MemberData(nameof(Rows))]
    public async Task Fact_that_is_bad_absent_or_unknown_has_the_answer_of_the_table(
        string pointer, string? counts, string bad, string badDecision, string absentDecision, string? unknownDecision, string code)
    {
        var pour = OperationExamples.All.Single(operation => operation.Path == Plans.Path).Good;
        switch (counts?.Split('='))
        {
            case [var member, ""]:
                pour = pour.Without(member);
                break;
            case [var member, "{}"]:
                pour = pour.With(member, new JsonObject());
                break;
            case [var member, var word]:
                pour = pour.With(member, word);
                break;
        }

        var wrong = await service.AnswerAsync(Plans.Path, pour.With(pointer, JsonNode.Parse(bad)));
        Assert.Equal(badDecision, (string?)wrong["decision"]);
        Assert.Contains(code, Plans.Codes(wrong));
        await AssertAskedAsync(pour.With(pointer, JsonNode.Parse(bad)).Without(pointer), absentDecision);
        if (unknownDecision is not null)
        {
            await AssertAskedAsync(pour.With(pointer, "unknown"), unknownDecision);
        }

        async Task AssertAskedAsync(JsonObject request, string decision)
        {
            var answer = await service.AnswerAsync(Plans.Path, request);
            Assert.Equal(decision, (string?)answer["decision"]);
            var asked = Plans.Find(answer, "facts-not-stated");
            Assert.Contains(pointer, asked["related"]!.AsArray().Prepend(asked["pointer"]).Select(place => (string?)place));
            Assert.Equal(Care, (string?)(await service.AnswerAsync(Plans.Path, request.With("/purpose", "plan")))["decision"]);
            Assert.Equal("proceed", (string?)(await service.AnswerAsync(Plans.Path, request.With("/purpose", "quote")))["decision"]);
        }
    }

    [Fact]
    public async Task Table_of_the_page_has_a_row_for_each_fact()
    {
        var page = await File.ReadAllTextAsync(Repository.PathOf("docs", "facts.md"), TestContext.Current.CancellationToken);
        Assert.All(Rows, row =>
        {
            var (pointer, code) = (row.Data.Item1, row.Data.Item7);
            var member = pointer[1..].Replace("/0/", "[].", StringComparison.Ordinal).Replace('/', '.');
            Assert.Contains(page.Split('\n'), line => line.StartsWith($"| `{member}`", StringComparison.Ordinal) && line.Contains($"`{code}`", StringComparison.Ordinal));
        });
    }
}
