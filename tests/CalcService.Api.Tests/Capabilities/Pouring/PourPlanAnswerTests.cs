using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Capabilities.Pouring;

/// <summary>What holds for every answer, shown on all examples and some bent ones.</summary>
public sealed class PourPlanAnswerTests(Service service)
{
    private static readonly string[] Severities = ["stop", "unknown", "caution", "note"];
    private static readonly string[] Decisions = ["doNotProceed", "undetermined", "proceedWithCare", "proceed"];
    private static readonly string[] Bases = ["published", "law", "dataSheet", "commonPractice", "fromMemory", "derived"];

    /// <summary>The examples, and plans bent until they raise what the examples don't.</summary>
    private static IReadOnlyList<JsonObject> Requests =>
    [
        .. PourPlanExamplesData.Names.Select(row => Plans.Example(row.Data)),
        Plans.Plan.Without("/conditions").Without("/crew").Without("/allowance").Without("/objective")
        .Without("/ends/0/socket/basket/tolerance"),
        Plans.Plan.With("/ends/0/rope", new JsonObject { ["diameter"] = NodeEdits.Quantity(24, "mm") }),
        Plans.Plan.With("/ends/0/rope/grade", 2160).With("/ends/0/rope/finish", "stainless").With("/ends/0/socket/basket/length/value", 60),
        Plans.Plan.With("/conditions/airTemperature/value", -5).With("/conditions/steelTemperature/value", -8)
        .With("/conditions/compoundTemperature/value", 50),
        Plans.Plan.With("/ends/0/quantity", 200).With("/conditions/room/volume/value", 5).With("/conditions/room/airChanges/value", 0),
        Plans.Plan.With("/stock", new JsonArray(
            new JsonObject { ["lot"] = "A", ["kit"] = "large", ["count"] = 1 },
            new JsonObject { ["lot"] = "B", ["kit"] = "small", ["count"] = 1, ["madeOn"] = "2020-01-31" },
            new JsonObject { ["lot"] = "C", ["kit"] = "small", ["count"] = 1, ["madeOn"] = "2026-01-31", ["expiresOn"] = "2029-01-31" })),
        Plans.Plan.With("/stock", new JsonArray(
            Lot("A", "state", "opened"), Lot("B", "state", "damaged"), Lot("C", "quarantined", "yes"), Lot("D", "reservedFor", "JOB-2"),
            Lot("E", "doseExpiresOn", "2026-01-31"), Lot("F", "hardenerExpiresOn", "2026-01-31"))),
    ];

    [Fact]
    public async Task Pointer_of_a_finding_or_assumption_names_a_member_of_the_request_schema()
    {
        var contract = await ServedContract.ReadAsync(service);
        var schema = contract.Calculations.Single(route => route.Path == Plans.Path).SchemaName;
        var answers = await AnswersAsync();

        var pointers = answers.SelectMany(answer => answer["findings"]!.AsArray()
            .SelectMany(found => found!["related"]!.AsArray().Select(related => (string)related!).Prepend((string)found["pointer"]!))
            .Concat(answer["assumptions"]!.AsArray().Select(assumption => (string)assumption!["pointer"]!))).Distinct().ToArray();

        Assert.True(pointers.Length > 20);
        Assert.All(pointers, pointer => Assert.True(contract.Has(schema, pointer), pointer));
    }

    [Fact]
    public async Task Decision_is_the_worst_severity_one_to_one() => Assert.All(await AnswersAsync(), answer =>
    {
        var worst = answer["findings"]!.AsArray().Select(found => Array.IndexOf(Severities, (string?)found!["severity"])).DefaultIfEmpty(3)
            .Min();
        Assert.Equal(Decisions[worst], (string?)answer["decision"]);
    });

    [Fact]
    public async Task Findings_are_sorted_by_severity_pointer_and_code() => Assert.All(await AnswersAsync(), answer =>
    {
        var keys = answer["findings"]!.AsArray()
            .Select(found => (Array.IndexOf(Severities, (string?)found!["severity"]), (string)found["pointer"]!, (string)found["code"]!))
            .ToArray();
        Assert.Equal(keys.OrderBy(key => key.Item1).ThenBy(key => key.Item2, StringComparer.Ordinal)
            .ThenBy(key => key.Item3, StringComparer.Ordinal), keys);
    });

    [Fact]
    public async Task Finding_says_everything_and_its_code_resolves()
    {
        foreach (var found in (await AnswersAsync()).SelectMany(answer => answer["findings"]!.AsArray())
            .DistinctBy(found => (string?)found!["code"]))
        {
            var code = (string)found!["code"]!;
            var rule = await service.GetAsync("/v1/rules/" + code);

            Assert.True(rule.Status == 200, code);
            Assert.Equal(code, (string?)rule.Json["code"]);
            Assert.Contains((string)found["severity"]!, rule.Json["severities"]!.AsArray().Select(severity => (string)severity!));
            Assert.NotEmpty((string)rule.Json["meaning"]!);
            // A template that was not filled shows its braces or the sign for a word that isn't there.
            Assert.All([(string)found["message"]!, (string)found["action"]!], text => Assert.Matches("^[^{}?]+$", text));
            Assert.Contains((string)found["source"]!["basis"]!, Bases);
            Assert.NotEmpty((string)found["source"]!["document"]!);
        }
    }

    [Fact]
    public async Task Member_of_the_answer_schema_is_written_even_where_it_is_null()
    {
        var contract = await ServedContract.ReadAsync(service);
        foreach (var answer in await AnswersAsync())
        {
            AssertComplete(contract, new JsonObject { ["$ref"] = "#/components/schemas/PourPlanAnswer" }, answer, "");
        }
    }

    [Fact]
    public async Task Number_of_an_answer_has_six_significant_digits_at_most()
    {
        foreach (var answer in (await AnswersAsync()).Append(await service.AnswerAsync(Plans.Path, Plans.Plan.With("/units", "inch"))))
        {
            var quantities = answer.Walk()
                .Where(found => found.Value is JsonObject members && members.ContainsKey("value") && members.ContainsKey("unit")
                && !found.Pointer.StartsWith("/input", StringComparison.Ordinal));
            Assert.All(quantities, found =>
                Assert.True(Digits(found.Value!["value"]!.ToJsonString()) <= 6, $"{found.Pointer}: {found.Value!.ToJsonString()}"));
        }
    }

    [Fact]
    public async Task Trace_is_empty_without_detail_and_says_every_formula_with_it()
    {
        foreach (var request in Requests)
        {
            var (plain, full) = (await service.AnswerAsync(Plans.Path, request),
                await service.AnswerAsync(Plans.Path + "?detail=full", request));

            Assert.Empty(plain["trace"]!.AsArray());
            Assert.Null(plain["input"]);
            Assert.NotEmpty(full["trace"]!.AsArray());
            Assert.NotNull(full["input"]);
            Assert.All(full["trace"]!.AsArray(), step =>
            {
                Assert.Equal(["of", "symbol", "name", "formula", "substituted", "value", "source"],
                    step!.AsObject().Select(member => member.Key));
                Assert.StartsWith((string)step["symbol"]! + " = ", (string)step["formula"]!, StringComparison.Ordinal);
                Assert.NotEmpty((string)step["name"]!);
                Assert.NotEqual((string)step["formula"]!, (string)step["substituted"]!);
                Assert.NotEmpty((string)step["source"]!["document"]!);
                Assert.Contains((string)step["source"]!["basis"]!, Bases);
                Assert.Equal(JsonValueKind.Number, step["value"]!["value"]!.GetValueKind());
            });
            Assert.Equal(Plans.Provenance(plain, "resultDigest"), Plans.Provenance(full, "resultDigest"));
        }
    }

    [Fact]
    public async Task Trace_of_the_basket_volume_can_be_followed_by_hand()
    {
        var full = await service.AnswerAsync(Plans.Path + "?detail=full", Plans.Plan);
        var step = full["trace"]!.AsArray().First(found => (string?)found!["name"] == "volume of the basket")!;

        Assert.Equal("A", (string?)step["of"]);
        Assert.Equal("V = π·L/12·(D² + D·d + d²)", (string?)step["formula"]);
        Assert.Equal("π·(100 mm)/12·((45 mm)² + (45 mm)·(23 mm) + (23 mm)²)", (string?)step["substituted"]);
        Assert.Equal(93.9598, (double)step["value"]!["value"]!, 1e-9);
    }

    [Fact]
    public async Task Units_of_the_answer_change_no_digest_and_no_finding()
    {
        foreach (var request in Requests)
        {
            var metric = await service.AnswerAsync(Plans.Path, request.With("/units", "metric"));
            var inch = await service.AnswerAsync(Plans.Path, request.With("/units", "inch"));

            Assert.All(["recordId", "inputDigest", "resultDigest"],
                member => Assert.Equal(Plans.Provenance(metric, member), Plans.Provenance(inch, member)));
            Assert.Equal((string?)metric["decision"], (string?)inch["decision"]);
            Assert.Equal(Plans.Codes(metric), Plans.Codes(inch));
            Assert.DoesNotContain("\"mm\"", inch["result"]!.ToJsonString(), StringComparison.Ordinal);
            Assert.DoesNotContain("degC", inch.ToJsonString(), StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Answer_says_not_to_keep_it_who_traced_it_and_what_made_it()
    {
        var reply = await service.PostAsync(Plans.Path, Plans.Plan);

        Assert.True(reply.Headers.CacheControl!.NoStore);
        Assert.Matches("^[0-9a-f]{32}$", Assert.Single(reply.Headers.GetValues("Trace-Id")));
        Assert.Equal("application/json", reply.MediaType);
        var provenance = reply.Json["provenance"]!;
        Assert.Equal(
            ["recordId", "operation", "contract", "rules", "language", "engine", "compound", "inputDigest", "resultDigest", "computedAt"],
            provenance.AsObject().Select(member => member.Key));
        Assert.Equal("pour-plans", (string?)provenance["operation"]);
        Assert.Equal("0.9", (string?)provenance["contract"]);
        Assert.Equal("2026-12", (string?)provenance["rules"]);
        // No trace id in the body: the same question twice is the same bytes but for the time.
        Assert.DoesNotContain("traceId", reply.Text, StringComparison.Ordinal);
        var again = (await service.PostAsync(Plans.Path, Plans.Plan)).Json.Without("/provenance/computedAt");
        Assert.Equal(reply.Json.Without("/provenance/computedAt").ToJsonString(), again.ToJsonString());
    }

    [Fact]
    public async Task Answer_from_the_demonstration_says_so_and_always_says_the_cautions() => Assert.All(await AnswersAsync(), answer =>
    {
        Assert.Equal("caution", (string?)Plans.Find(answer, "compound-demonstration")["severity"]);
        Assert.True(answer["safetyNotes"]!.AsArray().Count >= 5);
    });

    private static JsonObject Lot(string lot, string member, string value) =>
        new() { ["lot"] = lot, ["kit"] = "small", ["count"] = 1, ["expiresOn"] = "2027-01-31", [member] = value };

    private async Task<List<JsonObject>> AnswersAsync()
    {
        var answers = new List<JsonObject>();
        foreach (var request in Requests)
        {
            answers.Add(await service.AnswerAsync(Plans.Path, request));
        }

        return answers;
    }

    private static void AssertComplete(ServedContract contract, JsonNode schema, JsonNode? value, string pointer)
    {
        var resolved = contract.Resolve(schema).Schema;
        if (value is JsonObject members && resolved["properties"] is JsonObject known)
        {
            Assert.True(known.All(property => members.ContainsKey(property.Key)), $"{pointer} lacks "
                + $"{string.Join(", ", known.Select(property => property.Key).Except(members.Select(member => member.Key)))}.");
            foreach (var (name, inner) in members)
            {
                AssertComplete(contract, known[name]!, inner, $"{pointer}/{name}");
            }
        }
        else if (value is JsonArray items)
        {
            for (var i = 0; i < items.Count; i++)
            {
                AssertComplete(contract, resolved["items"]!, items[i], $"{pointer}/{i}");
            }
        }
    }

    private static int Digits(string number) =>
        decimal.Parse(number, NumberStyles.Float, CultureInfo.InvariantCulture).ToString(CultureInfo.InvariantCulture)
            .Replace("-", "", StringComparison.Ordinal).Replace(".", "", StringComparison.Ordinal).Trim('0').Length;
}
