using System.Text.Json.Nodes;
using CalcService.Api.Pages;
using static CalcService.Api.Pages.NodeEdits;

namespace CalcService.Api.Capabilities.Inspection.Findings;

/// <summary>An end in service with which nothing is wrong, and what raises each finding of its own. The compound is invented.</summary>
internal static class InspectionExamples
{
    public const string Wires = "/inspection/brokenWires";

    private const string Good = """
        {
          "reference": "END-1",
          "assessedOn": "2026-03-12",
          "ruleSet": "construction-crane",
          "compound": { "sheet": {
            "name": "invented for the findings",
            "kits": [ { "code": "small", "volume": { "value": 300, "unit": "mL" } } ],
            "service": { "minimum": { "value": -15, "unit": "degC" }, "maximum": { "value": 60, "unit": "degC" } },
            "chemicals": [
              { "substance": "sea water", "effect": "resists" },
              { "substance": "diesel", "effect": "limited" },
              { "substance": "acetone", "effect": "attacked" } ] } },
          "rope": { "diameter": { "value": 20, "unit": "mm" }, "construction": "6x36", "core": "iwrc", "function": "running",
            "layLength": { "value": 130, "unit": "mm" }, "measuredDiameter": { "value": 19.8, "unit": "mm" } },
          "inspection": {
            "brokenWires": [],
            "coneMovement": "no", "rustBleed": "no", "bendAtMouth": "no", "cracks": "no", "improperlyApplied": "no",
            "corrosion": "none", "wear": "none", "lubricant": "good",
            "highestTemperature": { "value": 45, "unit": "degC" }, "chemicals": [ "sea water" ], "socketedOn": "2025-03-12" }
        }
        """;

    public static OperationExamples Operation { get; } = new("/v1/service-inspections", JsonNode.Parse(Good)!.AsObject(),
        [.. WireExamples.All, .. EndExamples.All, .. HistoryExamples.All]);

    /// <summary>Wires broken at one place.</summary>
    public static JsonObject Broken(JsonObject end, int count, string place, double? fromMouthM, int? inOneStrand)
    {
        var group = new JsonObject { ["count"] = count, ["place"] = place };
        if (fromMouthM is { } from)
        {
            group["fromMouth"] = Quantity(from, "m");
        }

        if (inOneStrand is { } strand)
        {
            group["inOneStrand"] = strand;
        }

        return end.With(Wires, new JsonArray(group));
    }

    /// <summary>Six in one lay of a running rope: cut off.</summary>
    public static JsonObject Rejected(JsonObject end) => Broken(end, 6, "lay", 5, 2);

    public static JsonObject Found(JsonObject end, string member, JsonNode? value) => end.With("/inspection/" + member, value);

    /// <summary>The same end in a mine, with what a mine asks for besides.</summary>
    public static JsonObject Mine(JsonObject end) => end.With("/ruleSet", "mine-hoist")
        .With("/inspection/baselineDiameter", Quantity(20, "mm")).With("/inspection/drumTurnsLeft", Quantity(5, "1"))
        .With("/attachment", new JsonObject { ["efficiency"] = Quantity(90, "%"), ["resinByDesign"] = "yes" });
}
