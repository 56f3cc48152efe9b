using System.Text.Json.Nodes;
using CalcService.Api.Tests.Fixtures;
using static CalcService.Api.Tests.Facts.FactRow;

namespace CalcService.Api.Tests.Facts;

/// <summary>The tables of docs/facts.md, row by row: what the answer is where a fact is absent, said to be unknown, or bad.</summary>
public sealed class FactsTableTests(Service service)
{
    public static TheoryData<string, int, string> Rows =>
        [.. FactTable.All.SelectMany(table => table.Rows.Select((row, index) => (table.Heading, index, row.Cell)))];

    public static TheoryData<string> Headings => [.. FactTable.All.Select(table => table.Heading)];

    [Theory]
    [MemberData(nameof(Rows))]
    public async Task Fact_that_is_bad_absent_or_unknown_has_the_answer_of_the_table(string heading, int index, string fact)
    {
        var table = FactTable.All.Single(one => one.Heading == heading);
        var row = table.Rows[index];
        Assert.Equal(fact, row.Cell);
        var bad = row.BadRequest(table.Good);
        var wrong = await service.AnswerAsync(table.Path, bad);
        Assert.Equal(row.BadDecision, (string?)wrong["decision"]);
        Assert.Contains(row.Code, Plans.Codes(wrong));
        // What is passed over where it is absent may still be asked for where it is said to be unknown.
        await AssertAskedAsync(bad.Without(row.Pointer), row.Absent, row.Absent == Proceed && row.IfUnknown is Unknown ? null : row.Asked);
        if (row.IfUnknown is { } decision)
        {
            await AssertAskedAsync(bad.With(row.Pointer, JsonNode.Parse(row.UnknownJson)), decision, row.UnknownAsked ?? row.Asked);
        }

        async Task AssertAskedAsync(JsonObject request, string decision, string? code)
        {
            var answer = await service.AnswerAsync(table.Path, request);
            Assert.Equal(decision, (string?)answer["decision"]);
            if (code is not null)
            {
                var places = answer["findings"]!.AsArray().Where(finding => (string?)finding!["code"] == code)
                    .SelectMany(finding => finding!["related"]!.AsArray().Prepend(finding["pointer"]));
                Assert.Contains(row.AskedAt ?? row.Pointer, places.Select(place => (string?)place));
            }

            if (table.HasPurpose)
            {
                var (plan, quote) = decision == Proceed ? (Proceed, Proceed) : (row.Plan, row.Quote);
                Assert.Equal(plan, (string?)(await service.AnswerAsync(table.Path, request.With("/purpose", "plan")))["decision"]);
                Assert.Equal(quote, (string?)(await service.AnswerAsync(table.Path, request.With("/purpose", "quote")))["decision"]);
            }
        }
    }

    /// <summary>The page says what the rows say, and has no row beside them.</summary>
    [Theory]
    [MemberData(nameof(Headings))]
    public async Task Table_of_the_page_has_these_rows(string heading)
    {
        var table = FactTable.All.Single(one => one.Heading == heading);
        var page = await File.ReadAllTextAsync(Repository.PathOf("docs", "facts.md"), TestContext.Current.CancellationToken);
        var section = page.Split($"## {heading}\n")[1].Split("\n## ")[0];
        var lines = section.Split('\n').Where(line => line.StartsWith("| `", StringComparison.Ordinal));
        Assert.Equal(table.Rows.Select(row => Line(table, row)), lines);
    }

    private static string Line(FactTable table, FactRow row)
    {
        var isAsked = row.Absent != Proceed || row.IfUnknown is not (null or Proceed);
        string[] purposes = !table.HasPurpose ? [] : isAsked ? [Word(row.Plan), Word(row.Quote)] : [Word(Proceed), Word(Proceed)];
        var asked = string.Join(", ", new[] { row.Asked, row.UnknownAsked }.OfType<string>().Select(code => $"`{code}`"));
        var unknown = row.IfUnknown is { } said ? Word(said) : "";
        string[] cells = [row.Cell, Word(row.BadDecision), Word(row.Absent), unknown, .. purposes, asked, $"`{row.Code}`"];
        return $"| {string.Join(" | ", cells)} |";
    }

    private static string Word(string decision) => decision switch
    {
        Stop => "stop", Unknown => "undetermined", Care => "caution", _ => "proceed",
    };
}
