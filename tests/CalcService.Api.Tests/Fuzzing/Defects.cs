using System.Text.Json.Nodes;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Fuzzing;

/// <summary>A body with one thing wrong.</summary>
/// <param name="What">What is wrong.</param>
/// <param name="Status">The status that it has to get.</param>
/// <param name="Pointer">Where the refusal points.</param>
/// <param name="Body">Its text.</param>
internal sealed record Defect(string What, int Status, string Pointer, string Body)
{
    private const string Unknown = "zz~unknown/";

    /// <summary>Everything that can be done wrong at one place of a body, by the place's schema.</summary>
    public static IEnumerable<Defect> At(JsonObject body, Place place) =>
        [.. Absent(body, place), .. OfAnotherType(body, place), .. InObject(body, place), .. InText(body, place), .. InNumber(body, place)];

    private static IEnumerable<Defect> Absent(JsonObject body, Place place)
    {
        if (!place.IsRequired || place.Pointer.Length == 0)
        {
            yield break;
        }

        yield return new("null", 422, place.Pointer, body.WithRaw(place.Pointer, "null"));
        if (body.At(place.Pointer[..place.Pointer.LastIndexOf('/')]) is JsonObject)
        {
            yield return new("missing", 422, place.Pointer, body.Without(place.Pointer).ToJsonString());
        }
    }

    private static IEnumerable<Defect> OfAnotherType(JsonObject body, Place place)
    {
        (string Type, string Token)[] tokens = [("object", "{}"), ("array", "[]"), ("string", "\"x\""), ("number", "7.5"),
            ("boolean", "true"), ("boolean", "false")];
        foreach (var (type, token) in tokens.Where(token => !place.IsType(token.Type)
            && !(place.IsType("integer") && token.Type == "number")))
        {
            yield return new($"{type} where none belongs", 400, place.Pointer, place.Pointer.Length == 0 ? token
                : body.WithRaw(place.Pointer, token));
        }
    }

    private static IEnumerable<Defect> InObject(JsonObject body, Place place)
    {
        if (place.Value is not JsonObject { Count: > 0 } members)
        {
            yield break;
        }

        var first = members.First().Key;
        yield return Added("member twice", first, first);
        if (!place.IsOpen)
        {
            yield return Added("unknown member", Unknown, "zz~0unknown~1");
            yield return Added("member in the wrong case", char.ToUpperInvariant(first[0]) + first[1..],
                char.ToUpperInvariant(first[0]) + first[1..]);
        }

        if (place.IsQuantity)
        {
            yield return Changed("no such unit", "unit", "\"furlong\"");
            yield return Changed("unit in another case", "unit", $"\"{Swapped((string)members["unit"]!)}\"");
            yield return Changed("too large a number", "value", "1e400");
            yield return new("without unit", 422, place.Pointer + "/unit", body.Without(place.Pointer + "/unit").ToJsonString());
            yield return new("without value", 422, place.Pointer + "/value", body.Without(place.Pointer + "/value").ToJsonString());
        }

        Defect Added(string what, string name, string segment) => new(what, 400, $"{place.Pointer}/{segment}", place.Pointer.Length == 0
            ? $"{body.ToJsonString()[..^1]},\"{name}\":1}}"
            : body.WithRaw(place.Pointer, $"{members.ToJsonString()[..^1]},\"{name}\":1}}"));

        Defect Changed(string what, string name, string token) =>
            new(what, 422, $"{place.Pointer}/{name}", body.WithRaw($"{place.Pointer}/{name}", token));
    }

    private static IEnumerable<Defect> InText(JsonObject body, Place place)
    {
        if (!place.IsType("string"))
        {
            yield break;
        }

        string[] texts = place.IsEnum ? ["no such word", "", " ", "0"] : (string?)place.Schema["format"] switch
        {
            "date" => ["2026-02-30", "today", "2026-03-12T08:30:00Z", ""],
            "date-time" => ["2026-03-12T08:30:00", "2026-03-12", "24:00", ""],
            _ => ["", " \\t", "a\\u0000b", "a\\u202eb", "<b>", new string('x', 1 + (int?)place.Schema["maxLength"] ?? 0)],
        };
        foreach (var text in texts.Where(text => text.Length != 0 || place.IsEnum || place.Schema["maxLength"] is not null
            || place.Schema["format"] is not null))
        {
            yield return new("text", 422, place.Pointer, body.WithRaw(place.Pointer, $"\"{text}\""));
        }

        yield return new("half a pair of surrogates", 400, place.Pointer, body.WithRaw(place.Pointer, "\"\\ud800\""));
    }

    private static IEnumerable<Defect> InNumber(JsonObject body, Place place)
    {
        if (place.IsType("integer"))
        {
            yield return new("half a number", 422, place.Pointer, body.WithRaw(place.Pointer, "3.5"));
            yield return new("too large for a count", 422, place.Pointer, body.WithRaw(place.Pointer, "2147483648"));
        }

        if (place.Schema["minimum"] is { } least && place.Schema["maximum"] is { } most)
        {
            yield return new("below its range", 422, place.Pointer, body.WithRaw(place.Pointer, $"{(long)least - 1}"));
            yield return new("above its range", 422, place.Pointer, body.WithRaw(place.Pointer, $"{(long)most + 1}"));
        }
    }

    /// <summary>The code with its first letter in the other case; no unit is another one that way, except to be none.</summary>
    private static string Swapped(string unit) =>
        unit.Any(char.IsAsciiLetter)
        ? string.Concat(unit.Select(c => char.IsAsciiLetterUpper(c) ? char.ToLowerInvariant(c) : char.ToUpperInvariant(c))) : unit + unit;
}
