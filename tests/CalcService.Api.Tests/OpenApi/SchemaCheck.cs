using System.Text.Json;
using System.Text.Json.Nodes;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.OpenApi;

/// <summary>The part of JSON Schema 2020-12 that the document uses: type, required, properties, items, enum, oneOf with null.</summary>
internal static class SchemaCheck
{
    public static IReadOnlyList<string> Faults(ServedContract contract, JsonNode schema, JsonNode? value, string pointer = "")
    {
        var mayBeNull = schema["oneOf"]?.AsArray().Any(choice => (string?)choice!["type"] == "null") ?? false;
        var resolved = contract.Resolve(schema).Schema;
        var types = ServedContract.Types(resolved);
        if (value is null)
        {
            return mayBeNull || types.Contains("null") || types.Count == 0 ? [] : [$"{pointer} is null"];
        }

        var type = TypeOf(value);
        if (types.Count > 0 && !types.Contains(type) && !(type == "integer" && types.Contains("number")))
        {
            return [$"{pointer} is {type}, not {string.Join(" or ", types)}"];
        }

        if (resolved["enum"] is JsonArray words && !words.Any(word => JsonNode.DeepEquals(word, value)))
        {
            return [$"{pointer} is {value.ToJsonString()}, none of {words.ToJsonString()}"];
        }

        return value switch
        {
            JsonObject members => [.. Members(contract, resolved, members, pointer)],
            JsonArray items when resolved["items"] is { } item =>
                [.. items.SelectMany((inner, i) => Faults(contract, item, inner, $"{pointer}/{i}"))],
            _ => [],
        };
    }

    private static IEnumerable<string> Members(ServedContract contract, JsonObject schema, JsonObject members, string pointer)
    {
        var missing = (schema["required"]?.AsArray() ?? []).Select(name => (string)name!).Where(name => !members.ContainsKey(name))
            .Select(name => $"{pointer}/{name} is missing");
        // What an answer has beyond its schema is a promise that nobody wrote down.
        var more = schema["properties"] is JsonObject known
            ? members.SelectMany(member => known[member.Key] is { } inner ? Faults(contract, inner, member.Value, $"{pointer}/{member.Key}")
            : [$"{pointer}/{member.Key} is not in the schema"])
            : [];
        return missing.Concat(more);
    }

    private static string TypeOf(JsonNode value) => value.GetValueKind() switch
    {
        JsonValueKind.Object => "object",
        JsonValueKind.Array => "array",
        JsonValueKind.String => "string",
        JsonValueKind.True or JsonValueKind.False => "boolean",
        _ => (double)value == Math.Floor((double)value) ? "integer" : "number",
    };
}
