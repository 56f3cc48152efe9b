using System.Text.Json.Nodes;
using CalcService.Api.Pages;
using CalcService.Engine.Findings;
using static CalcService.Api.Capabilities.Pouring.Findings.PourExamples;
using static CalcService.Api.Pages.NodeEdits;

namespace CalcService.Api.Capabilities.Pouring.Findings;

/// <summary>What dose, gel time and pot life raise.</summary>
internal static class DoseExamples
{
    private const string GelTimes = Sheet + "/gelTimes";

    public static IReadOnlyList<FindingExample> All { get; } =
    [
        // Bands have to cover the pouring range, so the sheet of this one states none.
        new("dose-unknown", Severity.Unknown, Steel,
            pour => pour.Without(Sheet + "/pouring").With(Sheet + "/doses/1/below", Quantity(15, "degC"))),
        new("dose-edge", Severity.Caution, Steel, pour => pour.With(Air, Quantity(8, "degC")).With(Steel, Quantity(6, "degC"))),
        new("dose-uncertain", Severity.Caution, Steel,
            pour => pour.With(Air, Quantity(8, "degC")).With(Steel, Quantity(7.5, "degC"))
            .With("/conditions/uncertainty", Quantity(1, "K"))),
        new("gel-time-unknown", Severity.Unknown, GelTimes, pour => pour.With(GelTimes, GelTime(20, 1, 13))),
        new("gel-time-extrapolated", Severity.Caution, "/conditions/compoundTemperature",
        pour => pour.With(GelTimes + "/1", GelTime(21, 0, 23)[0]!.DeepClone()).With(GelTimes + "/0", GelTime(25, 0, 18)[0]!.DeepClone())),
        new("gel-time-from-one-point", Severity.Caution, GelTimes, pour => pour.With(GelTimes, GelTime(20, 0, 24))),
        new("pour-time-missing", Severity.Unknown, "/crew/pourTime", pour => pour.Without("/crew/pourTime")),
        new("pot-life-too-short", Severity.Stop, "/crew/pourTime", pour => pour.With("/crew/pourTime", Quantity(20, "min"))),
        new("mix-larger-than-measured", Severity.Caution, Sheet + "/potLifeVolume",
        pour => pour.With(Sheet + "/potLifeVolume", Quantity(250, "mL"))),
    ];

    private static JsonArray GelTime(double celsius, int doses, double minutes) =>
        [new JsonObject { ["temperature"] = Quantity(celsius, "degC"), ["doses"] = doses, ["time"] = Quantity(minutes, "min") }];
}
