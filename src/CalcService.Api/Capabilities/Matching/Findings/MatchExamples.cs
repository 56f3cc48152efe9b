using System.Text.Json.Nodes;
using CalcService.Api.Pages;

namespace CalcService.Api.Capabilities.Matching.Findings;

/// <summary>A match with which nothing is wrong, and what raises each finding of its own. The compound is invented.</summary>
internal static class MatchExamples
{
    public const string Rope = "/rope", Socket = "/socket", Basket = "/socket/basket", Sheet = "/compound/sheet",
        Strength = "/rope/certificate/breakingForce";

    private const string Good = """
        {
          "reference": "SLING-1",
          "compound": { "sheet": {
            "name": "invented for the findings",
            "kits": [ { "code": "small", "volume": { "value": 300, "unit": "mL" } } ],
            "service": { "minimum": { "value": -15, "unit": "degC" }, "maximum": { "value": 60, "unit": "degC" } },
            "cured": {
              "compressiveStrength": { "value": 120, "unit": "MPa" }, "modulus": { "value": 6000, "unit": "MPa" },
                "poissonRatio": { "value": 0.25, "unit": "1" },
              "volumetricShrinkage": { "value": 2, "unit": "%" }, "shrinkageAfterGel": { "value": 0.6, "unit": "%" } },
            "chemicals": [
              { "substance": "sea water", "effect": "resists" },
              { "substance": "diesel", "effect": "limited" },
              { "substance": "acetone", "effect": "attacked" } ] } },
          "rope": { "diameter": { "value": 20, "unit": "mm" }, "construction": "6x36", "core": "iwrc", "grade": 1770, "finish": "bright",
            "certificate": { "breakingForce": { "value": 252, "unit": "kN" } } },
          "socket": {
            "basket": { "smallEndDiameter": { "value": 23, "unit": "mm" }, "largeEndDiameter": { "value": 45, "unit": "mm" },
              "length": { "value": 100, "unit": "mm" }, "tolerance": { "value": 0.5, "unit": "mm" } },
            "outerAtSmallEnd": { "value": 40, "unit": "mm" },
            "outerAtMouth": { "value": 70, "unit": "mm" },
            "breakingForce": { "value": 310, "unit": "kN" },
            "ratedLoad": { "value": 60, "unit": "kN" },
            "proofRating": { "value": 120, "unit": "kN" },
            "ropeRange": { "minimum": { "value": 18, "unit": "mm" }, "maximum": { "value": 20, "unit": "mm" } },
            "standard": "EN 13411-4" },
          "duty": { "use": "sling", "load": { "value": 25, "unit": "kN" }, "designFactor": { "value": 5, "unit": "1" },
            "efficiency": { "value": 100, "unit": "%" }, "typeTested": "yes" },
          "service": { "lowest": { "value": -10, "unit": "degC" }, "highest": { "value": 40, "unit": "degC" },
            "chemicals": [ "sea water" ] },
          "preparation": { "core": "unlaid", "cleaner": "solvent", "plasticLeftIn": "no" },
          "cone": { "friction": { "value": 0.2, "unit": "1" }, "cooling": { "value": 0, "unit": "K" } }
        }
        """;

    public static OperationExamples Operation { get; } = new("/v1/termination-matches", JsonNode.Parse(Good)!.AsObject(),
        [.. PairExamples.All, .. DutyExamples.All, .. ServiceExamples.All, .. ConeExamples.All]);
}
