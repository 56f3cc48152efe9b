using System.Text.Json.Nodes;
using CalcService.Api.Tests.Fixtures;
using static CalcService.Api.Tests.Problems.BadInput;

namespace CalcService.Api.Tests.Problems;

/// <summary>Members that are missing, unknown, doubled or of another type.</summary>
internal static class BadMembers
{
    public static IReadOnlyList<BadInput> Rows { get; } =
    [
        new("no members at all", 422,
            route => BadRequest.Of("{}", "required",
            [.. route.Places.Select(found => found.Place).Where(IsTopRequired).Select(place => place.Pointer).Distinct()])),
        OnRequired("missing member", 422, (body, pointer) => body.Without(pointer).ToJsonString(), "required", renamed: null),
        OnRequired("null for a required member", 422, (body, pointer) => body.With(pointer, null).ToJsonString(), "required",
        renamed: null),
        OnRequired("misspelt member", 400, (body, pointer) => Renamed(body, pointer, name => name + "x"), "unknown-member",
        name => name + "x"),
        OnRequired("member in the wrong case", 400, (body, pointer) => Renamed(body, pointer, Capital), "unknown-member", Capital,
        "did you mean"),
        OnRequired("list for an object", 400, (body, pointer) => body.With(pointer, new JsonArray()).ToJsonString(), "type", renamed: null),
        Added("duplicate member", body => First(body), name => name, "duplicate-member"),
        Added("duplicate member, escaped", body => First(body), name => $"\\u{(int)name[0]:x4}{name[1..]}", "duplicate-member"),
        Added("$type", _ => "$type", name => name, "unknown-member"),
        Added("__proto__", _ => "__proto__", name => name, "unknown-member"),
        Added("empty name", _ => "", name => name, "unknown-member"),
        new("slash and tilde in an unknown name", 400,
        route => BadRequest.Of(Insert(route.Examples[0].Body, "a/b~c"), "unknown-member", "/a~1b~0c")),
        new("half a surrogate pair in a name", 400, route => BadRequest.Of(Insert(route.Examples[0].Body, "\\ud800"), "surrogate", "")),
        At("half a surrogate pair in a name of an object of any members", 400, IsOpen, "{\"a\":{\"\\udc00\":1}}", "surrogate", "/a"),
        At("object for a text", 400, IsText, "{}", "type"),
        At("number for a text", 400, IsText, "7", "type"),
        At("text for a list", 400, IsList, "\"x\"", "type"),
        At("null in a list", 422, place => IsList(place) && place.Value.AsArray().Count > 0,
        place => $"[null,{place.Value.ToJsonString()[1..]}", "required", "/0"),
        Items("300,000 items", _ => 300_000, _ => "{}", code: null, at: null),
        Items("an item more than the most", list => (int)list.Schema["maxItems"]! + 1, list => list.Value[0]!.ToJsonString(),
        "too-many-items", list => list.Pointer),
        At("quantity as a bare number", 400, place => place.IsQuantity, "20", "type"),
        At("quantity as a text", 400, place => place.IsQuantity, "\"20 mm\"", "type"),
        At("unknown member of a quantity", 400, place => place.IsQuantity, """{"value":1,"unit":"mm","kind":"Length"}""", "unknown-member", "/kind"),
        At("unit twice", 400, place => place.IsQuantity, """{"value":1,"unit":"mm","unit":"m"}""", "duplicate-member", "/unit"),
        At("quantity without unit", 422, place => place.IsQuantity, """{"value":1}""", "required", "/unit"),
        At("quantity without value", 422, place => place.IsQuantity, """{"unit":"mm"}""", "required", "/value"),
        At("null as a unit", 422, place => place.IsQuantity, """{"value":1,"unit":null}""", "required", "/unit"),
        At("number as a unit", 400, place => place.IsQuantity, """{"value":1,"unit":1}""", "type", "/unit"),
    ];

    private static bool IsListOfObjects(Place place) => IsList(place) && place.Value.AsArray() is [JsonObject, ..];

    private static bool IsOpen(Place place) => place.IsType("object") && place.Schema["properties"] is null;

    private static bool IsTopRequired(Place place) => place is { IsRequired: true, Pointer.Length: > 0 }
        && place.Pointer.LastIndexOf('/') == 0;

    private static BadInput OnRequired(
        string name, int status, Func<JsonObject, string, string> make, string code, Func<string, string>? renamed, string? says = null) =>
        new(name, status, route =>
        {
            var (example, place) = route.Find(IsRequiredObject)!.Value;
            var pointer = place.Pointer;
            var at = renamed is null ? pointer : pointer[..(pointer.LastIndexOf('/') + 1)] + renamed(Name(pointer));
            return BadRequest.Of(make(example, pointer), code, at) with { Says = says };
        });

    private static BadInput Items(string name, Func<Place, int> count, Func<Place, string> item, string? code, Func<Place, string>? at) =>
        new(name, 422, route => route.Find(IsListOfObjects) is var (example, list)
            ? BadRequest.Of(example.WithRaw(list.Pointer, $"[{string.Join(',', Enumerable.Repeat(item(list), count(list)))}]"), code,
            at is null ? [] : [at(list)])
            : null);

    private static BadInput Added(string name, Func<JsonObject, string> member, Func<string, string> written, string code) =>
        new(name, 400,
        route => BadRequest.Of(Insert(route.Examples[0].Body, written(member(route.Examples[0].Body))), code,
        "/" + member(route.Examples[0].Body)));

    private static string Insert(JsonObject body, string name) => $"{body.ToJsonString()[..^1]},\"{name}\":1}}";

    private static string First(JsonObject body) => body.First().Key;

    private static string Name(string pointer) => pointer[(pointer.LastIndexOf('/') + 1)..];

    private static string Capital(string name) => char.ToUpperInvariant(name[0]) + name[1..];

    private static string Renamed(JsonObject body, string pointer, Func<string, string> rename) =>
        body.Without(pointer).With(pointer[..(pointer.LastIndexOf('/') + 1)] + rename(Name(pointer)), body.At(pointer)!.DeepClone())
        .ToJsonString();
}
