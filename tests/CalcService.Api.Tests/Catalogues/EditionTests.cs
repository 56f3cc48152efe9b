using System.Text.Json.Nodes;
using CalcService.Api.Tests.Fixtures;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;
using Microsoft.Extensions.DependencyInjection;

namespace CalcService.Api.Tests.Catalogues;

/// <summary>
/// The service with two invented editions around the one it comes with: an older one, to which all its findings are newer, and a newer one
/// that is a copy but for one number with another source, and for one finding that is new in it.
/// </summary>
public sealed class EditionTests(EditionHost host) : IClassFixture<EditionHost>
{
    internal const string Older = "2026-11", Old = "2026-12", New = "2027-03", Code = "steel-near-dew-point", NewCode = "invented-finding";

    internal static readonly Source Invented = new("an invented document", "an invented clause", Basis.FromMemory);

    [Theory]
    [InlineData(Old, 3, "ISO 8502-4 and ISO 12944-7", "")]
    [InlineData(New, 4.5, "an invented document", "an invented clause")]
    [InlineData(null, 4.5, "an invented document", "an invented clause")]
    public async Task Finding_has_number_and_source_of_the_edition_that_is_used(string? edition, double limit, string document,
        string clause)
    {
        var found = Assert.Single(await FoundAsync(edition), finding => (string?)finding!["code"] == Code)!;

        Assert.Equal((limit, "K"), ((double)found.At("/limit/value")!, (string)found.At("/limit/unit")!));
        Assert.Equal((document, clause), ((string)found.At("/source/document")!, (string)found.At("/source/clause")!));
        Assert.Contains($"{limit.ToString(System.Globalization.CultureInfo.InvariantCulture)} K", (string)found["message"]!,
            StringComparison.Ordinal);

        var query = edition is null ? "" : "?edition=" + edition;
        var rule = (await host.Service.GetAsync($"/v1/rules/{Code}{query}")).Json;
        Assert.Equal((limit, document, clause),
            ((double)rule.At("/limits/0/limit/value")!, (string)rule.At("/limits/0/document")!, (string)rule.At("/limits/0/clause")!));
        Assert.Equal(document, (string)rule.At("/source/document")!);
        Assert.Equal(rule.ToJsonString(), Listed(await host.Service.GetAsync("/v1/rules" + query), Code).Single().ToJsonString());

        var page = await host.Service.GetAsync($"/docs/findings/{Code}{query}");
        Assert.Equal(200, page.Status);
        Assert.Contains($"<td>{limit.ToString(System.Globalization.CultureInfo.InvariantCulture)} K</td>", page.Text,
            StringComparison.Ordinal);
        Assert.Contains("<strong>Source:</strong> " + document, page.Text, StringComparison.Ordinal);
        Assert.Equal(edition == Old, page.Text.Contains($"&quot;rules&quot;: &quot;{Old}&quot;", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Edition_raises_no_finding_that_is_newer() => Assert.Empty(await FoundAsync(Older));

    [Theory]
    [InlineData(Older, NewCode, 404)]
    [InlineData(Older, Code, 404)]
    [InlineData(Old, NewCode, 404)]
    [InlineData(New, NewCode, 200)]
    public async Task Edition_has_no_finding_that_is_newer(string edition, string code, int status)
    {
        Assert.Equal(status, (await host.Service.GetAsync($"/v1/rules/{code}?edition={edition}")).Status);
        Assert.Equal(status, (await host.Service.GetAsync($"/docs/findings/{code}?edition={edition}")).Status);
        Assert.Equal(status == 200, Listed(await host.Service.GetAsync("/v1/rules?edition=" + edition), code).Any());
    }

    [Fact]
    public async Task Rule_tells_what_its_edition_changed()
    {
        var change = (await host.Service.GetAsync($"/v1/rules/{Code}?edition={New}")).Json["changes"]!.AsArray().Single()!;
        Assert.Equal((3, 4.5), ((double)change.At("/was/limit/value")!, (double)change.At("/is/limit/value")!));
        Assert.Equal(("ISO 8502-4 and ISO 12944-7", "an invented document"),
            ((string)change.At("/was/document")!, (string)change.At("/is/document")!));
        Assert.Equal(("", "an invented clause"), ((string)change.At("/was/clause")!, (string)change.At("/is/clause")!));

        // What is new in an edition had no limit before it; what it left alone has no change, and neither has anything in the first
        // edition.
        var added = (await host.Service.GetAsync($"/v1/rules/{NewCode}?edition={New}")).Json["changes"]!.AsArray().Single()!;
        Assert.Equal((true, 4.5), (added["was"] is null, (double)added.At("/is/limit/value")!));
        Assert.Empty((await host.Service.GetAsync($"/v1/rules/broom-too-wide?edition={New}")).Json["changes"] as JsonArray ?? []);
    }

    [Fact]
    public async Task First_edition_changed_nothing() => Assert.All(
        (await new Service().GetAsync("/v1/rules")).Json["rules"]!.AsArray(), rule => Assert.Empty(rule!["changes"]!.AsArray()));

    [Theory]
    [InlineData("/v1/rules")]
    [InlineData("/v1/rules/" + Code)]
    [InlineData("/docs/findings/" + Code)]
    public async Task Unknown_edition_is_404_and_lists_the_known_ones(string path)
    {
        var reply = await host.Service.GetAsync(path + "?edition=2026-1");

        Assert.Equal(404, reply.Status);
        Assert.Contains($"{New}, {Old}, {Older}", (string)reply.Json["detail"]!, StringComparison.Ordinal);
        foreach (var other in new[] { "?Edition=2026-12", "?edition=2026-12&x=1", "?edition=2026-12&edition=2026-12", "?x=1" })
        {
            Assert.Equal(400, (await host.Service.GetAsync(path + other)).Status);
        }
    }

    /// <summary>Steel between three and four and a half kelvins above the dew point of what was read.</summary>
    private async Task<JsonArray> FoundAsync(string? edition)
    {
        var (operation, example) = OperationExamples.Of(Code).First(pair => pair.Operation.Path == Plans.Path);
        var request = example.Change(operation.Good);
        if (edition is not null)
        {
            request["rules"] = edition;
        }

        return (await host.Service.AnswerAsync(operation.Path, request))["findings"]!.AsArray();
    }

    private static IEnumerable<JsonNode> Listed(Reply rules, string code) =>
        rules.Json["rules"]!.AsArray().OfType<JsonNode>().Where(rule => (string?)rule["code"] == code);
}

/// <summary>The service with the invented editions.</summary>
public sealed class EditionHost : IAsyncDisposable
{
    internal Service Service { get; } = new(services =>
    {
        var known = Editions.Known.Find(EditionTests.Old)!;
        var margin = known.Pouring.DewMargin;
        var changed = known with
        {
            Edition = EditionTests.New,
            Pouring =
            known.Pouring with { DewMargin = new(margin.RuleSet, margin.Text, Measure.TemperatureDifference(4.5), EditionTests.Invented) },
        };
        var added = new FindingDefinition(
            EditionTests.NewCode, EditionTests.New, Actor.Lead, [Severity.Note], "Invented.", "Invented.", "Nothing.", rules =>
                rules.Pouring.DewMargin.Source, rules => [rules.Pouring.DewMargin]);
        services.AddSingleton(new Editions([known, known with { Edition = EditionTests.Older }, changed]));
        services.AddSingleton<IReadOnlyList<FindingDefinition>>([.. ServiceHost.Findings, added]);
    });

    public ValueTask DisposeAsync() => Service.DisposeAsync();
}
