using System.Text;
using System.Text.Json.Nodes;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Problems;

/// <summary>A row of the bad inputs: what to send to a calculation, a sheet or a batch, made out of its own example.</summary>
/// <param name="Name">What is wrong.</param>
/// <param name="Status">The status that it has to get.</param>
/// <param name="Make">The request; null where the calculation has no member of that kind.</param>
public sealed record BadInput(string Name, int Status, Func<CalculationRoute, BadRequest?> Make)
{
    public static IReadOnlyDictionary<string, BadInput> All { get; } =
        new[] { BadSyntax.Rows, BadMembers.Rows, BadNumbers.Rows, BadWords.Rows, BadPairs.Rows, BadTransport.Rows }
            .SelectMany(rows => rows).ToDictionary(row => row.Name, StringComparer.Ordinal);

    /// <summary>
    /// Whether it is about the request as a whole, so that a batch is refused as such. Else it is about a body, which can be a line of a
    /// batch.
    /// </summary>
    public bool IsWhole { get; init; }

    /// <summary>Why it can't be a line of a batch.</summary>
    public string? NoLine { get; init; }

    /// <summary>A body as text, made of the example.</summary>
    public static BadInput Text(string name, int status, Func<JsonObject, string> make, string? code = null) =>
        new(name, status, route => BadRequest.Of(make(route.Examples[0].Body), code));

    /// <summary>A raw token in place of the value at the first place of a kind.</summary>
    public static BadInput At(string name, int status, Func<Place, bool> kind, string raw, string? code, string below = "") =>
        At(name, status, kind, _ => raw, code, below);

    /// <summary>A raw token, made of the value, in place of the value at the first place of a kind.</summary>
    public static BadInput At(string name, int status, Func<Place, bool> kind, Func<Place, string> raw, string? code, string below = "") =>
        new(name, status, route => route.Find(kind) is var (example, place)
            ? BadRequest.Of(example.WithRaw(place.Pointer, raw(place)), code, place.Pointer + below)
            : null);

    public static bool IsSize(Place place) => place is { Name: "Length", IsRequired: true } && (double)place.Value["value"]! > 0;

    public static bool IsTemperature(Place place) => place.Name == "Temperature";

    public static bool IsInteger(Place place) => place.IsType("integer");

    public static bool IsWord(Place place) => place.IsEnum;

    public static bool IsText(Place place) => place.IsText(null);

    public static bool IsDate(Place place) => place.IsText("date");

    public static bool IsInstant(Place place) => place.IsText("date-time");

    public static bool IsRequiredObject(Place place) => place is { IsRequired: true, Pointer.Length: > 0 } && place.IsType("object");

    public static bool IsList(Place place) => place.IsType("array");

    public static byte[] Bytes(JsonObject body) => Encoding.UTF8.GetBytes(body.ToJsonString());
}
