using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Writing;

/// <summary>The same question has the same id and the same answer, however it is written.</summary>
public sealed class RecordTests(Service service)
{
    private static readonly string[] Digests = ["recordId", "inputDigest", "resultDigest"];

    [Fact]
    public async Task CanonicalInput_posted_again_is_the_same_record()
    {
        foreach (var example in Capabilities.Pouring.PourPlanExamplesData.Names.Select(row => row.Data))
        {
            var full = await service.AnswerAsync(Plans.Path + "?detail=full", Plans.Example(example));
            var again = await service.AnswerAsync(Plans.Path + "?detail=full", full["input"]!);

            AssertSameRecord(full, again);
            Assert.Equal(full["input"]!.ToJsonString(), again["input"]!.ToJsonString());
        }
    }

    [Fact]
    public async Task InputDigest_and_recordId_are_the_SHA256_of_what_the_contract_says()
    {
        var answer = await service.AnswerAsync(Plans.Path + "?detail=full", Plans.Plan);
        var input = Rewrite(answer["input"]!);
        var provenance = answer["provenance"]!;

        Assert.Equal(Sha256(input), (string?)provenance["inputDigest"]);
        Assert.Equal(Sha256($$"""{"engine":"{{provenance["engine"]}}","input":{{input}},"operation":"pour-plans","rules":"{{provenance["rules"]}}"}"""), (string?)provenance["recordId"]);
    }

    [Fact]
    public async Task CanonicalInput_has_the_sheet_for_the_profile_SI_for_every_unit_and_nothing_that_was_not_said()
    {
        var input = (await service.AnswerAsync(Plans.Path + "?detail=full", Plans.Plan.Without("/allowance")))["input"]!.AsObject();

        Assert.Null(input.At("/compound/profile"));
        Assert.NotNull(input.At("/compound/sheet/kits"));
        Assert.False(input.ContainsKey("units"));
        Assert.False(input.ContainsKey("allowance"));
        Assert.Equal("m", (string?)input.At("/ends/0/rope/diameter/unit"));
        Assert.Equal("0.02", input.At("/ends/0/rope/diameter/value")!.ToJsonString());
        Assert.Equal("281.15", input.At("/conditions/steelTemperature/value")!.ToJsonString());
        Assert.Equal("2026-03-12T08:30:00+01:00", (string?)input["pourAt"]);
    }

    [Fact]
    public async Task Request_in_other_units_order_and_spacing_is_the_same_record()
    {
        var plan = Plans.Plan;
        var rewritten =
            new JsonObject(plan.Reverse().Select(member => KeyValuePair.Create<string, JsonNode?>(member.Key, Reordered(member.Value!))))
            .With("/units", "inch")
            .With("/conditions/airTemperature", NodeEdits.Quantity(48.2, "degF"))
            .With("/conditions/steelTemperature", NodeEdits.Quantity(281.15, "K"))
            .With("/conditions/compoundTemperature", NodeEdits.Quantity(64.4, "degF"))
            .With("/conditions/relativeHumidity", NodeEdits.Quantity(.72, "1"))
            .With("/conditions/room/volume", NodeEdits.Quantity(180_000, "L"))
            .With("/ends/0/rope/diameter", NodeEdits.Quantity(20 / 25.4, "in"))
            .With("/ends/0/socket/basket/smallEndDiameter", NodeEdits.Quantity(23 / 25.4, "in"))
            .With("/ends/0/socket/basket/largeEndDiameter", NodeEdits.Quantity(4.5, "cm"))
            .With("/ends/0/socket/basket/length", NodeEdits.Quantity(100 / 304.8, "ft"))
            .With("/ends/0/socket/basket/tolerance", NodeEdits.Quantity(.5 / 25.4, "in"))
            .With("/crew/pourTime", NodeEdits.Quantity(120, "s"))
            .With("/allowance", NodeEdits.Quantity(.1, "1"));

        var one = await service.AnswerAsync(Plans.Path, plan);
        var reply = await service.PostAsync(Plans.Path, rewritten.ToJsonString(new JsonSerializerOptions { WriteIndented = true }));

        Assert.True(reply.Status == 200, reply.Text);
        AssertSameRecord(one, reply.Json);
        Assert.Equal("in3", (string?)reply.Json.At("/result/ends/0/basketVolume/unit"));
        // NIST SP 811: 1 in³ = 16.387 064 cm³ exactly. 93.960 is half a unit off at most.
        Assert.Equal(93.960, (double)reply.Json.At("/result/ends/0/basketVolume/value")! * 16.387064, .0005);
    }

    [Fact]
    public async Task Profile_and_the_same_sheet_inline_are_the_same_record()
    {
        var byProfile = await service.AnswerAsync(Plans.Path, Plans.Plan);
        var bySheet = await service.AnswerAsync(Plans.Path, await Plans.WithSheetAsync(service));

        AssertSameRecord(byProfile, bySheet);
        Assert.Equal("demonstration", (string?)byProfile.At("/provenance/compound/profile"));
        Assert.Null(bySheet.At("/provenance/compound/profile"));
        Assert.Equal((string?)byProfile.At("/provenance/compound/digest"), (string?)bySheet.At("/provenance/compound/digest"));
        var listed = (await service.GetAsync("/v1/compounds")).Json["compounds"]!.AsArray()
            .Single(entry => (string?)entry!["id"] == "demonstration");
        Assert.Equal((string?)listed!["digest"], (string?)byProfile.At("/provenance/compound/digest"));
    }

    [Theory]
    [InlineData("/conditions/steelTemperature/value", "8.000000001")]
    [InlineData("/ends/0/quantity", "5")]
    [InlineData("/reference", "\"JOB-0418\"")]
    [InlineData("/pourAt", "\"2026-03-12T07:30:00Z\"")]
    [InlineData("/stock/0/lot", "\"A-119\"")]
    [InlineData("/rules", "\"2026-12\"")]
    public async Task Request_that_says_something_else_is_another_record(string pointer, string raw)
    {
        var one = await service.AnswerAsync(Plans.Path, Plans.Plan);
        var other = (await service.PostAsync(Plans.Path, Plans.Plan.WithRaw(pointer, raw))).Json;

        Assert.NotEqual(Plans.Provenance(one, "recordId"), Plans.Provenance(other, "recordId"));
        Assert.NotEqual(Plans.Provenance(one, "inputDigest"), Plans.Provenance(other, "inputDigest"));
    }

    [Fact]
    public async Task ResultDigest_changes_with_the_result_and_not_with_the_reference()
    {
        var one = await service.AnswerAsync(Plans.Path, Plans.Plan);
        var renamed = await service.AnswerAsync(Plans.Path, Plans.Plan.With("/reference", "JOB-9"));
        var longer = await service.AnswerAsync(Plans.Path, Plans.Plan.With("/ends/0/socket/basket/length/value", 101));

        Assert.Equal(Plans.Provenance(one, "resultDigest"), Plans.Provenance(renamed, "resultDigest"));
        Assert.NotEqual(Plans.Provenance(one, "resultDigest"), Plans.Provenance(longer, "resultDigest"));
    }

    [Fact]
    public async Task Digests_have_their_algorithm_before_64_hexadecimal_digits()
    {
        var answer = await service.AnswerAsync(Plans.Path, Plans.Plan);

        Assert.All(Digests, member => Assert.Matches("^sha256:[0-9a-f]{64}$", Plans.Provenance(answer, member)));
        Assert.Matches("^sha256:[0-9a-f]{64}$", (string)answer.At("/provenance/compound/digest")!);
    }

    private static void AssertSameRecord(JsonObject one, JsonObject other) =>
        Assert.All(Digests, member => Assert.Equal(Plans.Provenance(one, member), Plans.Provenance(other, member)));

    private static string Sha256(string text) => "sha256:" + Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)));

    private static JsonNode Reordered(JsonNode node) => node switch
    {
        JsonObject members =>
            new JsonObject(members.Reverse()
            .Select(member => KeyValuePair.Create<string, JsonNode?>(member.Key, Reordered(member.Value!)))),
        JsonArray items => new JsonArray([.. items.Select(item => Reordered(item!))]),
        _ => node.DeepClone(),
    };

    /// <summary>A second writer of RFC 8785, good enough for the plain numbers and texts of the example.</summary>
    private static string Rewrite(JsonNode node) => node switch
    {
        JsonObject members => $"{{{string.Join(',', members.OrderBy(member => member.Key, StringComparer.Ordinal).Select(member => $"\"{member.Key}\":{Rewrite(member.Value!)}"))}}}",
        JsonArray items => $"[{string.Join(',', items.Select(item => Rewrite(item!)))}]",
        JsonValue value when value.GetValueKind() == JsonValueKind.Number => Plain((double)value),
        _ => $"\"{node}\"",
    };

    private static string Plain(double value) => Math.Abs(value) is 0 or (>= 1e-6 and < 1e15)
        ? ((decimal)value).ToString("0.#############################", CultureInfo.InvariantCulture)
        : throw new NotSupportedException("The example holds no such number.");
}
