using System.Text.Json.Nodes;
using CalcService.Api.Pages;

namespace CalcService.Api.Capabilities.Curing.Findings;

/// <summary>A cure with which nothing is wrong, and what raises each finding of its own. The compound is invented.</summary>
internal static class CureExamples
{
    public const string Air = "/conditions/air", Series = "/conditions/air/series", Steel = "/conditions/steelTemperature",
        Sheet = "/compound/sheet";

    private const string Good = """
        {
          "reference": "JOB-1",
          "compound": { "sheet": {
            "name": "invented for the findings",
            "kits": [ { "code": "small", "volume": { "value": 300, "unit": "mL" } } ],
            "potLife": { "value": 75, "unit": "%" },
            "pouring": { "minimum": { "value": 2, "unit": "degC" }, "maximum": { "value": 34, "unit": "degC" } },
            "lowestCure": { "value": 2, "unit": "degC" },
            "doses": [
              { "from": { "value": 2, "unit": "degC" }, "below": { "value": 7, "unit": "degC" }, "perKit": 2 },
              { "from": { "value": 7, "unit": "degC" }, "below": { "value": 34, "unit": "degC" }, "perKit": 0 } ],
            "gelTimes": [
              { "temperature": { "value": 5, "unit": "degC" }, "doses": 0, "time": { "value": 66, "unit": "min" },
                "measuredIn": { "selfHeating": "no" } },
              { "temperature": { "value": 20, "unit": "degC" }, "doses": 0, "time": { "value": 24, "unit": "min" },
                "measuredIn": { "selfHeating": "no" } },
              { "temperature": { "value": 35, "unit": "degC" }, "doses": 0, "time": { "value": 10, "unit": "min" },
                "measuredIn": { "selfHeating": "no" } } ],
            "mixing": { "time": { "value": 90, "unit": "s" } },
            "fullStrength": [ { "temperature": { "value": 20, "unit": "degC" }, "afterGel": { "value": 90, "unit": "min" } } ],
            "cured": { "density": { "value": 1.75, "unit": "g/mL" }, "specificHeat": { "value": 1250, "unit": "J/(kg.K)" },
              "conductivity": { "value": 0.6, "unit": "W/(m.K)" } },
            "reaction": { "heat": { "value": 350, "unit": "kJ/kg" }, "resinFraction": { "value": 20, "unit": "%" } } } },
          "doses": 0,
          "mixedAt": "2026-03-12T08:30:00+01:00",
          "thermalModel": "uniform",
          "conditions": {
            "air": { "constant": { "value": 20, "unit": "degC" } },
            "steelTemperature": { "value": 20, "unit": "degC" },
            "compoundTemperature": { "value": 20, "unit": "degC" } },
          "ends": [ {
            "id": "A",
            "quantity": 2,
            "rope": { "diameter": { "value": 20, "unit": "mm" }, "construction": "6x36", "core": "iwrc", "grade": 1770,
              "finish": "bright" },
            "socket": {
              "basket": { "smallEndDiameter": { "value": 23, "unit": "mm" }, "largeEndDiameter": { "value": 45, "unit": "mm" },
                "length": { "value": 100, "unit": "mm" } },
              "outerDiameter": { "value": 70, "unit": "mm" } } } ],
          "pourTime": { "value": 5, "unit": "min" }
        }
        """;

    public static OperationExamples Operation { get; } = new("/v1/cure-schedules", JsonNode.Parse(Good)!.AsObject(),
        [.. ForecastExamples.All, .. ObservedExamples.All, .. HeatExamples.All, .. ShopExamples.All]);
}
