using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Catalogues;

public sealed class CatalogueTests(Service service)
{
    public static TheoryData<string> Paths =>
        ["/v1/rules", "/v1/rules/lot-expired", "/v1/rule-sets", "/v1/compounds", "/v1/rope-classes", "/v1/units", "/v1/build"];

    [Theory]
    [MemberData(nameof(Paths))]
    public async Task Catalogue_that_the_client_has_already_is_304_without_a_body(string path)
    {
        var first = await service.GetAsync(path);
        var tag = first.Headers.ETag!.Tag;

        Assert.Equal(200, first.Status);
        Assert.Equal("application/json", first.MediaType);
        Assert.Matches("^\"[!#-~]+\"$", tag);
        foreach (var known in new[] { tag, $"\"other\", {tag}", "*", "W/" + tag })
        {
            var again = await service.GetAsync(path, ("If-None-Match", known));
            Assert.Equal(304, again.Status);
            Assert.Empty(again.Text);
            Assert.Equal(tag, again.Headers.ETag!.Tag);
        }

        Assert.Equal(first.Text, (await service.GetAsync(path, ("If-None-Match", "\"other\""))).Text);
    }

    [Fact]
    public async Task Catalogues_have_each_their_own_tag()
    {
        var tags = new List<string>();
        foreach (var path in Paths)
        {
            tags.Add((await service.GetAsync(path.Data)).Headers.ETag!.Tag);
        }

        Assert.Equal(tags.Count, tags.Distinct().Count());
    }

    [Fact]
    public async Task Rule_in_the_list_is_the_rule_at_its_own_address_in_order()
    {
        var rules = (await service.GetAsync("/v1/rules")).Json["rules"]!.AsArray();
        var codes = rules.Select(rule => (string)rule!["code"]!).ToArray();

        Assert.Equal(codes.Distinct().Order(StringComparer.Ordinal), codes);
        foreach (var rule in rules)
        {
            Assert.Equal(rule!.ToJsonString(), (await service.GetAsync($"/v1/rules/{rule["code"]}")).Json.ToJsonString());
        }
    }

    [Fact]
    public async Task Units_have_the_codes_of_the_contract_and_say_SI_metric_and_inch_of_every_kind()
    {
        var kinds = (await service.GetAsync("/v1/units")).Json["kinds"]!.AsArray();
        var codes = kinds.SelectMany(kind => kind!["units"]!.AsArray()).Select(unit => (string)unit!["code"]!).ToHashSet();

        Assert.Superset(new HashSet<string>
        {
            "mm", "cm", "m", "in", "ft", "mm2", "in2", "mL", "L", "cm3", "m3", "in3", "ft3", "N", "kN", "lbf", "kgf", "MPa", "N/mm2", "psi",
                "degC", "degF", "K",
            "s", "min", "h", "d", "mo", "%", "1", "ppm", "mg/m3", "deg", "g/mL", "kg/m3", "kg/m", "W/(m.K)", "J/(kg.K)", "kJ/kg", "kJ/mol",
            "1/h",
        }, codes);
        Assert.All(kinds, kind => Assert.All(["si", "metric", "inch"], system =>
            Assert.Contains(kind!["units"]!.AsArray(), unit => (string?)unit!["code"] == (string?)kind[system])));
    }

    [Fact]
    public async Task RuleSets_have_one_current_edition_that_requests_can_name()
    {
        var sets = (await service.GetAsync("/v1/rule-sets")).Json["ruleSets"]!.AsArray();
        var current = Assert.Single(sets.Where(set => (bool)set!["current"]!).Select(set => (string)set!["edition"]!).Distinct());

        var answer = await service.AnswerAsync(Plans.Path, Plans.Plan.With("/rules", current));
        Assert.Equal(current, Plans.Provenance(answer, "rules"));
        Assert.Equal(current, (string?)(await service.GetAsync("/v1/build")).Json["rules"]);
        Assert.All(sets, set => Assert.Matches("^sha256:[0-9a-f]{64}$", (string)set!["digest"]!));
    }

    [Fact]
    public async Task Build_tells_the_limits_of_the_contract()
    {
        var limits = (await service.GetAsync("/v1/build")).Json["limits"]!;

        Assert.Equal(
            (1 << 20, 4 << 20, 64 << 10, 1_000_000, 8 << 20, 16, 1_000, 128),
            ((int)limits["bodyBytes"]!, (int)limits["verificationBytes"]!, (int)limits["lineBytes"]!, (int)limits["batchLines"]!,
            (int)limits["bufferedBatchBytes"]!, (int)limits["depth"]!,
                (int)limits["baskets"]!, (int)limits["textLength"]!));
    }

    [Fact]
    public async Task RopeClass_of_the_catalogue_is_estimated_by_a_plan_with_its_factors()
    {
        foreach (var rope in (await service.GetAsync("/v1/rope-classes")).Json["ropeClasses"]!.AsArray())
        {
            var answer = await service.AnswerAsync(Plans.Path,
                Plans.Plan.With("/ends/0/rope/construction", (string)rope!["construction"]!));
            // A = C·d², F = d²·R·K/1000 (EN 12385) with d = 20 mm and R = 1770 N/mm².
            Assert.Equal(400 * (double)rope["iwrc"]!["areaFactor"]!, (double)answer.At("/result/ends/0/rope/metallicArea/value")!, 1e-3);
            Assert.Equal(400 * 1.77 * (double)rope["iwrc"]!["breakingForceFactor"]!,
                (double)answer.At("/result/ends/0/rope/breakingForce/value")!, 1e-3);
            Assert.Equal((int)rope["iwrc"]!["wireCount"]!, (int)answer.At("/result/ends/0/rope/wireCount")!);
        }
    }
}
