using System.Text;
using System.Text.Json;
using System.Text.Unicode;
using CalcService.Api.Capabilities.Pouring;
using CalcService.Api.OpenApi;
using CalcService.Api.Reading;
using CalcService.Api.Tests.Fixtures;
using CsCheck;

namespace CalcService.Api.Tests.Reading;

/// <summary>The verdict of our reader on JSON text against System.Text.Json's own in its strict setting, and against the RFC.</summary>
public sealed class SyntaxTests
{
    private static readonly JsonReaderOptions Strict = new() { MaxDepth = BodyReader.MaxDepth,
        CommentHandling = JsonCommentHandling.Disallow, AllowTrailingCommas = false };

    private static readonly byte[][] Bodies =
    [
        .. RequestExamples.Of("pour-plans").Select(example => Encoding.UTF8.GetBytes(example.Body)),
        .. RequestExamples.Of("pour-plans").Select(example => JsonSerializer.SerializeToUtf8Bytes(JsonDocument.Parse(example.Body))),
        """{"reference":"M\u00fc\ud83d\ude00\\\/\"","ends":[[],{},[{}],null,true,false,-0.5e+10,0],"x":{"":1}}"""u8.ToArray(),
    ];

    /// <summary>Bytes that mean something to a reader of JSON, and some that never do.</summary>
    private static readonly byte[] Alphabet = [.. "{}[]:,\"\\/ \t\r\n0123456789+-.eEuabfnrtlsx'#\0\u001f\u007f"u8, 0x80, 0xBF, 0xC2, 0xE2,
        0xED, 0xF0, 0xFF];

    private static readonly Gen<(int Kind, int At, int Length, byte Byte)> Edit = Gen.Select(Gen.Int[0, 5], Gen.Int[0, int.MaxValue],
        Gen.Int[1, 12], Gen.OneOf(Alphabet));

    [Fact]
    public void Syntax_of_mutated_bodies_is_judged_as_System_Text_Json_judges_it()
    {
        var (valid, invalid) = (0, 0);
        Gen.Select(Gen.OneOf(Bodies), Edit.Array[1, 3]).Sample(
            mutation =>
            {
                var text = mutation.Item2.Aggregate(mutation.Item1, Mutate);
                _ = Theirs(text) ? Interlocked.Increment(ref valid) : Interlocked.Increment(ref invalid);
                return AgreesOn(text);
            },
            iter: 30_000);

        // Mutations that leave the text valid and those that don't have both been met often.
        Assert.True(valid > 1_000 && invalid > 1_000, $"{valid} valid, {invalid} invalid");
    }

    [Fact]
    public void Syntax_of_random_tokens_is_judged_as_System_Text_Json_judges_it() =>
        Gen.OneOf("{", "}", "[", "]", ":", ",", "\"a\"", "\"\\u00e9\"", "1", "-0.5e2", "true", "null", " ", "0", "-", "\"", "e", ".", "\\")
            .Array[0, 14].Sample(tokens => AgreesOn(Encoding.UTF8.GetBytes(string.Concat(tokens))), iter: 30_000);

    [Fact]
    public void Syntax_of_generated_JSON_is_valid() =>
        Value(5).Sample(json => Ours(Encoding.UTF8.GetBytes(json)), iter: 5_000);

    [Fact]
    public void Syntax_of_the_well_known_cases_is_judged_as_the_RFC_has_it() => Assert.All(JsonCases.All, known =>
    {
        var bytes = Encoding.UTF8.GetBytes(known.Text);
        var shown = known.Text.Length > 60 ? known.Text[..60] : known.Text;
        Assert.True(Ours(bytes) == known.IsValid, shown);
        Assert.True(Theirs(bytes) == known.IsValid, shown + " (reference library)");
    });

    [Fact]
    public void Bytes_that_are_no_UTF8_are_unreadable() => Assert.All(JsonCases.NotUtf8, bytes =>
    {
        var read = BodyReader.Read(bytes, ShapeTable.Of<PourPlanRequest>(), Unchecked.Objects);
        Assert.True(Assert.Single(read.Errors) is { Code: "utf8", IsUnreadable: true }, Convert.ToHexString(bytes));
    });

    private static bool AgreesOn(byte[] text) => Ours(text) == Theirs(text);

    private static bool Theirs(byte[] text)
    {
        // The reference looks into texts only when asked for them, so its verdict on UTF-8 is taken apart.
        if (!Utf8.IsValid(text))
        {
            return false;
        }

        try
        {
            var reader = new Utf8JsonReader(text, Strict);
            while (reader.Read())
            {
            }

            return true;
        }
        catch (JsonException)
        {
            return false;
        }
    }

    private static bool Ours(byte[] text) =>
        !BodyReader.Read(text, ShapeTable.Of<PourPlanRequest>(), Unchecked.Objects).Errors.Any(error => error.Code is "syntax" or "utf8");

    private static byte[] Mutate(byte[] body, (int Kind, int At, int Length, byte Byte) edit)
    {
        if (body.Length == 0)
        {
            return [edit.Byte];
        }

        var at = edit.At % body.Length;
        var end = Math.Min(body.Length, at + edit.Length);
        return edit.Kind switch
        {
            0 => [.. body[..at], edit.Byte, .. body[at..]],
            1 => [.. body[..at], edit.Byte, .. body[(at + 1)..]],
            2 => [.. body[..at], .. body[end..]],
            3 => [.. body[..end], .. body[at..]],
            4 => body[..at],
            _ => [.. body[..at], .. body[at..end].Reverse(), .. body[end..]],
        };
    }

    private static Gen<string> Value(int depth)
    {
        var text = Gen.String.Select(value => JsonSerializer.Serialize(value));
        var leaf = Gen.OneOf(text, Gen.Double.Where(double.IsFinite).Select(number => JsonSerializer.Serialize(number)),
            Gen.OneOf("null", "true", "false", "[]", "{}"));
        if (depth == 0)
        {
            return leaf;
        }

        var inner = Value(depth - 1);
        return Gen.OneOf(leaf,
            inner.Array[0, 3].Select(items => $"[ {string.Join(" ,\n", items)}]"),
            Gen.Select(text, inner)
            .Array[0, 3].Select(members => $"{{{string.Join(",", members.Select(member => $"{member.Item1}: {member.Item2}"))} }}"));
    }
}
