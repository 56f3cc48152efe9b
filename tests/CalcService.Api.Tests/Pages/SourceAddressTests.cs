using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Pages;

/// <summary>A source that is a page of ours is named by an address that opens, wherever a user meets it.</summary>
public sealed partial class SourceAddressTests(Service service)
{
    [Theory]
    [InlineData("/v1/rules")]
    [InlineData("/v1/rule-sets")]
    public async Task Source_of_a_catalogue_opens(string path) => await OpenAsync(SourcesOf((await service.GetAsync(path)).Json));

    [Fact]
    public async Task Source_of_an_answer_and_of_its_trace_opens()
    {
        var sources = new HashSet<string>(StringComparer.Ordinal);
        foreach (var route in (await ServedContract.ReadAsync(service)).Answering)
        {
            foreach (var (_, request) in route.Examples)
            {
                var answer = await service.AnswerAsync(route.Path + "?detail=full", request);
                // A request may hold an archived answer, whose sources are what they were.
                sources.UnionWith(SourcesOf(answer.Without("/input")));
            }
        }

        await OpenAsync(sources);
    }

    /// <summary>Sheets are relative too: /v1/…/sheet is two steps below the service.</summary>
    [Fact]
    public async Task Source_on_a_sheet_is_a_link_that_opens()
    {
        var opened = new HashSet<Uri>();
        foreach (var route in (await ServedContract.ReadAsync(service))
            .Calculations.Where(route => route.Path.EndsWith("/sheet", StringComparison.Ordinal)))
        {
            foreach (var (_, request) in route.Examples)
            {
                var page = (await service.PostAsync(route.Path, request)).Text;
                var links = Link().Matches(page);

                Assert.Equal(Address().Count(page), links.Count);
                opened.UnionWith(links.Select(link => new Uri(new Uri(service.Address, route.Path), link.Groups["to"].Value)));
                Assert.All(links, link => Assert.EndsWith(link.Groups["shown"].Value, link.Groups["to"].Value, StringComparison.Ordinal));
            }
        }

        Assert.NotEmpty(opened);
        foreach (var address in opened)
        {
            await service.OpensAsync(address);
        }
    }

    private async Task OpenAsync(IReadOnlyCollection<string> sources)
    {
        Assert.DoesNotContain(sources, source => source.Contains(".md", StringComparison.Ordinal));
        var addresses = sources.SelectMany(source => Address().Matches(source)).Select(address => address.Value).Distinct().ToArray();
        Assert.NotEmpty(addresses);
        foreach (var address in addresses)
        {
            await service.OpensAsync(new Uri(service.Address, address));
        }
    }

    /// <summary>Whatever stands as document or clause.</summary>
    private static HashSet<string> SourcesOf(JsonNode node) =>
        [.. node.Walk().Where(part => part.Value is JsonObject && part.Value["document"] is JsonValue)
            .SelectMany(part => new[] { (string)part.Value!["document"]!, (string?)part.Value["clause"] ?? "" })];

    [GeneratedRegex(@"(?<![\w.])/docs/[^\s,;)<""]+")]
    private static partial Regex Address();

    [GeneratedRegex("<a href=\"(?<to>[^\"]*)\">(?<shown>[^<]*)</a>")]
    private static partial Regex Link();
}
