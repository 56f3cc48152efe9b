using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Findings;

/// <summary>An example as it stands on a committed page, read as a stranger would: path, request, decision, finding.</summary>
public sealed partial record PageExample(string Page, string Severity, string Path, string Request, string Decision, JsonObject Finding)
{
    public static IReadOnlyList<PageExample> All { get; } =
    [
        .. Directory.GetFiles(Repository.PathOf("docs", "findings"), "*.md").Order(StringComparer.Ordinal)
            .Where(file => System.IO.Path.GetFileName(file) != "README.md").SelectMany(Read),
    ];

    private static IEnumerable<PageExample> Read(string file) =>
        File.ReadAllText(file).ReplaceLineEndings("\n").Split("\n## Example: ").Skip(1).Select(part =>
        {
            var match = Example().Match(part);
            Assert.True(match.Success, $"{file} has an example that can't be read.");
            return new PageExample(System.IO.Path.GetFileNameWithoutExtension(file), match.Groups["severity"].Value, match.Groups["path"].Value,
                match.Groups["request"].Value, match.Groups["decision"].Value, JsonNode.Parse(match.Groups["finding"].Value)!.AsObject());
        });

    [GeneratedRegex(
        "^(?<severity>[a-z]+)\n.*?\n`POST (?<path>/[^`]*)`\n\n```json\n(?<request>.*?)\n```\n\nThe decision is `(?<decision>[A-Za-z]+)`[^\n]*\n\n```json\n(?<finding>.*?)\n```",
        RegexOptions.Singleline | RegexOptions.ExplicitCapture)]
    private static partial Regex Example();
}
