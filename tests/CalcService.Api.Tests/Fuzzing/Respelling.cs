using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using CsCheck;

namespace CalcService.Api.Tests.Fuzzing;

/// <summary>
/// The same JSON value written in other ways: RFC 8259 leaves space, order of members, escapes and the form of numbers free.
/// </summary>
internal static class Respelling
{
    private static readonly Gen<string> Space = Gen.OneOf("", "", "", " ", "\n", "\r\n\t", "    ");

    public static Gen<string> Of(JsonNode? node) => node switch
    {
        null => Gen.Const("null"),
        JsonObject members =>
        Choices.Each(members.Select(member =>
        Gen.Select(Text(member.Key), Space, Of(member.Value), (name, space, value) => $"{name}{space}:{space}{value}")))
            .SelectMany(written => Gen.Shuffle(written)).SelectMany(written => Between(written, '{', '}')),
        JsonArray items => Choices.Each(items.Select(Of)).SelectMany(written => Between(written, '[', ']')),
        _ when node.GetValueKind() == JsonValueKind.String => Text((string)node!),
        _ when node.GetValueKind() == JsonValueKind.Number => Number(node.ToJsonString()),
        _ => Gen.Const(node.ToJsonString()),
    };

    private static Gen<string> Between(string[] items, char open, char close) =>
        Space.Array[items.Length + 1].Select(spaces =>
        open + string.Join(',', items.Select((item, i) => spaces[i] + item)) + spaces[^1] + close);

    /// <summary>Any character may be an escape, in either case of its digits.</summary>
    private static Gen<string> Text(string text) =>
        Gen.Int[0, 9].Array[text.Length].Select(choices => '"' + string.Concat(text.Select((c, i) => choices[i] switch
    {
        0 => string.Create(CultureInfo.InvariantCulture, $"\\u{(int)c:x4}"),
        1 => string.Create(CultureInfo.InvariantCulture, $"\\u{(int)c:X4}"),
        2 when c == '/' => "\\/",
        _ => c is '"' or '\\' ? "\\" + c : c.ToString(),
    })) + '"');

    private static Gen<string> Number(string number) => Gen.Int[0, 4].Select(choice => choice switch
    {
        0 when !number.Contains('E', StringComparison.OrdinalIgnoreCase) => number + "e0",
        1 when !number.Contains('E', StringComparison.OrdinalIgnoreCase) => number + "E+00",
        2 when !number.Contains('E', StringComparison.OrdinalIgnoreCase) => number.Contains('.', StringComparison.Ordinal) ? number + "000"
        : number + ".0",
        3 when number != "0" && !number.AsSpan().ContainsAny(".Ee") => number + "0e-1",
        _ => number,
    });
}
