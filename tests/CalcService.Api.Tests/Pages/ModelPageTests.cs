using System.Net;
using System.Text.RegularExpressions;
using CalcService.Api.Tests.Fixtures;
using CalcService.Engine.Provenance;

namespace CalcService.Api.Tests.Pages;

/// <summary>Every page of docs/ is served, leads somewhere, and shows formulas as the engine has them.</summary>
public sealed partial class ModelPageTests(Service service)
{
    private const string Index = "pages";

    private static readonly Dictionary<string, string> Files = Directory.GetFiles(Repository.PathOf("docs"), "*.md")
        .ToDictionary(path => Path.GetFileNameWithoutExtension(path), path => File.ReadAllText(path).ReplaceLineEndings("\n"));

    [Fact]
    public async Task Page_is_the_file_of_its_name()
    {
        Assert.NotEmpty(Files);
        foreach (var (name, text) in Files)
        {
            var page = await service.GetAsync("/docs/" + name);

            Assert.Equal((200, "text/html"), (page.Status, page.MediaType));
            // Title and headings, as text.
            var read = WebUtility.HtmlDecode(page.Text);
            Assert.All(Heading().Matches(text), heading => Assert.Contains(
                $">{heading.Groups["text"].Value}</h{heading.Groups["level"].Length}>", read, StringComparison.Ordinal));
        }
    }

    [Fact]
    public async Task Index_has_a_link_to_every_page()
    {
        var index = (await service.GetAsync("/docs/" + Index)).Text;

        Assert.All(Files.Keys.Except([Index]), name => Assert.Contains($"<a href=\"{name}\">", index, StringComparison.Ordinal));
    }

    /// <summary>Behind a gateway's prefix a link that begins with a slash would lead elsewhere.</summary>
    [Fact]
    public async Task Link_of_a_page_is_relative_and_leads_somewhere()
    {
        var opened = new HashSet<Uri>();
        foreach (var name in Files.Keys.Append("problems"))
        {
            var at = new Uri(service.Address, "/docs/" + name);
            foreach (var link in Link().Matches((await service.GetAsync(at.AbsolutePath)).Text).Select(match => match.Groups["to"].Value))
            {
                Assert.False(link.StartsWith('/') || link.Contains("//", StringComparison.Ordinal), $"{name}: {link}");
                if (opened.Add(new Uri(at, link)))
                {
                    await service.OpensAsync(new Uri(at, link));
                }
            }
        }

        Assert.NotEmpty(opened);
    }

    [Fact]
    public async Task Page_that_is_known_already_is_not_sent_again()
    {
        var page = await service.GetAsync("/docs/release");
        var again = await service.GetAsync("/docs/release", ("If-None-Match", page.Headers.ETag!.ToString()));

        Assert.Equal((304, ""), (again.Status, again.Text));
    }

    [Theory]
    [InlineData("no-such-page")]
    [InlineData("release.md")]
    [InlineData("../v1")]
    public async Task Page_that_is_none_is_a_404_problem(string name) =>
        ProblemAssert.IsProblem(await service.GetAsync("/docs/" + Uri.EscapeDataString(name)), 404);

    [Fact]
    public async Task Page_with_a_slash_behind_its_address_leads_to_the_page()
    {
        using var connection = new RawConnection(service.Address);
        await connection.SendAsync("GET /docs/release/ HTTP/1.1\r\nHost: here\r\nConnection: close\r\n\r\n");
        var reply = await connection.ReadToEndAsync();

        Assert.Equal(301, reply.Status);
        Assert.Contains("Location: ../release\r\n", reply.Head, StringComparison.Ordinal);
    }

    [Fact]
    public void Formula_of_the_catalogue_is_on_a_page()
    {
        var shown = Files.Values.SelectMany(FormulaList.Named).ToHashSet();

        Assert.Empty(FormulaCatalogue.All.Keys.Except(shown));
        Assert.Empty(shown.Except(FormulaCatalogue.All.Keys));
    }

    [Fact]
    public async Task Page_shows_a_formula_as_the_trace_does()
    {
        foreach (var (name, text) in Files)
        {
            var page = WebUtility.HtmlDecode((await service.GetAsync("/docs/" + name)).Text);

            Assert.DoesNotContain("language-formula", page, StringComparison.Ordinal);
            Assert.All(FormulaList.Named(text).Select(id => FormulaCatalogue.All[id]), formula =>
            {
                Assert.Contains($"<code>{formula.Symbol} = {formula.Expression}</code>", page, StringComparison.Ordinal);
                Assert.Contains($"{formula.Name}. Range: {formula.Range}. Source: ", page, StringComparison.Ordinal);
            });
        }
    }

    [Fact]
    public async Task Operation_of_a_capability_names_its_page_in_the_document()
    {
        var contract = await ServedContract.ReadAsync(service);
        var at = new Uri(service.Address, "/openapi/v1.json");
        foreach (var route in contract.Calculations.Concat(contract.BatchRoutes))
        {
            var page = (string)contract.Document["paths"]![route.Path]!["post"]!["externalDocs"]!["url"]!;

            Assert.Equal("../docs/" + route.Path.Split('/')[2], page);
            await service.OpensAsync(new Uri(at, page));
        }

        Assert.Equal("../docs/" + Index, (string)contract.Document["externalDocs"]!["url"]!);
    }

    [GeneratedRegex("^(?<level>#{1,2}) (?<text>.*)$", RegexOptions.Multiline)]
    private static partial Regex Heading();

    [GeneratedRegex("href=\"(?<to>[^\"]*)\"")]
    private static partial Regex Link();
}
