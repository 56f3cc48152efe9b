using CalcService.Api.OpenApi;

namespace CalcService.Api.Capabilities.Proof;

/// <summary>Requests that run as they stand: an invented yard with an invented compound.</summary>
public static class ProofLoadEvaluationExamples
{
    /// <summary>A sling of 45 kN and its test, before anything is loaded.</summary>
    private const string Sling = """
        "testedAt": "2026-03-12T14:00:00+01:00",
        "ruleSet": "sling",
        "compound": { "profile": "demonstration" },
        "rope": {
          "diameter": { "value": 20, "unit": "mm" }, "construction": "6x36", "core": "iwrc", "grade": 1770, "finish": "bright",
          "certificate": { "number": "C-1190", "breakingForce": { "value": 252, "unit": "kN" } }
        },
        "socket": {
          "basket": {
            "smallEndDiameter": { "value": 23, "unit": "mm" },
            "largeEndDiameter": { "value": 45, "unit": "mm" },
            "length": { "value": 100, "unit": "mm" }
          },
          "outerAtSmallEnd": { "value": 40, "unit": "mm" },
          "outerAtMouth": { "value": 70, "unit": "mm" },
          "proofRating": { "value": 120, "unit": "kN" }
        }
        """;

    private const string Test = """
        "ratedLoad": { "value": 45, "unit": "kN" }, "exclusionZone": "yes", "seatingReadAt": "mouth", "readUnderLoad": "yes"
        """;

    private const string Cured = """
        "proofLoadFrom": "2026-03-12T12:00:00+01:00"
        """;

    public static IReadOnlyList<RequestExample> All { get; } =
    [
        new("after", "A sling after its proof load, with everything said: it has passed", $$"""
            {
              "reference": "SLING-12",
              {{Sling}},
              "test": { {{Test}}, {{Cured}} },
              "measured": {
                "steps": [
                  { "load": { "value": 45, "unit": "kN" }, "seating": { "value": 0.9, "unit": "mm" } },
                  { "load": { "value": 67.5, "unit": "kN" }, "seating": { "value": 1.1, "unit": "mm" } },
                  { "load": { "value": 89, "unit": "kN" }, "seating": { "value": 1.3, "unit": "mm" } }
                ],
                "wireSlip": "no", "cracks": "no", "asymmetry": "no", "creepUnderHold": "no"
              }
            }
            """),
        new("before", "The same sling before its proof load: steps and expected seating", $$"""
            {
              "reference": "SLING-12",
              {{Sling}},
              "test": { {{Test}}, {{Cured}} }
            }
            """),
        new("plan", "A sling before it is poured: what the work itself makes is asked for again at the test", $$"""
            {
              "reference": "SLING-12",
              "purpose": "plan",
              {{Sling}},
              "test": { {{Test}} }
            }
            """),
        new("creep", "A sling whose cone went on moving under the held load", $$"""
            {
              "reference": "SLING-13",
              {{Sling}},
              "test": { {{Test}}, {{Cured}} },
              "measured": {
                "steps": [
                  { "load": { "value": 45, "unit": "kN" }, "seating": { "value": 1.0, "unit": "mm" } },
                  { "load": { "value": 89, "unit": "kN" }, "seating": { "value": 2.9, "unit": "mm" } }
                ],
                "wireSlip": "no", "cracks": "no", "asymmetry": "no", "creepUnderHold": "yes"
              }
            }
            """),
        new("missing", "A hoist rope without a proof load, a proof rating or a word about its cure: undetermined", """
            {
              "reference": "HOIST-7",
              "testedAt": "2026-03-12T14:00:00+01:00",
              "ruleSet": "hoist-rope",
              "compound": { "profile": "demonstration" },
              "rope": {
                "diameter": { "value": 20, "unit": "mm" }, "construction": "6x36", "core": "iwrc", "grade": 1770, "finish": "bright",
                "certificate": { "number": "C-1190", "breakingForce": { "value": 252, "unit": "kN" } }
              },
              "socket": {
                "basket": {
                  "smallEndDiameter": { "value": 23, "unit": "mm" },
                  "largeEndDiameter": { "value": 45, "unit": "mm" },
                  "length": { "value": 100, "unit": "mm" }
                },
                "outerAtSmallEnd": { "value": 40, "unit": "mm" },
                "outerAtMouth": { "value": 70, "unit": "mm" }
              },
              "test": {
                "ratedLoad": { "value": 60, "unit": "kN" }
              }
            }
            """),
    ];
}
