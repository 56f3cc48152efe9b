using System.Text.Json.Nodes;
using CalcService.Api.Pages;
using CalcService.Engine.Findings;
using static CalcService.Api.Capabilities.Curing.Findings.CureExamples;
using static CalcService.Api.Pages.NodeEdits;

namespace CalcService.Api.Capabilities.Curing.Findings;

/// <summary>What the shop's tasks raise.</summary>
internal static class ShopExamples
{
    public static IReadOnlyList<FindingExample> All { get; } =
    [
        new("shop-does-not-finish", Severity.Unknown, "/shop/shifts", Shop),
        new("mix-and-pour-time-unknown", Severity.Unknown, "/pourTime", cure => Shop(cure).Without("/pourTime").Without(Sheet + "/mixing")),
    ];

    /// <summary>Two hours for what takes longer.</summary>
    private static JsonObject Shop(JsonObject cure) => cure.With("/shop", new JsonObject
    {
        ["shifts"] = new JsonArray(new JsonObject { ["from"] = "2026-03-12T08:30:00+01:00", ["to"] = "2026-03-12T10:30:00+01:00" }),
        ["taskTimes"] = new JsonObject
        {
            ["prepare"] = Quantity(10, "min"), ["position"] = Quantity(10, "min"), ["proof"] = Quantity(10, "min"),
                ["record"] = Quantity(10, "min"),
        },
    });
}
