using System.Globalization;
using System.Text.Json.Nodes;
using CalcService.Api.Tests.Fixtures;
using CsCheck;

namespace CalcService.Api.Tests.Fuzzing;

/// <summary>Values that fit a schema of the document, with the part of JSON Schema 2020-12 that it uses.</summary>
internal sealed class SchemaValues(ServedContract contract)
{
    private const int Deepest = 12;

    /// <summary>A quantity may be of any size; those of the trade come up most often.</summary>
    private static readonly Gen<double> Numbers = Gen.Frequency(
        (6, Gen.Double[0.1, 200]),
        (2, Gen.Int[0, 3000].Select(whole => (double)whole)),
        (1, Gen.Double[-1e9, 1e9]),
        (1, Gen.OneOf(0.0, 1.0, -1.0, 1e-300, 1e300, double.Epsilon, double.MaxValue, double.MinValue)));

    private static readonly Gen<string> Words = Gen.Char["abcXYZ019-_. /~\"\\\u00E9\u4E2D"].Array[1, 20]
        .Select(letters => new string(letters)).Where(text => !string.IsNullOrWhiteSpace(text));

    private static readonly Gen<DateTime> Days = Gen.Int[0, 91_000].Select(day => new DateTime(1950, 1, 2).AddDays(day));

    public Gen<JsonNode?> Of(JsonNode schema, int depth = 0)
    {
        var resolved = contract.Resolve(schema).Schema;
        var value = Value(resolved, depth);
        var mayBeNull = schema["oneOf"] is not null || ServedContract.Types(resolved).Contains("null");
        return mayBeNull ? Gen.Frequency((1, Gen.Const((JsonNode?)null)), (3, value)) : value;
    }

    private Gen<JsonNode?> Value(JsonObject schema, int depth)
    {
        if (schema["enum"] is JsonArray words)
        {
            return Choices.OneIn([.. words.Select(word => (string)word!)]).Select(Node);
        }

        return ServedContract.Types(schema).First(type => type != "null") switch
        {
            "object" => Object(schema, depth),
            "array" => Array(schema, depth),
            "integer" =>
            Gen.Int[(int?)schema["minimum"] ?? int.MinValue, (int?)schema["maximum"] ?? int.MaxValue].Select(number => (JsonNode?)number),
            "number" when schema["maximum"] is { } most => Gen.Int[(int)schema["minimum"]!, (int)most].Select(number => (JsonNode?)number),
            "number" => Numbers.Select(number => (JsonNode?)number),
            "string" => (string?)schema["format"] switch
            {
                "date" => Days.Select(day => Node(day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture))),
                "date-time" => Gen.Select(Days, Gen.Int[0, 86_399], Gen.OneOf("Z", "+01:00", "-03:30", "+14:00"), (day, second, offset) =>
                    Node(day.AddSeconds(second).ToString("yyyy-MM-dd'T'HH:mm:ss", CultureInfo.InvariantCulture) + offset)),
                _ => Words.Select(text => Node(schema["maxLength"] is { } most && text.Length > (int)most ? text[..(int)most] : text)),
            },
            var type => throw new InvalidOperationException($"The document has a request member of type {type}."),
        };
    }

    private Gen<JsonNode?> Array(JsonObject schema, int depth) =>
        depth > Deepest ? Gen.Const((JsonNode?)new JsonArray()).Select(Copy)
        // An item is never null, whatever else may be.
        : Of(schema["items"]!, depth + 1).Where(item => item is not null)
        .Array[0, 3].Select(items => (JsonNode?)new JsonArray([.. items.Select(Copy)]));

    private Gen<JsonNode?> Object(JsonObject schema, int depth)
    {
        var required = (schema["required"]?.AsArray() ?? []).Select(name => (string)name!).ToHashSet();
        if (ServedContract.IsOpen(schema))
        {
            return Words.Select(word => (JsonNode?)new JsonObject { ["any"] = word, ["items"] = new JsonArray(1, null, true) });
        }

        var members = schema["properties"]!.AsObject().Where(member => depth <= Deepest || required.Contains(member.Key)).Select(member =>
        {
            var value = Of(member.Value!, depth + 1).Select(made => new Member(member.Key, made));
            return required.Contains(member.Key) ? value.Select(made => (Member?)made) : Choices.Perhaps(value);
        });
        return Choices.Each(members)
            .Select(made =>
            (JsonNode?)new JsonObject(made.OfType<Member>().Select(member => KeyValuePair.Create(member.Name, Copy(member.Value)))));
    }

    private static JsonNode? Node(string text) => JsonValue.Create(text);

    /// <summary>A node has one owner; what a generator made may be used again.</summary>
    private static JsonNode? Copy(JsonNode? node) => node?.DeepClone();

    private sealed record Member(string Name, JsonNode? Value);
}
