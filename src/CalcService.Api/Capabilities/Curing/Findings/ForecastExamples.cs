using System.Text.Json.Nodes;
using CalcService.Api.Pages;
using CalcService.Engine.Findings;
using static CalcService.Api.Capabilities.Curing.Findings.CureExamples;
using static CalcService.Api.Pages.NodeEdits;

namespace CalcService.Api.Capabilities.Curing.Findings;

/// <summary>What temperatures ahead and time raise.</summary>
internal static class ForecastExamples
{
    public static IReadOnlyList<FindingExample> All { get; } =
    [
        new("forecast-misses-mixing", Severity.Unknown, Series, Through(("09:00", 20), ("18:00", 20))),
        new("forecast-too-short", Severity.Unknown, Series, Through(("08:30", 20), ("09:30", 20))),
        new("gel-not-reached", Severity.Unknown, Series, Through(("08:30", 20), ("08:42", 20))),
        new("full-strength-not-reached", Severity.Unknown, Air, cure => cure.With(Sheet + "/fullStrength/0/afterGel", Quantity(720, "h"))),
        new("forecast-leaves-pouring-range", Severity.Caution, Series, Through(("08:30", 33.9), ("08:33", 34.9), ("18:00", 34.9))),
        new("below-lowest-cure", Severity.Unknown, Air,
        cure => cure.With(Sheet + "/lowestCure", Quantity(20, "degC")).With(Air + "/constant", Quantity(19, "degC"))),
        new("below-lowest-cure", Severity.Caution, Air,
        cure => Through(("08:30", 20), ("09:10", 20), ("09:20", 7), ("11:20", 7), ("11:30", 20), ("23:00", 20))(cure)
            .With(Sheet + "/lowestCure", Quantity(8, "degC")).With("/conditions/steelSeries", new JsonArray(
                new JsonObject { ["at"] = "2026-03-12T23:00:00+01:00", ["temperature"] = Quantity(12, "degC") }))),
        new("full-strength-extrapolated", Severity.Caution, Air, Through(("08:30", 20), ("09:00", 20), ("09:10", 4), ("23:59", 4))),
        new("full-strength-of-other-dose", Severity.Caution, Sheet + "/fullStrength",
        cure => cure.With(Sheet + "/fullStrength/0/doses", new JsonArray(2))),
        new("release-by-own-heat", Severity.Caution, Sheet + "/fullStrength", cure => cure.With("/thermalModel", "coupled")
            .With(Sheet + "/fullStrength/0/isothermal", "yes")
            .With(Sheet + "/fullStrength/0/isothermalSource", "the sheet, held in a water bath")),
        new("hardness-before-load", Severity.Note, Sheet + "/hardness",
        cure => cure.With(Sheet + "/hardness", new JsonObject { ["method"] = "indenter", ["minimum"] = Quantity(40, "1") })),
        new("pour-time-not-stated", Severity.Caution, "/pourTime", cure => cure.Without("/pourTime")),
        new("gel-before-pour-ends", Severity.Stop, "/pourTime", cure => cure.With("/pourTime", Quantity(25, "min"))),
        new("night-delays-cure", Severity.Caution, Series, Through(("08:30", 20), ("10:30", 10), ("23:00", 10))),
        new("steel-holds-cure-back", Severity.Caution, Steel, cure => cure.With(Steel, Quantity(12, "degC"))),
    ];

    /// <summary>Air that goes through temperatures (°C) on the day of the pour.</summary>
    private static Func<JsonObject, JsonObject> Through(params (string Clock, double Celsius)[] points) => cure =>
        cure.With(Air, new JsonObject
    {
        ["series"] = new JsonArray([.. points.Select(point => new JsonObject
        {
            ["at"] = $"2026-03-12T{point.Clock}:00+01:00", ["temperature"] = Quantity(point.Celsius, "degC"),
        })]),
    });
}
