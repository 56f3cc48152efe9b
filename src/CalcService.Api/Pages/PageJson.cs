using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace CalcService.Api.Pages;

/// <summary>JSON as a person lays it out: what fits on a line stands on one.</summary>
public static class PageJson
{
    private const int Width = 120;

    private static readonly JsonSerializerOptions Readable = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static string Write(JsonNode? node) => Write(node, indent: 0, taken: 0);

    /// <summary>The whole value on one line.</summary>
    public static string Line(JsonNode? node) => node switch
    {
        JsonObject { Count: > 0 } members =>
            $"{{ {string.Join(", ", members.Select(member => $"\"{member.Key}\": {Line(member.Value)}"))} }}",
        JsonArray { Count: > 0 } items => $"[ {string.Join(", ", items.Select(Line))} ]",
        null => "null",
        _ => node.ToJsonString(Readable),
    };

    /// <param name="node">The value.</param>
    /// <param name="indent">Spaces before its lines.</param>
    /// <param name="taken">Characters that stand before it on its first line.</param>
    private static string Write(JsonNode? node, int indent, int taken)
    {
        var line = Line(node);
        if (taken + line.Length <= Width)
        {
            return line;
        }

        var inner = new string(' ', indent + 2);
        var end = "\n" + new string(' ', indent);
        return node switch
        {
            JsonObject members => $"{{\n{string.Join(",\n", members.Select(member => Member(member, inner)))}{end}}}",
            JsonArray items => $"[\n{string.Join(",\n", items.Select(item => inner + Write(item, indent + 2, indent + 2)))}{end}]",
            _ => line,
        };
    }

    private static string Member(KeyValuePair<string, JsonNode?> member, string inner)
    {
        var name = $"{inner}\"{member.Key}\": ";
        return name + Write(member.Value, inner.Length, name.Length);
    }
}
