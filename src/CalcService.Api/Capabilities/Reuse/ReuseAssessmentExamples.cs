using CalcService.Api.OpenApi;

namespace CalcService.Api.Capabilities.Reuse;

/// <summary>Requests that run as they stand: invented sockets with an invented operator's limits.</summary>
public static class ReuseAssessmentExamples
{
    private const string Marks = """
        "type": "open",
        "material": { "known": "yes", "kind": "castSteel", "yieldStrength": { "value": 355, "unit": "MPa" }, "tensileStrength": { "value": 570, "unit": "MPa" } },
        "pin": { "yieldStrength": { "value": 600, "unit": "MPa" } },
        "ratedLoad": { "value": 50, "unit": "kN" },
        "proofRating": { "value": 120, "unit": "kN" },
        "breakingForce": { "value": 320, "unit": "kN" },
        "nominal": {
          "basket": {
            "smallEndDiameter": { "value": 23, "unit": "mm" },
            "largeEndDiameter": { "value": 45, "unit": "mm" },
            "length": { "value": 100, "unit": "mm" }
          },
          "outerDiameter": { "value": 70, "unit": "mm" },
          "pinDiameter": { "value": 35, "unit": "mm" },
          "pinHoleDiameter": { "value": 36.5, "unit": "mm" },
          "earThickness": { "value": 16, "unit": "mm" },
          "earWidth": { "value": 80, "unit": "mm" },
          "earEndDistance": { "value": 40, "unit": "mm" },
          "earGap": { "value": 40, "unit": "mm" }
        }
        """;

    private const string Stations = """
        "stations": [
          { "fromSmallEnd": { "value": 0, "unit": "mm" }, "diameters": [{ "value": 23.1, "unit": "mm" }, { "value": 23.2, "unit": "mm" }] },
          { "fromSmallEnd": { "value": 50, "unit": "mm" }, "diameters": [{ "value": 34.1, "unit": "mm" }, { "value": 34.2, "unit": "mm" }] },
          { "fromSmallEnd": { "value": 100, "unit": "mm" }, "diameters": [{ "value": 45.1, "unit": "mm" }, { "value": 45.1, "unit": "mm" }] }
        ],
        "outerDiameter": { "value": 69.8, "unit": "mm" },
        "earWidth": { "value": 80, "unit": "mm" },
        "earEndDistance": { "value": 40, "unit": "mm" },
        "pinHoleDiameters": [{ "value": 36.8, "unit": "mm" }, { "value": 36.6, "unit": "mm" }]
        """;

    private const string Limits = """
        "boreGrowth": { "value": 2, "unit": "%" },
        "ovality": { "value": 2, "unit": "%" },
        "pinHoleGrowth": { "value": 5, "unit": "%" },
        "earSpread": { "value": 3, "unit": "%" },
        "pitDepth": { "value": 0.8, "unit": "mm" },
        "source": "operator's rule 7"
        """;

    private const string Innocent = """
        "pours": 2, "lastMedium": "resin", "overloaded": "no", "straightened": "no", "arcStruck": "no"
        """;

    private const string Use = """
        "coneRemoval": { "method": "pressedCold", "maximumTemperature": { "value": 20, "unit": "degC" } },
        "intended": {
          "rope": {
            "diameter": { "value": 20, "unit": "mm" }, "construction": "6x36", "core": "iwrc", "grade": 1770, "finish": "bright",
            "certificate": { "breakingForce": { "value": 252, "unit": "kN" } }
          },
          "ratedLoad": { "value": 50, "unit": "kN" }
        }
        """;

    private const string Searched = """
        "inspectedOn": "2026-03-11",
        "surfaceMethod": "magneticParticle",
        "places": ["basket", "ears", "pinHoles", "pin"]
        """;

    public static IReadOnlyList<RequestExample> All { get; } =
    [
        new("reuse", "A sound socket, measured all over, within the operator's limits", $$"""
            {
              "reference": "SOCK-31",
              "assessedOn": "2026-03-12",
              "ruleSet": "general",
              "socket": {
                "id": "SOCK-31",
                {{Marks}},
                "measured": {
                  {{Stations}},
                  "pinDiameter": { "value": 34.9, "unit": "mm" },
                  "earThickness": { "value": 15.9, "unit": "mm" },
                  "earGap": { "value": 40.3, "unit": "mm" },
                  "pitDepth": { "value": 0, "unit": "mm" }
                },
                "history": { {{Innocent}}, "welded": "no" }
              },
              "limits": { {{Limits}} },
              "inspection": { {{Searched}}, "indications": [], "visual": { "cracks": "no", "corrosion": "none", "surface": "clean" } },
              {{Use}}
            }
            """),
        new("work", "Worn pin, some rust and a round indication: work to do first", $$"""
            {
              "reference": "SOCK-32",
              "assessedOn": "2026-03-12",
              "ruleSet": "general",
              "socket": {
                "id": "SOCK-32",
                {{Marks}},
                "measured": {
                  {{Stations}},
                  "pinDiameter": { "value": 33.9, "unit": "mm" },
                  "earThickness": { "value": 15.9, "unit": "mm" },
                  "earGap": { "value": 40.3, "unit": "mm" },
                  "pitDepth": { "value": 0.2, "unit": "mm" }
                },
                "history": { {{Innocent}}, "welded": "no" }
              },
              "limits": { {{Limits}}, "pinWear": { "value": 2, "unit": "%" } },
              "inspection": {
                {{Searched}},
                "indications": [{ "place": "ears", "kind": "rounded", "length": { "value": 1.5, "unit": "mm" } }],
                "visual": { "cracks": "no", "corrosion": "pitted", "surface": "clean" }
              },
              {{Use}}
            }
            """),
        new("hold", "Ears that have lost a fifth of their thickness, and nobody says how much they may: held", $$"""
            {
              "reference": "SOCK-33",
              "assessedOn": "2026-03-12",
              "ruleSet": "general",
              "socket": {
                "id": "SOCK-33",
                {{Marks}},
                "measured": {
                  {{Stations}},
                  "pinDiameter": { "value": 34.9, "unit": "mm" },
                  "earThickness": { "value": 12.8, "unit": "mm" },
                  "earGap": { "value": 40.3, "unit": "mm" },
                  "pitDepth": { "value": 0, "unit": "mm" }
                },
                "history": { {{Innocent}}, "welded": "no" }
              },
              "limits": { {{Limits}} },
              "inspection": { {{Searched}}, "indications": [], "visual": { "cracks": "no", "corrosion": "none", "surface": "clean" } },
              {{Use}}
            }
            """),
        new("withdraw", "A weld, a linear indication, ears spread and worn to a third: withdrawn", $$"""
            {
              "reference": "SOCK-34",
              "assessedOn": "2026-03-12",
              "ruleSet": "general",
              "socket": {
                "id": "SOCK-34",
                {{Marks}},
                "measured": {
                  {{Stations}},
                  "pinDiameter": { "value": 34.9, "unit": "mm" },
                  "earThickness": { "value": 5.3, "unit": "mm" },
                  "earGap": { "value": 42.5, "unit": "mm" },
                  "pitDepth": { "value": 0, "unit": "mm" }
                },
                "history": { {{Innocent}}, "welded": "yes" }
              },
              "limits": { {{Limits}} },
              "inspection": {
                {{Searched}},
                "indications": [{ "place": "ears", "kind": "linear", "length": { "value": 6, "unit": "mm" } }],
                "visual": { "cracks": "no", "corrosion": "none", "surface": "clean" }
              },
              {{Use}}
            }
            """),
    ];
}
