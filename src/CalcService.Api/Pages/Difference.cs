using System.Text.Json.Nodes;

namespace CalcService.Api.Pages;

/// <summary>What a request has otherwise than another, in words.</summary>
internal static class Difference
{
    public static IEnumerable<string> Of(JsonNode? good, JsonNode? changed, string pointer = "")
    {
        if (good is JsonObject before && changed is JsonObject after && !IsQuantity(before))
        {
            return before.Select(member => member.Key).Union(after.Select(member => member.Key))
                .SelectMany(name => Member(before, after, name, pointer));
        }

        if (good is JsonArray had && changed is JsonArray has)
        {
            return Enumerable.Range(0, Math.Max(had.Count, has.Count)).SelectMany(i =>
                i >= has.Count ? [LeftOut($"{pointer}/{i}")]
                : i >= had.Count ? [Added($"{pointer}/{i}", has[i])]
                : Of(had[i], has[i], $"{pointer}/{i}"));
        }

        return JsonNode.DeepEquals(good, changed) ? [] : [$"`{pointer}` is {Text(changed)} instead of {Text(good)}"];
    }

    private static IEnumerable<string> Member(JsonObject before, JsonObject after, string name, string pointer) =>
        !after.ContainsKey(name) ? [LeftOut($"{pointer}/{name}")]
        : !before.ContainsKey(name) ? [Added($"{pointer}/{name}", after[name])]
        : Of(before[name], after[name], $"{pointer}/{name}");

    private static string LeftOut(string pointer) => $"`{pointer}` is left out";

    private static string Added(string pointer, JsonNode? value) => $"`{pointer}` is added: {Text(value)}";

    private static bool IsQuantity(JsonObject members) => members.Count == 2 && members.ContainsKey("value") && members.ContainsKey("unit");

    private static string Text(JsonNode? value) =>
        value is JsonObject members && IsQuantity(members) ? $"{members["value"]} {members["unit"]}" : $"`{PageJson.Line(value)}`";
}
