using CalcService.Api.OpenApi;

namespace CalcService.Api.Capabilities.Matching;

/// <summary>Requests that run as they stand: an invented yard with an invented compound.</summary>
public static class TerminationMatchExamples
{
    public static IReadOnlyList<RequestExample> All { get; } =
    [
        new("match", "A sling of 20 mm rope in a socket of its size", """
            {
              "reference": "SLING-12",
              "units": "metric",
              "compound": { "profile": "demonstration" },
              "rope": {
                "diameter": { "value": 20, "unit": "mm" },
                "construction": "6x36",
                "core": "iwrc",
                "grade": 1770,
                "finish": "bright",
                "certificate": { "number": "C-1190", "breakingForce": { "value": 252, "unit": "kN" } }
              },
              "socket": {
                "basket": {
                  "smallEndDiameter": { "value": 23, "unit": "mm" },
                  "largeEndDiameter": { "value": 45, "unit": "mm" },
                  "length": { "value": 100, "unit": "mm" },
                  "tolerance": { "value": 0.5, "unit": "mm" }
                },
                "outerAtSmallEnd": { "value": 40, "unit": "mm" },
                "outerAtMouth": { "value": 70, "unit": "mm" },
                "breakingForce": { "value": 310, "unit": "kN" },
                "ratedLoad": { "value": 55, "unit": "kN" },
                "proofRating": { "value": 120, "unit": "kN" },
                "ropeRange": { "minimum": { "value": 18, "unit": "mm" }, "maximum": { "value": 20, "unit": "mm" } },
                "standard": "EN 13411-4"
              },
              "duty": {
                "use": "sling",
                "load": { "value": 45, "unit": "kN" },
                "designFactor": { "value": 5, "unit": "1" },
                "typeTested": "yes"
              },
              "service": {
                "lowest": { "value": -10, "unit": "degC" },
                "highest": { "value": 40, "unit": "degC" },
                "chemicals": []
              },
              "preparation": { "core": "unlaid", "cleaner": "solvent", "plasticLeftIn": "no" },
              "cone": { "friction": { "value": 0.2, "unit": "1" } }
            }
            """),
        new("care", "A pendant of high grade without certificate: proceed with care", """
            {
              "reference": "PENDANT-3",
              "compound": { "profile": "demonstration" },
              "rope": {
                "diameter": { "value": 28, "unit": "mm" }, "construction": "6x36", "core": "iwrc", "grade": 2160, "finish": "galvanized", "function": "pendant"
              },
              "socket": {
                "basket": {
                  "smallEndDiameter": { "value": 32, "unit": "mm" },
                  "largeEndDiameter": { "value": 63, "unit": "mm" },
                  "length": { "value": 140, "unit": "mm" },
                  "tolerance": { "value": 0.5, "unit": "mm" }
                },
                "outerDiameter": { "value": 100, "unit": "mm" },
                "breakingForce": { "value": 720, "unit": "kN" },
                "standard": "EN 13411-4"
              },
              "duty": { "use": "pendant", "load": { "value": 150, "unit": "kN" }, "designFactor": { "value": 3, "unit": "1" }, "typeTested": "yes" },
              "service": { "lowest": { "value": -15, "unit": "degC" }, "highest": { "value": 45, "unit": "degC" }, "chemicals": [] }
            }
            """),
        new("stop", "A rope too thick and too strong for its socket, cleaned with acid, warmer than the sheet allows", """
            {
              "reference": "HOIST-7",
              "compound": { "profile": "demonstration" },
              "rope": {
                "diameter": { "value": 26, "unit": "mm" },
                "construction": "8x36",
                "core": "iwrc",
                "grade": 1960,
                "finish": "bright",
                "function": "running",
                "certificate": { "breakingForce": { "value": 485, "unit": "kN" } }
              },
              "socket": {
                "basket": {
                  "smallEndDiameter": { "value": 27, "unit": "mm" },
                  "largeEndDiameter": { "value": 52, "unit": "mm" },
                  "length": { "value": 125, "unit": "mm" },
                  "tolerance": { "value": 0.5, "unit": "mm" }
                },
                "outerDiameter": { "value": 84, "unit": "mm" },
                "breakingForce": { "value": 460, "unit": "kN" },
                "ropeRange": { "minimum": { "value": 22, "unit": "mm" }, "maximum": { "value": 24, "unit": "mm" } },
                "standard": "EN 13411-4"
              },
              "duty": { "use": "hoistRope", "load": { "value": 90, "unit": "kN" }, "designFactor": { "value": 4.5, "unit": "1" } },
              "service": { "lowest": { "value": 0, "unit": "degC" }, "highest": { "value": 110, "unit": "degC" }, "chemicals": [] },
              "preparation": { "core": "unlaid", "cleaner": "acid" }
            }
            """),
        new("missing", "A mine hoist without evidence for resin, and a socket of unknown strength: undetermined", """
            {
              "reference": "SHAFT-2",
              "compound": { "profile": "demonstration" },
              "rope": {
                "diameter": { "value": 1.25, "unit": "in" },
                "construction": "6x19",
                "core": "fibre",
                "grade": 1770,
                "finish": "bright",
                "certificate": { "breakingForce": { "value": 590, "unit": "kN" } }
              },
              "socket": {
                "basket": {
                  "smallEndDiameter": { "value": 36, "unit": "mm" },
                  "largeEndDiameter": { "value": 70, "unit": "mm" },
                  "length": { "value": 160, "unit": "mm" }
                },
                "outerDiameter": { "value": 110, "unit": "mm" },
                "standard": "EN 13411-4"
              },
              "duty": { "use": "mineHoist", "load": { "value": 80, "unit": "kN" }, "designFactor": { "value": 7, "unit": "1" } },
              "service": { "lowest": { "value": 5, "unit": "degC" }, "highest": { "value": 30, "unit": "degC" }, "chemicals": ["mine water"] }
            }
            """),
    ];
}
