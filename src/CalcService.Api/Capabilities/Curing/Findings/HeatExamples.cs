using System.Text.Json.Nodes;
using CalcService.Api.Pages;
using CalcService.Engine.Findings;
using static CalcService.Api.Capabilities.Curing.Findings.CureExamples;
using static CalcService.Api.Pages.NodeEdits;

namespace CalcService.Api.Capabilities.Curing.Findings;

/// <summary>What the cone's own heat raises.</summary>
internal static class HeatExamples
{
    public static IReadOnlyList<FindingExample> All { get; } =
    [
        new("cone-steel-unknown", Severity.Unknown, "/ends/0/rope/construction",
            cure => Coupled(cure).With("/ends/0/rope/construction", "locked coil")),
        new("wires-do-not-fit", Severity.Stop, "/ends/0/socket/basket",
        cure => Coupled(cure).With("/ends/0/rope/diameter", Quantity(40, "mm"))),
        new("socket-wall-missing", Severity.Unknown, "/ends/0/socket/outerDiameter",
        cure => Coupled(cure).Without("/ends/0/socket/outerDiameter")),
        new("peak-not-judged", Severity.Caution, Sheet + "/peakLimit", cure => cure.With(Sheet + "/peakLimit", Quantity(80, "degC"))),
        new("peak-above-sheet", Severity.Stop, "/ends/0", cure => Coupled(cure).With(Sheet + "/peakLimit", Quantity(21, "degC"))),
        new("peak-upper-estimate", Severity.Note, "/ends/0", cure => Thick(cure, 350)),
        new("cure-budget-spent", Severity.Unknown, "/ends", cure => Thick(cure, 450)),
    ];

    /// <summary>
    /// A thick cone of a compound that is nearly all resin: its fronts of cure run into each other, thinner than any grid, and are costly
    /// to follow.
    /// </summary>
    private static JsonObject Thick(JsonObject cure, double heat) => Coupled(cure)
        .With(Sheet + "/reaction", new JsonObject { ["heat"] = Quantity(heat, "kJ/kg"), ["resinFraction"] = Quantity(90, "%") })
        .With("/ends/0/socket", new JsonObject
        {
            ["basket"] = new JsonObject
            {
                ["smallEndDiameter"] = Quantity(60, "mm"), ["largeEndDiameter"] = Quantity(90, "mm"), ["length"] = Quantity(200, "mm"),
            },
            ["outerDiameter"] = Quantity(130, "mm"),
        });

    private static JsonObject Coupled(JsonObject cure) => cure.With("/thermalModel", "coupled");
}
