using System.Text.Json.Nodes;
using CalcService.Api.Tests.Fixtures;
using static CalcService.Api.Tests.Problems.BadInput;

namespace CalcService.Api.Tests.Problems;

/// <summary>Values that each could be, but not with another: the refusal points to both.</summary>
internal static class BadPairs
{
    /// <summary>The sheet that ships with the service.</summary>
    private static readonly JsonNode Sheet = ReadSheet();

    public static IReadOnlyList<BadInput> Rows { get; } =
    [
        // Nothing contradicts it, but nobody has such a rope: metres for millimetres.
        At("rope of 38.5 m diameter", 422, place => place.Pointer.EndsWith("/rope/diameter", StringComparison.Ordinal), """{"value":38.5,"unit":"m"}""", "range"),
        Pair("small end larger than the mouth", IsBasket, ("/smallEndDiameter", NodeEdits.Quantity(45.5, "mm")),
        ("/largeEndDiameter", NodeEdits.Quantity(45, "mm"))),
        Pair("lot that ran out before it was made", IsLot, ("/expiresOn", "2026-01-31"), ("/madeOn", "2026-02-01")),
        Pair("forecast whose times go back", IsForecast, ("/0/at", "2026-03-12T20:00:00+01:00"), ("/1/at", "2026-03-12T08:00:00+01:00")),
        Pair("forecast with a time twice", IsForecast, ("/0/at", "2026-03-12T08:00:00+01:00"), ("/1/at", "2026-03-12T07:00:00Z")),
        Pair("compound by name and by sheet", IsCompound, ("/profile", "demonstration"), ("/sheet", Sheet)),
        Pair("doses that do not cover the pouring range", IsCompound,
            ("", new JsonObject { ["sheet"] = Sheet.DeepClone() }), ("/sheet/doses/0/from", NodeEdits.Quantity(2, "degC")),
            ("/sheet/pouring/minimum", NodeEdits.Quantity(1, "degC"))),
    ];

    private static bool IsBasket(Place place) => Has(place, "smallEndDiameter") && Has(place, "largeEndDiameter");

    private static bool IsLot(Place place) => Has(place, "madeOn") && Has(place, "expiresOn");

    private static bool IsForecast(Place place) => place.Pointer.EndsWith("/air/series", StringComparison.Ordinal);

    private static bool IsCompound(Place place) => Has(place, "profile") && Has(place, "sheet");

    private static bool Has(Place place, string member) => place.Schema["properties"]?[member] is not null;

    /// <summary>Sets members below a place; the last two rule each other out.</summary>
    private static BadInput Pair(string name, Func<Place, bool> kind, params (string Below, JsonNode Value)[] members) =>
        new(name, 422, route => route.Find(kind) is var (example, place)
        ? BadRequest.Of(
            members.Aggregate(example, (body, member) => body.With(place.Pointer + member.Below, member.Value.DeepClone())).ToJsonString(),
            "contradiction", [.. members[^2..].Select(member => place.Pointer + member.Below)])
        : null);

    private static JsonNode ReadSheet()
    {
        using var sheet = typeof(Program).Assembly.GetManifestResourceStream("CalcService.Api.Compounds.demonstration.json")!;
        return JsonNode.Parse(sheet)!;
    }
}
