using System.Security.Cryptography;
using System.Text;
using System.Text.Json.Nodes;
using CalcService.Api.Capabilities.Pouring;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Writing;

/// <summary>The digests of result and compound are what docs/records.md says, computed here from the answer alone.</summary>
public sealed class DigestTests(Service service)
{
    [Fact]
    public async Task Digests_of_result_and_compound_can_be_rebuilt_from_the_answer()
    {
        foreach (var example in PourPlanExamples.All)
        {
            var answer = (await service.PostAsync("/v1/pour-plans?detail=full", example.Body)).Json;
            var from = answer["provenance"]!;

            Assert.Equal((string?)from["compound"]!["digest"], Digest(Plain(answer["input"]!["compound"]!["sheet"])));
            Assert.Equal((string?)from["resultDigest"], Digest(Plain(new JsonObject
            {
                ["assumptions"] = Each(answer["assumptions"], "pointer", "value"),
                ["decision"] = answer["decision"]!.DeepClone(),
                ["findings"] = Each(answer["findings"], "code", "limit", "measured", "pointer", "severity"),
                ["result"] = WithoutWording(answer["result"]!.DeepClone()),
            })));
        }
    }

    /// <summary>As docs/records.md has it: text, by and label only word what the other members say.</summary>
    private static JsonNode WithoutWording(JsonNode node)
    {
        if (node is JsonObject members)
        {
            foreach (var name in new[] { "text", "by", "label" })
            {
                members.Remove(name);
            }
        }

        foreach (var child in node is JsonObject parent ? parent.Select(member => member.Value) : node is JsonArray items ? items : [])
        {
            if (child is not null)
            {
                WithoutWording(child);
            }
        }

        return node;
    }

    private static JsonArray Each(JsonNode? items, params string[] members) =>
        [.. items!.AsArray().Select(item => new JsonObject(members.Select(member => KeyValuePair.Create(member, item![member]?.DeepClone()))))];

    /// <summary>Sorted members and no white space. The numbers of these answers are written alike by JSON writers: plain, or small exponents of which there are none.</summary>
    private static string Plain(JsonNode? node) => node switch
    {
        null => "null",
        JsonObject members => "{" + string.Join(',', members.OrderBy(member => member.Key, StringComparer.Ordinal).Select(member => $"\"{member.Key}\":{Plain(member.Value)}")) + "}",
        JsonArray items => "[" + string.Join(',', items.Select(Plain)) + "]",
        JsonValue value when value.TryGetValue<string>(out var text) => "\"" + text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal) + "\"",
        _ => node.ToJsonString(),
    };

    private static string Digest(string canonical) => "sha256:" + Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(canonical)));
}
