using System.Text.Json.Nodes;
using CalcService.Api.Pages;
using CalcService.Engine.Findings;
using static CalcService.Api.Pages.NodeEdits;

namespace CalcService.Api.Capabilities.Curing.Findings;

/// <summary>What a gel that somebody saw raises.</summary>
internal static class ObservedExamples
{
    public static IReadOnlyList<FindingExample> All { get; } =
    [
        new("gel-out-of-family", Severity.Caution, "/observations/0/gelAt", Seen("09:10", "cone")),
        new("gel-seen-in-cup", Severity.Caution, "/observations/0/seenIn", Seen("08:45", "cup")),
        new("gel-place-unknown", Severity.Caution, "/observations/0/seenIn", Seen("08:54", "unknown")),
    ];

    private static Func<JsonObject, JsonObject> Seen(string clock, string place) => cure => cure.With("/observations", new JsonArray(
        new JsonObject { ["end"] = "A", ["gelAt"] = $"2026-03-12T{clock}:00+01:00", ["seenIn"] = place }));
}
