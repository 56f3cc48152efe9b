using System.Text;
using static CalcService.Api.Tests.Problems.BadInput;

namespace CalcService.Api.Tests.Problems;

/// <summary>Bodies that are no JSON text, or not an object.</summary>
internal static class BadSyntax
{
    private const string BlankLine = "Blank lines are left out.";
    private const string LineFeed = "A line feed makes it two lines.";

    public static IReadOnlyList<BadInput> Rows { get; } =
    [
        Text("empty body", 400, _ => "", "syntax") with { NoLine = BlankLine },
        Text("white space only", 400, _ => " \r\n\t", "syntax") with { NoLine = BlankLine },
        Text("null", 400, _ => "null", "type"),
        Text("list", 400, _ => "[]", "type"),
        Text("text", 400, _ => "\"x\"", "type"),
        Text("number", 400, _ => "1", "type"),
        Text("true", 400, _ => "true", "type"),
        Text("trailing comma", 400, body => body.ToJsonString()[..^1] + ",}", "syntax"),
        Text("trailing comma in a list", 400, body => body.ToJsonString().Replace("]", ",]", StringComparison.Ordinal), "syntax"),
        Text("line comment", 400, body => body.ToJsonString() + "// plan", "syntax"),
        Text("line comment before", 400, body => "// plan\n" + body.ToJsonString(), "syntax") with { NoLine = LineFeed },
        Text("block comment", 400, body => body.ToJsonString()[..^1] + "/* plan */}", "syntax"),
        Text("second document", 400, body => body.ToJsonString() + body.ToJsonString(), "syntax"),
        Text("single quotes", 400, body => body.ToJsonString().Replace('"', '\''), "syntax"),
        Text("name without quotes", 400, _ => "{pourAt:1}", "syntax"),
        Text("name without value", 400, _ => "{\"pourAt\"}", "syntax"),
        Text("truncated after a comma", 400, body => body.ToJsonString()[..(body.ToJsonString().LastIndexOf(',') + 1)], "syntax"),
        Text("truncated by one byte", 400, body => body.ToJsonString()[..^1], "syntax"),
        Text("truncated in the middle", 400, body => body.ToJsonString()[..(body.ToJsonString().Length / 2)], "syntax"),
        Text("control character in a text", 400, body => body.ToJsonString().Replace(":\"", ":\"\t", StringComparison.Ordinal), "syntax"),
        Text("line feed in a text", 400, body => body.ToJsonString().Replace(":\"", ":\"\n", StringComparison.Ordinal),
        "syntax") with { NoLine = LineFeed },
        Text("unknown escape", 400, _ => "{\"reference\":\"\\x41\"}", "syntax"),
        Text("half an escape", 400, _ => "{\"reference\":\"\\u00\"}", "syntax"),
        Text("depth 17", 400, body => body.ToJsonString()[..^1] + $",\"x\":{new string('[', 16)}{new string(']', 16)}}}", "syntax"),
        Text("100,000 open lists", 400, _ => new string('[', 100_000), "syntax"),
        Text("100,000 open objects", 400, _ => string.Concat(Enumerable.Repeat("{\"a\":", 100_000)), "syntax"),
        Of("byte order mark", [0xEF, 0xBB, 0xBF]),
        Of("byte that starts nothing", [0xFF]),
        Of("overlong slash", [0xC0, 0xAF]),
        Of("surrogate in UTF-8", [0xED, 0xA0, 0x80]),
        Of("above U+10FFFF", [0xF4, 0x90, 0x80, 0x80]),
        new("UTF-16 without saying so", 400, route => new() { Body = Encoding.Unicode.GetBytes(route.Examples[0].Body.ToJsonString()) }),
        new("Latin-1 without saying so", 400,
        _ => new() { Body = Encoding.Latin1.GetBytes("{\"reference\":\"Muffe \u00FC\"}"), Code = "utf8", Pointers = [""] }),
    ];

    /// <summary>Bytes before an otherwise good body.</summary>
    private static BadInput Of(string name, byte[] bytes) =>
        new(name, 400, route => new() { Body = [.. bytes, .. Bytes(route.Examples[0].Body)] });
}
