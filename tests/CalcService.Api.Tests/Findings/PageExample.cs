using System.Net;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace CalcService.Api.Tests.Findings;

/// <summary>An example as it stands on a served page, read as a stranger would: path, request, decision, finding.</summary>
public sealed partial record PageExample(string Page, string Severity, string Path, string Request, string Decision, JsonObject Finding)
{
    public static IEnumerable<PageExample> Read(string code, string page) => Heading().Split(page).Skip(1).Select(part =>
    {
        var match = Example().Match(part);
        Assert.True(match.Success, $"{code} has an example that can't be read.");
        return new PageExample(code, match.Groups["severity"].Value, match.Groups["path"].Value,
            Text(match, "request"), match.Groups["decision"].Value, JsonNode.Parse(Text(match, "finding"))!.AsObject());
    });

    private static string Text(Match match, string group) => WebUtility.HtmlDecode(match.Groups[group].Value);

    [GeneratedRegex("<h2[^>]*>Example: ")]
    private static partial Regex Heading();

    [GeneratedRegex(
        "^(?<severity>[a-z]+)</h2>.*?<p><code>POST (?<path>/[^<]*)</code></p>\n<pre><code[^>]*>(?<request>[^<]*)</code></pre>\n"
            + "<p>The decision is <code>(?<decision>[A-Za-z]+)</code>[^<]*</p>\n<pre><code[^>]*>(?<finding>[^<]*)</code></pre>",
        RegexOptions.Singleline | RegexOptions.ExplicitCapture)]
    private static partial Regex Example();
}
