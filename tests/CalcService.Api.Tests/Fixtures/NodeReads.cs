using System.Text.Json.Nodes;

namespace CalcService.Api.Tests.Fixtures;

/// <summary>Goes through JSON, and writes what is none.</summary>
public static class NodeReads
{
    /// <summary>The text of the body with a value that needn't be JSON.</summary>
    public static string WithRaw(this JsonObject body, string pointer, string raw) =>
        body.With(pointer, "@raw@").ToJsonString().Replace("\"@raw@\"", raw, StringComparison.Ordinal);

    /// <summary>Every node below this one, with its pointer.</summary>
    public static IEnumerable<(string Pointer, JsonNode? Value)> Walk(this JsonNode? node, string pointer = "")
    {
        var children = node switch
        {
            JsonObject members => members.Select(member => (Pointer: $"{pointer}/{member.Key}", member.Value)),
            JsonArray items => items.Select((item, i) => (Pointer: $"{pointer}/{i}", Value: item)),
            _ => [],
        };
        return children.SelectMany(child => child.Value.Walk(child.Pointer)).Prepend((pointer, node));
    }
}
