using System.Globalization;
using System.Text.Json.Nodes;

namespace CalcService.Api.Tests.Fixtures;

/// <summary>Reads and edits JSON by JSON Pointer (RFC 6901).</summary>
public static class NodeEdits
{
    public static JsonNode? At(this JsonNode node, string pointer)
    {
        JsonNode? found = node;
        foreach (var segment in Segments(pointer))
        {
            found = found switch
            {
                JsonObject members => members[segment],
                JsonArray items => items[int.Parse(segment, CultureInfo.InvariantCulture)],
                _ => throw new ArgumentException($"Nothing at {pointer}."),
            };
        }

        return found;
    }

    /// <summary>A copy with another value; a member that isn't there is added.</summary>
    public static JsonObject With(this JsonObject body, string pointer, JsonNode? value)
    {
        var copy = body.DeepClone().AsObject();
        var (owner, last) = Owner(copy, pointer);
        if (owner is JsonArray items)
        {
            items[int.Parse(last, CultureInfo.InvariantCulture)] = value;
        }
        else
        {
            owner.AsObject()[last] = value;
        }

        return copy;
    }

    /// <summary>A copy without a member.</summary>
    public static JsonObject Without(this JsonObject body, string pointer)
    {
        var copy = body.DeepClone().AsObject();
        var (owner, last) = Owner(copy, pointer);
        Assert.True(owner.AsObject().Remove(last), $"Nothing at {pointer}.");
        return copy;
    }

    /// <summary>The text of the body with a value that needn't be JSON.</summary>
    public static string WithRaw(this JsonObject body, string pointer, string raw) =>
        body.With(pointer, "@raw@").ToJsonString().Replace("\"@raw@\"", raw, StringComparison.Ordinal);

    public static JsonObject Quantity(double value, string unit) => new() { ["value"] = value, ["unit"] = unit };

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

    private static (JsonNode Owner, string Last) Owner(JsonObject body, string pointer)
    {
        var cut = pointer.LastIndexOf('/');
        return (body.At(pointer[..cut])!, Unescape(pointer[(cut + 1)..]));
    }

    private static IEnumerable<string> Segments(string pointer) => pointer.Split('/').Skip(1).Select(Unescape);

    private static string Unescape(string segment) =>
        segment.Replace("~1", "/", StringComparison.Ordinal).Replace("~0", "~", StringComparison.Ordinal);
}
