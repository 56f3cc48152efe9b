using System.Globalization;
using System.Text.Json.Nodes;

namespace CalcService.Api.Pages;

/// <summary>Reads and changes requests by JSON Pointer (RFC 6901).</summary>
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
        return owner.AsObject().Remove(last) ? copy : throw new ArgumentException($"Nothing at {pointer}.");
    }

    public static JsonObject Quantity(double value, string unit) => new() { ["value"] = value, ["unit"] = unit };

    private static (JsonNode Owner, string Last) Owner(JsonObject body, string pointer)
    {
        var cut = pointer.LastIndexOf('/');
        return (body.At(pointer[..cut])!, Unescape(pointer[(cut + 1)..]));
    }

    private static IEnumerable<string> Segments(string pointer) => pointer.Split('/').Skip(1).Select(Unescape);

    private static string Unescape(string segment) =>
        segment.Replace("~1", "/", StringComparison.Ordinal).Replace("~0", "~", StringComparison.Ordinal);
}
