using System.Text.Json;
using System.Text.Json.Nodes;
using CalcService.Api.Answers;
using CalcService.Api.Units;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;

namespace CalcService.Api.Pages;

/// <summary>The page of a finding in Markdown: what the catalogue says, and examples with what the service answers.</summary>
internal static class FindingPage
{
    /// <summary>From a page to the list of all.</summary>
    private const string Index = "../findings";

    /// <param name="definition">The finding.</param>
    /// <param name="book">The edition whose limits and sources it tells.</param>
    /// <param name="isCurrent">Whether requests get it that name none; the examples are made for it, and name any other.</param>
    /// <param name="answer">Computes the answer to a request that is sent to a path.</param>
    public static string Write(FindingDefinition definition, RuleBook book, bool isCurrent, Func<string, JsonObject, JsonObject> answer)
    {
        var parts = new List<string>
        {
            $"# {definition.Code}",
            definition.Meaning,
            Table("severity", "decision, if nothing is worse",
            definition.Severities.Select(severity => new[] { Name(severity), $"`{DecisionOf(severity)}`" })),
            $"**It says:** *{definition.Message}*",
            $"**What to do:** {definition.Action}",
            $"**Source:** {SourceOf(definition.SourceIn(book))}. In the rules since {definition.Since}.",
        };
        if (definition.LimitsIn(book) is { Count: > 0 } limits)
        {
            parts.Add("## Limits\n\n" + Limits(limits));
        }

        foreach (var (operation, example) in OperationExamples.Of(definition.Code))
        {
            parts.AddRange(Example(operation, example, isCurrent ? null : book.Edition, answer));
        }

        parts.Add($"[All findings]({Index})");
        return string.Join("\n\n", parts) + "\n";
    }

    /// <summary>A word of the contract: in JSON and on the page it is the same.</summary>
    public static string Name<T>(T word)
        where T : struct, Enum => JsonNamingPolicy.CamelCase.ConvertName(word.ToString());

    private static string DecisionOf(Severity severity) => Name((Decision)severity);

    private static List<string> Example(OperationExamples operation, FindingExample example, string? edition, Func<string, JsonObject,
        JsonObject> answer)
    {
        var request = example.Change(operation.Good);
        if (edition is not null)
        {
            request["rules"] = edition;
        }

        var answered = answer(operation.Path, request);
        var findings = answered["findings"]!.AsArray();
        if (findings.SingleOrDefault(finding => Is(finding!, example)) is not { } found)
        {
            // By other limits it may be in order.
            return edition is not null ? []
                : throw new InvalidOperationException(
                $"{example.Code} {example.Severity} {example.Pointer} is not among: {string.Join(", ", findings.Select(Short))}");
        }

        List<string> parts =
        [
            $"## Example: {Name(example.Severity)}",
            $"[A request with which nothing is wrong]({Index}#nothing-wrong), except "
                + $"that\n\n{List(Difference.Of(operation.Good, request))}",
            $"`POST {operation.Path}`",
            Fence(request),
            $"The decision is `{answered["decision"]}`, with this finding:",
            Fence(found),
        ];
        var others = findings.Where(finding => finding != found)
            .Select(finding => $"[{finding!["code"]}]({finding["code"]}) ({finding["severity"]})").Distinct().ToArray();
        if (others.Length > 0)
        {
            parts.Add($"It comes with {string.Join(", ", others)}.");
        }

        return parts;
    }

    private static bool Is(JsonNode finding, FindingExample example) =>
        ((string?)finding["code"], (string?)finding["severity"], (string?)finding["pointer"]) == (example.Code, Name(example.Severity),
        example.Pointer);

    private static string Short(JsonNode? finding) => $"{finding!["code"]} {finding["severity"]} {finding["pointer"]}";

    private static string Limits(IEnumerable<Rule> limits) =>
        "| limit | value | source |\n|---|---|---|\n" + string.Join("\n", limits.Select(limit =>
            $"| {limit.Text} | {((Measure?)limit is { } value ? AnswerText.Of(value, UnitSystem.Metric, Rounding.AnswerDigits) : "")} | "
                + $"{SourceOf(limit.Source)} |"));

    /// <summary>Where something comes from, in words.</summary>
    public static string SourceOf(Source source)
    {
        var (place, basis) = (source.Document + (source.Clause.Length > 0 ? ", " + source.Clause : ""), Words(source.Basis));
        return place.Contains(basis, StringComparison.Ordinal) ? place : $"{place} ({basis})";
    }

    private static string Words(Basis basis) => basis switch
    {
        Basis.DataSheet => "data sheet",
        Basis.CommonPractice => "common practice",
        Basis.FromMemory => "from memory",
        _ => Name(basis),
    };

    private static string Table(string left, string right, IEnumerable<string[]> rows) =>
        $"| {left} | {right} |\n|---|---|\n" + string.Join("\n", rows.Select(row => $"| {string.Join(" | ", row)} |"));

    private static string List(IEnumerable<string> items) => string.Join("\n", items.Select(item => "- " + item));

    private static string Fence(JsonNode? node) => $"```json\n{PageJson.Write(node)}\n```";
}
