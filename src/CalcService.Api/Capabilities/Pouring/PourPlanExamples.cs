using CalcService.Api.OpenApi;

namespace CalcService.Api.Capabilities.Pouring;

/// <summary>Requests that run as they stand: an invented yard with an invented compound.</summary>
public static class PourPlanExamples
{
    public static IReadOnlyList<RequestExample> All { get; } =
    [
        new("plan", "Six pendant ends on a cool morning, kits on the shelf, everything said", """
            {
              "reference": "JOB-0417",
              "pourAt": "2026-03-12T08:30:00+01:00",
              "units": "metric",
              "compound": { "profile": "demonstration" },
              "conditions": {
                "airTemperature": { "value": 9, "unit": "degC" },
                "steelTemperature": { "value": 8, "unit": "degC" },
                "compoundTemperature": { "value": 18, "unit": "degC" },
                "relativeHumidity": { "value": 72, "unit": "%" },
                "ignitionSource": "no",
                "place": "indoors",
                "workplace": "generalIndustry",
                "jurisdiction": "US",
                "room": { "volume": { "value": 180, "unit": "m3" }, "airChanges": { "value": 6, "unit": "1/h" } }
              },
              "ends": [
                {
                  "id": "A",
                  "quantity": 6,
                  "rope": { "diameter": { "value": 20, "unit": "mm" }, "construction": "6x36", "core": "iwrc", "grade": 1770, "finish": "bright",
                    "plasticFilled": "no", "lubricant": "light" },
                  "socket": {
                    "basket": {
                      "smallEndDiameter": { "value": 23, "unit": "mm" },
                      "largeEndDiameter": { "value": 45, "unit": "mm" },
                      "length": { "value": 100, "unit": "mm" },
                      "tolerance": { "value": 0.5, "unit": "mm" },
                      "sizesFrom": "measured"
                    },
                    "material": { "kind": "castSteel" },
                    "breakingForce": { "value": 310, "unit": "kN" },
                    "bore": "clean"
                  },
                  "cleaner": "solvent",
                  "driedAt": "2026-03-12T08:00:00+01:00",
                  "tilt": { "value": 0, "unit": "deg" },
                  "straightBelow": { "value": 1, "unit": "m" }
                }
              ],
              "stock": [
                { "lot": "A-118", "kit": "small", "count": 4, "expiresOn": "2027-01-31", "state": "sealed", "quarantined": "no",
                    "storage": { "lowest": { "value": 8, "unit": "degC" }, "highest": { "value": 22, "unit": "degC" } } }
              ],
              "crew": { "mixers": 1, "pourTime": { "value": 2, "unit": "min" } },
              "allowance": { "value": 10, "unit": "%" },
              "objective": "leastCost"
            }
            """),
        new("care", "Air and steel ask for different doses, and the shelf is short", """
            {
              "reference": "JOB-0418",
              "pourAt": "2026-03-13T07:00:00+01:00",
              "compound": { "profile": "demonstration" },
              "conditions": {
                "airTemperature": { "value": 9, "unit": "degC" },
                "steelTemperature": { "value": 5, "unit": "degC" },
                "compoundTemperature": { "value": 16, "unit": "degC" },
                "relativeHumidity": { "value": 55, "unit": "%" },
                "ignitionSource": "no",
                "place": "indoors",
                "workplace": "generalIndustry",
                "jurisdiction": "US",
                "room": { "volume": { "value": 180, "unit": "m3" }, "airChanges": { "value": 6, "unit": "1/h" } }
              },
              "ends": [
                {
                  "id": "boom-pendant",
                  "quantity": 2,
                  "rope": {
                    "diameter": { "value": 1, "unit": "in" },
                    "construction": "6x36",
                    "core": "iwrc",
                    "grade": 1960,
                    "finish": "galvanized",
                    "plasticFilled": "no",
                    "lubricant": "light",
                    "certificate": { "number": "C-2207", "breakingForce": { "value": 460, "unit": "kN" } }
                  },
                  "socket": {
                    "basket": {
                      "smallEndDiameter": { "value": 29, "unit": "mm" },
                      "largeEndDiameter": { "value": 58, "unit": "mm" },
                      "length": { "value": 130, "unit": "mm" },
                      "tolerance": { "value": 0.5, "unit": "mm" },
                      "sizesFrom": "measured"
                    },
                    "material": { "kind": "castSteel" },
                    "breakingForce": { "value": 560, "unit": "kN" },
                    "bore": "clean"
                  },
                  "cleaner": "solvent",
                  "driedAt": "2026-03-13T06:40:00+01:00",
                  "tilt": { "value": 0, "unit": "deg" },
                  "straightBelow": { "value": 1, "unit": "m" }
                }
              ],
              "stock": [
                { "lot": "A-118", "kit": "small", "count": 1, "expiresOn": "2027-01-31", "state": "sealed", "quarantined": "no",
                    "storage": { "lowest": { "value": 8, "unit": "degC" }, "highest": { "value": 22, "unit": "degC" } } }
              ],
              "crew": { "mixers": 1, "pourTime": { "value": 2, "unit": "min" } }
            }
            """),
        new("stop", "Damp air: the cold steel is wet, and the only lot on the shelf ran out", """
            {
              "reference": "JOB-0419",
              "pourAt": "2026-03-14T07:00:00+01:00",
              "compound": { "profile": "demonstration" },
              "conditions": {
                "airTemperature": { "value": 9, "unit": "degC" },
                "steelTemperature": { "value": 8, "unit": "degC" },
                "compoundTemperature": { "value": 18, "unit": "degC" },
                "relativeHumidity": { "value": 97, "unit": "%" },
                "ignitionSource": "no",
                "place": "indoors",
                "workplace": "generalIndustry",
                "jurisdiction": "US",
                "room": { "volume": { "value": 180, "unit": "m3" }, "airChanges": { "value": 6, "unit": "1/h" } }
              },
              "ends": [
                {
                  "id": "A",
                  "quantity": 1,
                  "rope": { "diameter": { "value": 20, "unit": "mm" }, "construction": "6x36", "core": "iwrc", "grade": 1770, "finish": "bright",
                    "plasticFilled": "no", "lubricant": "light" },
                  "socket": {
                    "basket": {
                      "smallEndDiameter": { "value": 23, "unit": "mm" },
                      "largeEndDiameter": { "value": 45, "unit": "mm" },
                      "length": { "value": 100, "unit": "mm" },
                      "tolerance": { "value": 0.5, "unit": "mm" },
                      "sizesFrom": "measured"
                    },
                    "material": { "kind": "castSteel" },
                    "breakingForce": { "value": 310, "unit": "kN" },
                    "bore": "clean"
                  },
                  "cleaner": "solvent",
                  "driedAt": "2026-03-14T06:40:00+01:00",
                  "tilt": { "value": 0, "unit": "deg" },
                  "straightBelow": { "value": 1, "unit": "m" }
                }
              ],
              "stock": [
                { "lot": "A-097", "kit": "medium", "count": 2, "expiresOn": "2026-02-28", "state": "sealed", "quarantined": "no",
                    "storage": { "lowest": { "value": 8, "unit": "degC" }, "highest": { "value": 22, "unit": "degC" } } }
              ],
              "crew": { "mixers": 1, "pourTime": { "value": 2, "unit": "min" } }
            }
            """),
        new("missing", "Nobody measured the steel or looked into the bore: undetermined", """
            {
              "reference": "JOB-0420",
              "pourAt": "2026-03-14T07:00:00+01:00",
              "compound": { "profile": "demonstration" },
              "conditions": {
                "airTemperature": { "value": 9, "unit": "degC" },
                "compoundTemperature": { "value": 18, "unit": "degC" },
                "relativeHumidity": { "value": 60, "unit": "%" },
                "ignitionSource": "no",
                "place": "indoors",
                "workplace": "generalIndustry",
                "jurisdiction": "US",
                "room": { "volume": { "value": 180, "unit": "m3" }, "airChanges": { "value": 6, "unit": "1/h" } }
              },
              "ends": [
                {
                  "id": "A",
                  "quantity": 1,
                  "rope": { "diameter": { "value": 20, "unit": "mm" }, "construction": "6x36", "core": "iwrc", "grade": 1770, "finish": "bright",
                    "plasticFilled": "no", "lubricant": "light" },
                  "socket": {
                    "basket": {
                      "smallEndDiameter": { "value": 23, "unit": "mm" },
                      "largeEndDiameter": { "value": 45, "unit": "mm" },
                      "length": { "value": 100, "unit": "mm" },
                      "tolerance": { "value": 0.5, "unit": "mm" },
                      "sizesFrom": "measured"
                    },
                    "material": { "kind": "castSteel" },
                    "breakingForce": { "value": 310, "unit": "kN" }
                  },
                  "cleaner": "solvent",
                  "driedAt": "2026-03-14T06:40:00+01:00",
                  "tilt": { "value": 0, "unit": "deg" },
                  "straightBelow": { "value": 1, "unit": "m" }
                }
              ],
              "stock": [
                { "lot": "A-118", "kit": "small", "count": 4, "expiresOn": "2027-01-31", "state": "sealed", "quarantined": "no",
                    "storage": { "lowest": { "value": 8, "unit": "degC" }, "highest": { "value": 22, "unit": "degC" } } }
              ],
              "crew": { "mixers": 1, "pourTime": { "value": 2, "unit": "min" } }
            }
            """),
        new("ahead", "Planned a week ahead: what the day itself makes is asked for at its hold point", """
            {
              "reference": "JOB-0421",
              "purpose": "plan",
              "pourAt": "2026-03-20T08:00:00+01:00",
              "compound": { "profile": "demonstration" },
              "conditions": { "room": { "volume": { "value": 180, "unit": "m3" }, "airChanges": { "value": 6, "unit": "1/h" } } },
              "ends": [
                {
                  "id": "A",
                  "quantity": 6,
                  "rope": { "diameter": { "value": 20, "unit": "mm" }, "construction": "6x36", "core": "iwrc", "grade": 1770, "finish": "bright",
                    "plasticFilled": "no", "lubricant": "light" },
                  "socket": {
                    "basket": {
                      "smallEndDiameter": { "value": 23, "unit": "mm" },
                      "largeEndDiameter": { "value": 45, "unit": "mm" },
                      "length": { "value": 100, "unit": "mm" },
                      "tolerance": { "value": 0.5, "unit": "mm" },
                      "sizesFrom": "measured"
                    },
                    "material": { "kind": "castSteel" },
                    "breakingForce": { "value": 310, "unit": "kN" }
                  }
                }
              ],
              "stock": [ { "lot": "A-118", "kit": "small", "count": 4, "expiresOn": "2027-01-31" } ],
              "crew": { "mixers": 1, "pourTime": { "value": 2, "unit": "min" } }
            }
            """),
        new("quote", "A quote with the caller's prices and rates, no stock", """
            {
              "reference": "Q-2032",
              "purpose": "quote",
              "pourAt": "2026-04-20T08:00:00+02:00",
              "compound": { "profile": "demonstration" },
              "conditions": {
                "airTemperature": { "value": 12, "unit": "degC" },
                "steelTemperature": { "value": 12, "unit": "degC" },
                "compoundTemperature": { "value": 15, "unit": "degC" },
                "relativeHumidity": { "value": 50, "unit": "%" },
                "workplace": "generalIndustry",
                "jurisdiction": "US",
                "room": { "volume": { "value": 400, "unit": "m3" }, "airChanges": { "value": 6, "unit": "1/h" } }
              },
              "ends": [
                {
                  "id": "A",
                  "quantity": 12,
                  "rope": { "diameter": { "value": 20, "unit": "mm" }, "construction": "6x36", "core": "iwrc", "grade": 1770, "finish": "bright" },
                  "socket": {
                    "basket": {
                      "smallEndDiameter": { "value": 23, "unit": "mm" },
                      "largeEndDiameter": { "value": 45, "unit": "mm" },
                      "length": { "value": 100, "unit": "mm" },
                      "tolerance": { "value": 0.5, "unit": "mm" }
                    }
                  }
                }
              ],
              "crew": { "mixers": 1, "pourTime": { "value": 1, "unit": "min" } },
              "quote": {
                "currency": "EUR",
                "priceDate": "2026-04-01",
                "prices": {
                  "dose": 2.5,
                  "seizingWire": { "amount": 12, "per": { "value": 50, "unit": "m" } },
                  "seal": { "amount": 8, "per": { "value": 1, "unit": "L" } },
                  "cleaner": { "amount": 30, "per": { "value": 5, "unit": "L" } }
                },
                "hourlyRate": 60,
                "taskRates": { "waitForGel": 0 },
                "taskTimes": { "cutAndOpen": { "value": 25, "unit": "min" }, "proofLoad": { "value": 20, "unit": "min" } },
                "seizing": { "wireDiameter": { "value": 1.5, "unit": "mm" } },
                "spareKits": { "share": { "value": 10, "unit": "%" } },
                "leadTime": { "value": 5, "unit": "d" }
              }
            }
            """),
    ];
}
