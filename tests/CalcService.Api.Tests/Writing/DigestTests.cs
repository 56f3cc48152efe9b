using System.Security.Cryptography;
using System.Text;
using System.Text.Json.Nodes;
using CalcService.Api.Calculations;
using CalcService.Api.OpenApi;
using CalcService.Api.Tests.Fixtures;
using CalcService.Api.Writing;

namespace CalcService.Api.Tests.Writing;

/// <summary>The digests of result and compound are what docs/records.md says, computed here from the answer alone.</summary>
public sealed class DigestTests(Service service)
{
    [Fact]
    public async Task Digests_of_result_and_compound_can_be_rebuilt_from_the_answer()
    {
        foreach (var example in RequestExamples.Of("pour-plans"))
        {
            var answer = (await service.PostAsync("/v1/pour-plans?detail=full", example.Body)).Json;
            var from = answer["provenance"]!;

            Assert.Equal((string?)from["compound"]!["digest"], Digest(Plain(answer["input"]!["compound"]!["sheet"])));
            Assert.Equal((string?)from["resultDigest"], ResultDigest(answer));
        }
    }

    /// <summary>Every kind of answer and of finding, rebuilt from the answer as it is sent.</summary>
    [Fact]
    public void Digest_of_every_result_can_be_rebuilt_from_what_is_sent()
    {
        var capabilities = service.Capabilities.ToDictionary(capability => "/v1/" + capability.Operation);
        foreach (var operation in OperationExamples.All)
        {
            foreach (var request in operation.Requests)
            {
                var metric = (JsonObject)request.DeepClone();
                metric["units"] = "metric";
                var answer = Answer(capabilities[operation.Path], metric);

                Assert.Equal((string?)answer["provenance"]!["resultDigest"], ResultDigest(answer));
            }
        }
    }

    [Fact]
    public void Digest_of_a_result_does_not_depend_on_the_units_of_the_answer()
    {
        foreach (var capability in service.Capabilities)
        {
            var inch = (JsonObject)OperationExamples.All.Single(operation => operation.Path == "/v1/" + capability.Operation)
                .Good.DeepClone();
            inch["units"] = "inch";
            var metric = (JsonObject)inch.DeepClone();
            metric["units"] = "metric";

            Assert.Equal((string?)Answer(capability, metric)["provenance"]!["resultDigest"],
                (string?)Answer(capability, inch)["provenance"]!["resultDigest"]);
        }
    }

    private static JsonNode Answer(ICapability capability, JsonObject request)
    {
        using var sent =
            ShapeWriter.WriteAnswer(capability.Process(Encoding.UTF8.GetBytes(request.ToJsonString()), full: false,
            TestContext.Current.CancellationToken).Body);
        return JsonNode.Parse(sent.Written.Span)!;
    }

    private static string ResultDigest(JsonNode answer) => Digest(Plain(new JsonObject
    {
        ["assumptions"] = Each(answer["assumptions"], "pointer", "value"),
        ["decision"] = answer["decision"]!.DeepClone(),
        ["findings"] = Each(answer["findings"], "code", "limit", "measured", "pointer", "severity"),
        ["result"] = WithoutWording((string)answer["provenance"]!["operation"]!, answer["result"]!.DeepClone()),
    }));

    /// <summary>As docs/records.md has it: these only word what the other members say, or where it comes from.</summary>
    private static JsonNode WithoutWording(string operation, JsonNode result)
    {
        foreach (var members in result.Walk().Select(place => place.Value).OfType<JsonObject>().ToArray())
        {
            foreach (var name in new[] { "text", "by", "label", "source" })
            {
                members.Remove(name);
            }
        }

        if (operation == "reuse-assessments")
        {
            foreach (var item in result["work"]!.AsArray())
            {
                item!.AsObject().Remove("task");
            }
        }

        if (operation == "record-verifications")
        {
            result.AsObject().Remove("reason");
        }

        return result;
    }

    private static JsonArray Each(JsonNode? items, params string[] members) =>
        [.. items!.AsArray()
        .Select(item => new JsonObject(members.Select(member => KeyValuePair.Create(member, item![member]?.DeepClone()))))];

    /// <summary>Sorted members and no white space; numbers as they are sent, an amount without the zeros that it came with.</summary>
    private static string Plain(JsonNode? node) => node switch
    {
        null => "null",
        JsonObject members =>
        "{" + string.Join(',',
        members.OrderBy(member => member.Key, StringComparer.Ordinal).Select(member => $"\"{member.Key}\":{Plain(member.Value)}")) + "}",
        JsonArray items => "[" + string.Join(',', items.Select(Plain)) + "]",
        JsonValue value when value.TryGetValue<string>(out var text) =>
        "\"" + text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal) + "\"",
        _ when node.ToJsonString() is var number && number.Contains('.', StringComparison.Ordinal)
        && !number.Contains('e', StringComparison.Ordinal) => number.TrimEnd('0').TrimEnd('.'),
        _ => node.ToJsonString(),
    };

    private static string Digest(string canonical) =>
        "sha256:" + Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(canonical)));
}
