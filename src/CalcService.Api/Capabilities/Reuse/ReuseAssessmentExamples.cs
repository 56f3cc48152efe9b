using CalcService.Api.OpenApi;

namespace CalcService.Api.Capabilities.Reuse;

/// <summary>Requests that run as they stand: invented sockets with an invented operator's limits.</summary>
public static class ReuseAssessmentExamples
{
    public static IReadOnlyList<RequestExample> All { get; } =
    [
        new("reuse", "A sound socket, measured all over, within the operator's limits", """
            {
              "reference": "SOCK-31",
              "assessedOn": "2026-03-12",
              "ruleSet": "general",
              "socket": {
                "id": "SOCK-31",
                "type": "open",
                "material": { "known": "yes", "yieldStrength": { "value": 355, "unit": "MPa" }, "tensileStrength": { "value": 570, "unit": "MPa" } },
                "ratedLoad": { "value": 50, "unit": "kN" },
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
                },
                "measured": {
                  "stations": [
                    {
                      "fromSmallEnd": { "value": 0, "unit": "mm" },
                      "diameters": [{ "value": 23.1, "unit": "mm" }, { "value": 23.2, "unit": "mm" }]
                    },
                    {
                      "fromSmallEnd": { "value": 50, "unit": "mm" },
                      "diameters": [{ "value": 34.1, "unit": "mm" }, { "value": 34.2, "unit": "mm" }]
                    },
                    {
                      "fromSmallEnd": { "value": 100, "unit": "mm" },
                      "diameters": [{ "value": 45.1, "unit": "mm" }, { "value": 45.1, "unit": "mm" }]
                    }
                  ],
                  "outerDiameter": { "value": 69.8, "unit": "mm" },
                  "pinDiameter": { "value": 34.9, "unit": "mm" },
                  "pinHoleDiameters": [{ "value": 36.8, "unit": "mm" }, { "value": 36.6, "unit": "mm" }],
                  "earThickness": { "value": 15.9, "unit": "mm" },
                  "earGap": { "value": 40.3, "unit": "mm" },
                  "pitDepth": { "value": 0, "unit": "mm" }
                },
                "history": { "pours": 2, "lastMedium": "resin", "overloaded": "no", "welded": "no", "straightened": "no", "arcStruck": "no" }
              },
              "limits": {
                "boreGrowth": { "value": 2, "unit": "%" },
                "ovality": { "value": 2, "unit": "%" },
                "pinHoleGrowth": { "value": 5, "unit": "%" },
                "earSpread": { "value": 3, "unit": "%" },
                "pitDepth": { "value": 0.8, "unit": "mm" },
                "source": "operator's rule 7"
              },
              "coneRemoval": { "method": "pressedCold", "maximumTemperature": { "value": 20, "unit": "degC" } },
              "inspection": {
                "inspectedOn": "2026-03-11",
                "surfaceMethod": "magneticParticle",
                "indications": [],
                "visual": { "cracks": "no", "corrosion": "none", "surface": "clean" }
              },
              "intended": {
                "rope": {
                  "diameter": { "value": 20, "unit": "mm" },
                  "construction": "6x36",
                  "core": "iwrc",
                  "grade": 1770,
                  "finish": "bright",
                  "certificate": { "breakingForce": { "value": 252, "unit": "kN" } }
                },
                "ratedLoad": { "value": 50, "unit": "kN" }
              }
            }
            """),
        new("work", "Worn pin, some rust and a round indication: work to do first", """
            {
              "reference": "SOCK-32",
              "assessedOn": "2026-03-12",
              "ruleSet": "general",
              "socket": {
                "id": "SOCK-32",
                "type": "open",
                "material": { "known": "yes", "yieldStrength": { "value": 355, "unit": "MPa" }, "tensileStrength": { "value": 570, "unit": "MPa" } },
                "ratedLoad": { "value": 50, "unit": "kN" },
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
                },
                "measured": {
                  "stations": [
                    {
                      "fromSmallEnd": { "value": 0, "unit": "mm" },
                      "diameters": [{ "value": 23.1, "unit": "mm" }, { "value": 23.2, "unit": "mm" }]
                    },
                    {
                      "fromSmallEnd": { "value": 50, "unit": "mm" },
                      "diameters": [{ "value": 34.1, "unit": "mm" }, { "value": 34.2, "unit": "mm" }]
                    },
                    {
                      "fromSmallEnd": { "value": 100, "unit": "mm" },
                      "diameters": [{ "value": 45.1, "unit": "mm" }, { "value": 45.1, "unit": "mm" }]
                    }
                  ],
                  "outerDiameter": { "value": 69.8, "unit": "mm" },
                  "pinDiameter": { "value": 33.9, "unit": "mm" },
                  "pinHoleDiameters": [{ "value": 36.8, "unit": "mm" }, { "value": 36.6, "unit": "mm" }],
                  "earThickness": { "value": 15.9, "unit": "mm" },
                  "earGap": { "value": 40.3, "unit": "mm" },
                  "pitDepth": { "value": 0.2, "unit": "mm" }
                },
                "history": { "pours": 5, "lastMedium": "resin", "overloaded": "no", "welded": "no", "straightened": "no", "arcStruck": "no" },
                "pin": { "yieldStrength": { "value": 600, "unit": "MPa" } },
                "breakingForce": { "value": 320, "unit": "kN" },
                "proofRating": { "value": 120, "unit": "kN" }
              },
              "limits": {
                "boreGrowth": { "value": 2, "unit": "%" },
                "ovality": { "value": 2, "unit": "%" },
                "pinHoleGrowth": { "value": 5, "unit": "%" },
                "earSpread": { "value": 3, "unit": "%" },
                "pitDepth": { "value": 0.8, "unit": "mm" },
                "source": "operator's rule 7",
                "pinWear": { "value": 2, "unit": "%" }
              },
              "coneRemoval": { "method": "pressedCold", "maximumTemperature": { "value": 20, "unit": "degC" } },
              "inspection": {
                "inspectedOn": "2026-03-11",
                "surfaceMethod": "magneticParticle",
                "indications": [{ "place": "ears", "kind": "rounded", "length": { "value": 1.5, "unit": "mm" } }],
                "visual": { "cracks": "no", "corrosion": "pitted", "surface": "clean" }
              },
              "intended": {
                "rope": {
                  "diameter": { "value": 20, "unit": "mm" },
                  "construction": "6x36",
                  "core": "iwrc",
                  "grade": 1770,
                  "finish": "bright",
                  "certificate": { "breakingForce": { "value": 252, "unit": "kN" } }
                },
                "ratedLoad": { "value": 50, "unit": "kN" }
              }
            }
            """),
        new("hold", "No limits, one section measured, looked at by eye alone under old resin: held", """
            {
              "reference": "SOCK-33",
              "assessedOn": "2026-03-12",
              "ruleSet": "general",
              "socket": {
                "id": "SOCK-33",
                "type": "open",
                "material": { "known": "yes", "yieldStrength": { "value": 355, "unit": "MPa" }, "tensileStrength": { "value": 570, "unit": "MPa" } },
                "ratedLoad": { "value": 50, "unit": "kN" },
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
                },
                "measured": {
                  "stations": [
                    {
                      "fromSmallEnd": { "value": 0, "unit": "mm" },
                      "diameters": [{ "value": 23.1, "unit": "mm" }, { "value": 23.2, "unit": "mm" }]
                    }
                  ],
                  "outerDiameter": { "value": 69.8, "unit": "mm" },
                  "pinDiameter": { "value": 34.9, "unit": "mm" },
                  "pinHoleDiameters": [{ "value": 36.8, "unit": "mm" }, { "value": 36.6, "unit": "mm" }],
                  "earThickness": { "value": 15.9, "unit": "mm" },
                  "earGap": { "value": 40.3, "unit": "mm" },
                  "pitDepth": { "value": 0, "unit": "mm" }
                },
                "history": { "pours": 2, "lastMedium": "resin", "overloaded": "unknown", "welded": "no", "straightened": "no", "arcStruck": "no" }
              },
              "coneRemoval": { "method": "pressedCold", "maximumTemperature": { "value": 20, "unit": "degC" } },
              "inspection": {
                "inspectedOn": "2026-03-11",
                "surfaceMethod": "visualOnly",
                "indications": [],
                "visual": { "cracks": "no", "corrosion": "none", "surface": "oldResin" }
              },
              "intended": {
                "rope": {
                  "diameter": { "value": 20, "unit": "mm" },
                  "construction": "6x36",
                  "core": "iwrc",
                  "grade": 1770,
                  "finish": "bright",
                  "certificate": { "breakingForce": { "value": 252, "unit": "kN" } }
                },
                "ratedLoad": { "value": 50, "unit": "kN" }
              }
            }
            """),
        new("withdraw", "A weld, a linear indication, ears spread, cone burnt out: withdrawn", """
            {
              "reference": "SOCK-34",
              "assessedOn": "2026-03-12",
              "ruleSet": "general",
              "socket": {
                "id": "SOCK-34",
                "type": "open",
                "material": { "known": "yes", "yieldStrength": { "value": 355, "unit": "MPa" }, "tensileStrength": { "value": 570, "unit": "MPa" } },
                "ratedLoad": { "value": 50, "unit": "kN" },
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
                },
                "measured": {
                  "stations": [
                    {
                      "fromSmallEnd": { "value": 0, "unit": "mm" },
                      "diameters": [{ "value": 23.4, "unit": "mm" }, { "value": 24.1, "unit": "mm" }]
                    },
                    {
                      "fromSmallEnd": { "value": 50, "unit": "mm" },
                      "diameters": [{ "value": 34.1, "unit": "mm" }, { "value": 34.2, "unit": "mm" }]
                    },
                    {
                      "fromSmallEnd": { "value": 100, "unit": "mm" },
                      "diameters": [{ "value": 45.1, "unit": "mm" }, { "value": 45.1, "unit": "mm" }]
                    }
                  ],
                  "outerDiameter": { "value": 69.8, "unit": "mm" },
                  "pinDiameter": { "value": 34.9, "unit": "mm" },
                  "pinHoleDiameters": [{ "value": 36.8, "unit": "mm" }, { "value": 36.6, "unit": "mm" }],
                  "earThickness": { "value": 15.9, "unit": "mm" },
                  "earGap": { "value": 42.5, "unit": "mm" },
                  "pitDepth": { "value": 0, "unit": "mm" }
                },
                "history": { "pours": 2, "lastMedium": "resin", "overloaded": "no", "welded": "yes", "straightened": "no", "arcStruck": "no" }
              },
              "limits": {
                "boreGrowth": { "value": 2, "unit": "%" },
                "ovality": { "value": 2, "unit": "%" },
                "pinHoleGrowth": { "value": 5, "unit": "%" },
                "earSpread": { "value": 3, "unit": "%" },
                "pitDepth": { "value": 0.8, "unit": "mm" },
                "source": "operator's rule 7"
              },
              "coneRemoval": { "method": "burntOut" },
              "inspection": {
                "inspectedOn": "2026-03-11",
                "surfaceMethod": "magneticParticle",
                "indications": [{ "place": "ears", "kind": "linear", "length": { "value": 6, "unit": "mm" } }],
                "visual": { "cracks": "no", "corrosion": "none", "surface": "clean" }
              },
              "intended": {
                "rope": {
                  "diameter": { "value": 20, "unit": "mm" },
                  "construction": "6x36",
                  "core": "iwrc",
                  "grade": 1770,
                  "finish": "bright",
                  "certificate": { "breakingForce": { "value": 252, "unit": "kN" } }
                },
                "ratedLoad": { "value": 50, "unit": "kN" }
              }
            }
            """),
    ];
}
