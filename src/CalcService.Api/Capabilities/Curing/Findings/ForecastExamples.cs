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
        new("full-strength-not-reached", Severity.Unknown, Air, cure => cure.With(Sheet + "/fullStrength/afterGel", Quantity(720, "h"))),
        new("forecast-leaves-pouring-range", Severity.Caution, Series, Through(("08:30", 33.9), ("08:33", 34.9), ("18:00", 34.9))),
        new("below-lowest-cure", Severity.Unknown, Air, cure => cure.With(Sheet + "/lowestCure", Quantity(20, "degC")).With(Air + "/constant", Quantity(19, "degC"))),
        new("gel-before-pour-ends", Severity.Stop, "/pourTime", cure => cure.With("/pourTime", Quantity(25, "min"))),
        new("night-delays-cure", Severity.Caution, Series, Through(("08:30", 20), ("10:30", 10), ("23:00", 10))),
        new("steel-holds-cure-back", Severity.Caution, Steel, cure => cure.With(Steel, Quantity(12, "degC"))),
    ];

    /// <summary>Air that goes through temperatures (°C) on the day of the pour.</summary>
    private static Func<JsonObject, JsonObject> Through(params (string Clock, double Celsius)[] points) => cure => cure.With(Air, new JsonObject
    {
        ["series"] = new JsonArray([.. points.Select(point => new JsonObject
        {
            ["at"] = $"2026-03-12T{point.Clock}:00+01:00", ["temperature"] = Quantity(point.Celsius, "degC"),
        })]),
    });
}
