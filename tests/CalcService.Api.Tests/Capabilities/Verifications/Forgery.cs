using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace CalcService.Api.Tests.Capabilities.Verifications;

/// <summary>What somebody may do to a place of an archived answer.</summary>
public enum Trick
{
    /// <summary>Another value: two units of a number's last digit, two minutes of a time, other words.</summary>
    Change,
    Remove,
    MakeNull,
    AddMember,
    AddItem,
    RemoveItem,
}

/// <summary>A forged answer.</summary>
/// <param name="Trick">What was done.</param>
/// <param name="Pointer">Where.</param>
/// <param name="Answer">What came of it.</param>
internal sealed record Forgery(Trick Trick, string Pointer, JsonObject Answer)
{
    private const string Invented = "approvedBy";

    /// <summary>Whether the trick may be worth trying on a value.</summary>
    public static bool CanBe(JsonNode? value, Trick trick) => trick switch
    {
        Trick.AddMember => value is JsonObject,
        Trick.AddItem => value is JsonArray,
        Trick.RemoveItem => value is JsonArray { Count: > 0 },
        Trick.Change => value is JsonValue or null,
        _ => true,
    };

    /// <summary>The trick at a place; null where it can't be done there.</summary>
    public static Forgery? Of(JsonObject answer, string pointer, Trick trick)
    {
        if (pointer.Length == 0)
        {
            return trick == Trick.AddMember ? new(trick, pointer, answer.With("/" + Invented, "the foreman")) : null;
        }

        var value = answer.At(pointer);
        var isItem = int.TryParse(pointer[(pointer.LastIndexOf('/') + 1)..], CultureInfo.InvariantCulture, out _);
        var forged = (trick, value) switch
        {
            (Trick.Change, null) => answer.With(pointer, "x"),
            (Trick.Change, JsonValue leaf) => answer.With(pointer, Other(leaf, pointer)),
            (Trick.Remove, _) when !isItem => answer.Without(pointer),
            (Trick.MakeNull, not null) => answer.With(pointer, null),
            (Trick.AddMember, JsonObject) => answer.With($"{pointer}/{Invented}", "the foreman"),
            (Trick.AddItem, JsonArray list) => answer.With(pointer, Copy(list.Append(list.Count > 0 ? list[0] : "x"))),
            (Trick.RemoveItem, JsonArray { Count: > 0 } list) => answer.With(pointer, Copy(list.Skip(1))),
            _ => null,
        };
        return forged is null ? null : new(trick, pointer, forged);
    }

    /// <summary>Where an added member stands.</summary>
    public string Added => $"/answer{Pointer}/{Invented}";

    private static JsonArray Copy(IEnumerable<JsonNode?> items) => new([.. items.Select(item => item?.DeepClone())]);

    private static JsonNode Other(JsonValue leaf, string pointer) => leaf.GetValueKind() switch
    {
        JsonValueKind.Number => Other((double)leaf),
        JsonValueKind.String => Other((string)leaf!, pointer),
        JsonValueKind.True => false,
        _ => true,
    };

    private static double Other(double number) =>
        number == 0 ? 1e-9 : number + (2 * Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(number))) - 5));

    private static string Other(string text, string pointer)
    {
        if (pointer.EndsWith("/message", StringComparison.Ordinal) || pointer.EndsWith("/action", StringComparison.Ordinal))
        {
            return "OK to pour";
        }

        return text.Contains('T', StringComparison.Ordinal) && DateTimeOffset.TryParse(text, CultureInfo.InvariantCulture, out var time)
            ? time.AddMinutes(2).ToString("yyyy-MM-dd'T'HH:mm:sszzz", CultureInfo.InvariantCulture) : text + "x";
    }
}
