using System.Net;
using System.Text.RegularExpressions;
using CalcService.Api.Tests.Fixtures;
using CalcService.Engine.Rules;

namespace CalcService.Api.Tests.Findings;

/// <summary>Every finding has its page, and no page says otherwise than the catalogue.</summary>
public sealed partial class FindingPageTests(Service service, ServedPages pages) : IClassFixture<ServedPages>
{
    private static RuleBook Current => Editions.Known.Current;

    [Fact]
    public void Page_says_what_the_catalogue_says() => Assert.All(ServiceHost.Findings, definition =>
    {
        var text = Text(pages.All[definition.Code]);

        Assert.Contains($"{definition.Code}\n", text, StringComparison.Ordinal);
        Assert.All(Severities(definition), severity => Assert.Contains($"\n{severity}\n", text, StringComparison.Ordinal));
        Assert.All([definition.Meaning, definition.Message, definition.Action, definition.SourceIn(Current).Document, definition.Since],
            words => Assert.Contains(words, text, StringComparison.Ordinal));
        Assert.All(definition.LimitsIn(Current), limit => Assert.Contains($"\n{limit.Text}\n", text, StringComparison.Ordinal));
    });

    [Fact]
    public void Page_has_an_example_in_each_severity_of_its_finding() => Assert.All(ServiceHost.Findings, definition => Assert.Equal(
        Severities(definition).ToHashSet(),
        pages.Examples.Where(example => example.Page == definition.Code).Select(example => example.Severity).ToHashSet()));

    [Fact]
    public void Finding_of_the_catalogue_has_an_example_in_each_of_its_severities()
    {
        var known = ServiceHost.Findings
            .SelectMany(definition => definition.Severities.Select(severity => $"{definition.Code} {severity}")).ToArray();
        var shown = OperationExamples.All
            .SelectMany(operation => operation.Examples).Select(example => $"{example.Code} {example.Severity}").ToArray();

        Assert.Empty(known.Except(shown));
        Assert.Empty(shown.Except(known));
    }

    [Fact]
    public async Task Calculation_that_is_served_has_examples_of_its_findings() => Assert.Equal(
        (await ServedContract.ReadAsync(service)).Answering.Select(route => route.Path).Order(StringComparer.Ordinal),
        OperationExamples.All.Select(operation => operation.Path).Order(StringComparer.Ordinal));

    [Fact]
    public async Task Index_lists_every_finding_with_its_meaning()
    {
        var text = Text((await service.GetAsync(ServedPages.Index)).Text);

        Assert.All(ServiceHost.Findings, definition => Assert.Contains(
            $"\n{definition.Code}\n{string.Join(", ", Severities(definition))}\n{definition.Meaning}\n", text, StringComparison.Ordinal));
    }

    /// <summary>Behind a gateway's prefix a link that begins with a slash would lead elsewhere.</summary>
    [Fact]
    public async Task Link_of_a_page_is_relative_and_leads_somewhere()
    {
        var index = (await service.GetAsync(ServedPages.Index)).Text;
        var links = pages.All.Select(page => (At: ServedPages.PathOf(page.Key), Html: page.Value))
            .Append((At: ServedPages.Index, Html: index))
            .SelectMany(page => Link().Matches(page.Html).Select(match => (page.At, To: match.Groups["to"].Value))).ToArray();

        Assert.DoesNotContain(links, link => link.To.StartsWith('/') || link.To.Contains("//", StringComparison.Ordinal));
        foreach (var target in links.Select(link => new Uri(new Uri(service.Address, link.At), link.To)).Distinct())
        {
            Assert.Equal(200, (await service.GetAsync(target.AbsolutePath)).Status);
            Assert.True(target.Fragment.Length == 0 || index.Contains($"id=\"{target.Fragment[1..]}\"", StringComparison.Ordinal),
                target.ToString());
        }
    }

    [Theory]
    [InlineData(ServedPages.Index)]
    [InlineData(ServedPages.Index + "/lot-expired")]
    public async Task Page_with_a_slash_behind_its_address_leads_to_the_page(string path)
    {
        using var connection = new RawConnection(service.Address);
        await connection.SendAsync($"GET {path}/ HTTP/1.1\r\nHost: here\r\nConnection: close\r\n\r\n");
        var reply = await connection.ReadToEndAsync();

        Assert.Equal(301, reply.Status);
        // A gateway's prefix stays: the address is given relative to the one that was asked for.
        Assert.Contains($"Location: ../{path.Split('/')[^1]}\r\n", reply.Head, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/docs/findings/lot-expired")]
    [InlineData("/DOCS/Findings/lot-expired")]
    [InlineData("/docs/findings")]
    public async Task Page_that_is_known_already_is_not_sent_again(string path)
    {
        var page = await service.GetAsync(path);
        var again = await service.GetAsync(path, ("If-None-Match", page.Headers.ETag!.ToString()));

        Assert.Equal((200, "text/html"), (page.Status, page.MediaType));
        Assert.Equal((304, ""), (again.Status, again.Text));
    }

    [Fact]
    public async Task Page_of_a_finding_that_is_none_is_a_404_problem() =>
        ProblemAssert.IsProblem(await service.GetAsync(ServedPages.PathOf("findings")), 404);

    /// <summary>What a reader sees: each element's text on a line of its own.</summary>
    private static string Text(string page) => WebUtility.HtmlDecode(Tags().Replace(page, "\n"));

    private static IEnumerable<string> Severities(Engine.Findings.FindingDefinition definition) =>
        definition.Severities.Select(severity => severity.ToString().ToLowerInvariant());

    [GeneratedRegex("(\\s*</?[a-z][^>]*>\\s*)+")]
    private static partial Regex Tags();

    [GeneratedRegex("href=\"(?<to>[^\"]*)\"")]
    private static partial Regex Link();
}
