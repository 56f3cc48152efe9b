using System.Text.Json.Nodes;
using CalcService.Api.Pages;

namespace CalcService.Api.Capabilities.Pouring.Findings;

/// <summary>A pour with which nothing is wrong, and what raises each finding of a plan. The compound is invented.</summary>
internal static class PourExamples
{
    public const string Air = "/conditions/airTemperature", Steel = "/conditions/steelTemperature",
        Humidity = "/conditions/relativeHumidity";
    public const string Rope = "/ends/0/rope", Socket = "/ends/0/socket", Basket = "/ends/0/socket/basket", Sheet = "/compound/sheet",
        Lot = "/stock/0";

    private const string Good = """
        {
          "reference": "JOB-1",
          "pourAt": "2026-03-12T08:30:00+01:00",
          "compound": { "sheet": {
            "name": "invented for the findings",
            "kits": [
              { "code": "small", "volume": { "value": 300, "unit": "mL" } },
              { "code": "medium", "volume": { "value": 700, "unit": "mL" } },
              { "code": "large", "volume": { "value": 1100, "unit": "mL" } } ],
            "pouring": { "minimum": { "value": 2, "unit": "degC" }, "maximum": { "value": 34, "unit": "degC" } },
            "doses": [
              { "from": { "value": 2, "unit": "degC" }, "below": { "value": 7, "unit": "degC" }, "perKit": 2 },
              { "from": { "value": 7, "unit": "degC" }, "below": { "value": 34, "unit": "degC" }, "perKit": 0 } ],
            "gelTimes": [
              { "temperature": { "value": 5, "unit": "degC" }, "doses": 0, "time": { "value": 66, "unit": "min" } },
              { "temperature": { "value": 20, "unit": "degC" }, "doses": 0, "time": { "value": 24, "unit": "min" } },
              { "temperature": { "value": 35, "unit": "degC" }, "doses": 0, "time": { "value": 10, "unit": "min" } },
              { "temperature": { "value": 0, "unit": "degC" }, "doses": 2, "time": { "value": 50, "unit": "min" } },
              { "temperature": { "value": 20, "unit": "degC" }, "doses": 2, "time": { "value": 13, "unit": "min" } } ],
            "potLife": { "value": 75, "unit": "%" },
            "mixing": { "time": { "value": 90, "unit": "s" } },
            "shelfLife": { "value": 14, "unit": "mo" },
            "storage": { "minimum": { "value": 5, "unit": "degC" }, "maximum": { "value": 25, "unit": "degC" } },
            "cured": { "density": { "value": 1.75, "unit": "g/mL" } },
            "vapour": { "substance": "styrene", "massFraction": { "value": 18, "unit": "%" } } } },
          "conditions": {
            "airTemperature": { "value": 22, "unit": "degC" },
            "steelTemperature": { "value": 20, "unit": "degC" },
            "compoundTemperature": { "value": 20, "unit": "degC" },
            "relativeHumidity": { "value": 50, "unit": "%" },
            "room": { "volume": { "value": 5000, "unit": "m3" }, "airChanges": { "value": 6, "unit": "1/h" } },
            "mixingFactor": { "value": 10, "unit": "1" },
            "ignitionSource": "no", "place": "indoors", "workplace": "generalIndustry", "jurisdiction": "US" },
          "ends": [ {
            "id": "A",
            "quantity": 2,
            "rope": { "diameter": { "value": 20, "unit": "mm" }, "construction": "6x36", "core": "iwrc", "grade": 1770, "finish": "bright",
              "plasticFilled": "no" },
            "socket": {
              "basket": { "smallEndDiameter": { "value": 23, "unit": "mm" }, "largeEndDiameter": { "value": 45, "unit": "mm" },
                "length": { "value": 100, "unit": "mm" }, "tolerance": { "value": 0.5, "unit": "mm" } },
              "breakingForce": { "value": 310, "unit": "kN" }, "material": { "kind": "castSteel" }, "bore": "clean" },
            "cleaner": "solvent",
            "driedAt": "2026-03-12T08:00:00+01:00",
            "tilt": { "value": 0, "unit": "deg" },
            "straightBelow": { "value": 1, "unit": "m" } } ],
          "stock": [ { "lot": "A", "kit": "small", "count": 4, "expiresOn": "2026-12-31", "state": "sealed", "quarantined": "no",
            "storage": { "lowest": { "value": 8, "unit": "degC" }, "highest": { "value": 22, "unit": "degC" } } } ],
          "crew": { "mixers": 1, "pourTime": { "value": 2, "unit": "min" } }
        }
        """;

    public static OperationExamples Operation { get; } = new("/v1/pour-plans", JsonNode.Parse(Good)!.AsObject(),
        [.. ReadingExamples.All, .. SheetExamples.All, .. DoseExamples.All, .. StockExamples.All, .. FitExamples.All, .. BroomExamples.All,
        .. VapourExamples.All]);
}
