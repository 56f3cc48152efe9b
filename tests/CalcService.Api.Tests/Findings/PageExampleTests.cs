using System.Net;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Findings;

/// <summary>The examples of the pages do what the pages say.</summary>
public sealed partial class PageExampleTests(Service service, ServedPages pages) : IClassFixture<ServedPages>
{
    // The contract's words, one to one; worst last.
    private static readonly string[] Severities = ["note", "caution", "unknown", "stop"];
    private static readonly string[] Decisions = ["proceed", "proceedWithCare", "undetermined", "doNotProceed"];

    public static TheoryData<string> Codes => [.. ServiceHost.Findings.Select(definition => definition.Code)];

    public static TheoryData<string> Paths => [.. OperationExamples.All.Select(operation => operation.Path)];

    [Theory]
    [MemberData(nameof(Codes))]
    public async Task Example_of_a_page_raises_its_finding(string code)
    {
        var examples = pages.Examples.Where(example => example.Page == code).ToArray();
        Assert.Equal(OperationExamples.Of(code).Count(), examples.Length);
        foreach (var example in examples)
        {
            var reply = await service.PostAsync(example.Path, example.Request);
            Assert.True(reply.Status == 200, reply.Text);
            var findings = reply.Json["findings"]!.AsArray();

            Assert.Contains(findings, finding => JsonNode.DeepEquals(finding, example.Finding));
            Assert.Equal((code, example.Severity), ((string?)example.Finding["code"], (string?)example.Finding["severity"]));
            Assert.Equal(Decisions[findings.Max(finding => Array.IndexOf(Severities, (string?)finding!["severity"]))], reply.Decision);
            Assert.Equal(example.Decision, reply.Decision);
            // No row forbids what the decision allows.
            Assert.True(reply.Decision == Decisions[^1] || !Failed(reply.Json).Any(), string.Join(", ", Failed(reply.Json)));
        }
    }

    private static IEnumerable<string> Failed(JsonNode answer) => ((answer["result"] as JsonObject)?["checks"] as JsonArray ?? [])
        .Where(check => (string?)check!["outcome"] == "fail").Select(check => (string)check!["id"]!);

    [Fact]
    public async Task Finding_of_a_page_points_to_members_that_a_request_can_have()
    {
        var contract = await ServedContract.ReadAsync(service);
        var schemas = contract.Answering.ToDictionary(route => route.Path, route => route.SchemaName);

        Assert.All(pages.Examples, example => Assert.All(example.Finding["related"]!.AsArray().Prepend(example.Finding["pointer"]),
            pointer => Assert.True(contract.Has(schemas[example.Path], (string)pointer!), $"{example.Page}: {pointer}")));
    }

    [Theory]
    [MemberData(nameof(Paths))]
    public async Task Request_that_the_examples_change_has_nothing_wrong(string path)
    {
        var index = (await service.GetAsync(ServedPages.Index)).Text;
        var request = Good().Matches(index).Single(match => match.Groups["path"].Value == path).Groups["request"].Value;
        var reply = await service.PostAsync(path, WebUtility.HtmlDecode(request));

        Assert.True(reply.Status == 200, reply.Text);
        Assert.Empty(reply.Json["findings"]!.AsArray());
        Assert.Equal("proceed", reply.Decision);
    }

    /// <summary>A limit that isn't the request's own, or its sheet's, stands at /v1/rules/{code}.</summary>
    [Fact]
    public async Task Limit_by_law_or_from_memory_can_be_looked_up()
    {
        var ruled = pages.Examples
            .Where(example => example.Finding["limit"] is not null
                && (string?)example.Finding.At("/source/basis") is "law" or "fromMemory").ToArray();
        Assert.NotEmpty(ruled);
        foreach (var example in ruled)
        {
            var rule = (await service.GetAsync("/v1/rules/" + example.Page)).Json;
            Assert.True(rule["limits"]!.AsArray().Count > 0, $"{example.Page}: {example.Finding.ToJsonString()}");
        }
    }

    /// <summary>But for a verification: it brings an archived answer along, and our own words have apostrophes.</summary>
    [Fact]
    public void Request_of_a_page_goes_between_the_quotes_of_a_shell() => Assert.All(
        pages.Examples.Where(example => example.Path != ArchivedAnswers.Path), example => Assert.DoesNotContain('\'', example.Request));

    [GeneratedRegex(
        "<p><code>POST (?<path>/[^<]*)</code></p>\n<pre><code[^>]*>(?<request>[^<]*)</code></pre>", RegexOptions.ExplicitCapture)]
    private static partial Regex Good();
}
