using CalcService.Api.OpenApi;

namespace CalcService.Api.Capabilities.Curing;

/// <summary>Requests that run as they stand: an invented yard with an invented compound.</summary>
public static class CureScheduleExamples
{
    public static IReadOnlyList<RequestExample> All { get; } =
    [
        new("table", "Two ends in a hall, as a table on the wall would have it: the compound follows the air", """
            {
              "reference": "JOB-0418",
              "compound": { "profile": "demonstration" },
              "mixedAt": "2026-03-12T13:00:00+01:00",
              "thermalModel": "uniform",
              "conditions": {
                "air": { "constant": { "value": 18, "unit": "degC" } },
                "steelTemperature": { "value": 18, "unit": "degC" },
                "compoundTemperature": { "value": 18, "unit": "degC" }
              },
              "ends": [
                {
                  "id": "B",
                  "quantity": 2,
                  "rope": { "diameter": { "value": 1, "unit": "in" }, "construction": "6x36", "core": "iwrc", "grade": 1770, "finish": "galvanized" },
                  "socket": {
                    "basket": {
                      "smallEndDiameter": { "value": 29, "unit": "mm" },
                      "largeEndDiameter": { "value": 58, "unit": "mm" },
                      "length": { "value": 130, "unit": "mm" }
                    }
                  }
                }
              ],
              "pourTime": { "value": 8, "unit": "min" }
            }
            """),
        new("schedule", "A pendant end poured on a cold day, with the forecast until the evening", """
            {
              "reference": "JOB-0417",
              "compound": { "profile": "demonstration" },
              "doses": 0,
              "mixedAt": "2026-03-12T08:30:00+01:00",
              "thermalModel": "coupled",
              "conditions": {
                "air": {
                  "series": [
                    { "at": "2026-03-12T08:00:00+01:00", "temperature": { "value": 12, "unit": "degC" } },
                    { "at": "2026-03-12T20:00:00+01:00", "temperature": { "value": 3, "unit": "degC" } }
                  ]
                },
                "steelTemperature": { "value": 8, "unit": "degC" },
                "compoundTemperature": { "value": 18, "unit": "degC" }
              },
              "ends": [
                {
                  "id": "A",
                  "quantity": 1,
                  "rope": { "diameter": { "value": 20, "unit": "mm" }, "construction": "6x36", "core": "iwrc", "grade": 1770, "finish": "bright" },
                  "socket": {
                    "basket": {
                      "smallEndDiameter": { "value": 23, "unit": "mm" },
                      "largeEndDiameter": { "value": 45, "unit": "mm" },
                      "length": { "value": 100, "unit": "mm" }
                    },
                    "outerDiameter": { "value": 70, "unit": "mm" }
                  }
                }
              ],
              "observations": [ { "end": "A", "gelAt": "2026-03-12T09:31:00+01:00", "seenIn": "mouth" } ]
            }
            """),
        new("shop", "Six ends through a shop of two people in two shifts, with a night between them", """
            {
              "reference": "JOB-0421",
              "compound": { "profile": "demonstration" },
              "mixedAt": "2026-03-16T15:00:00+01:00",
              "thermalModel": "uniform",
              "conditions": {
                "air": {
                  "series": [
                    { "at": "2026-03-16T14:00:00+01:00", "temperature": { "value": 16, "unit": "degC" } },
                    { "at": "2026-03-17T05:00:00+01:00", "temperature": { "value": 8, "unit": "degC" } },
                    { "at": "2026-03-17T15:00:00+01:00", "temperature": { "value": 17, "unit": "degC" } },
                    { "at": "2026-03-18T05:00:00+01:00", "temperature": { "value": 9, "unit": "degC" } }
                  ]
                },
                "steelTemperature": { "value": 15, "unit": "degC" },
                "compoundTemperature": { "value": 18, "unit": "degC" }
              },
              "ends": [
                {
                  "id": "A",
                  "quantity": 6,
                  "rope": { "diameter": { "value": 20, "unit": "mm" }, "construction": "6x36", "core": "iwrc", "grade": 1770, "finish": "bright" },
                  "socket": {
                    "basket": {
                      "smallEndDiameter": { "value": 23, "unit": "mm" },
                      "largeEndDiameter": { "value": 45, "unit": "mm" },
                      "length": { "value": 100, "unit": "mm" }
                    }
                  }
                }
              ],
              "pourTime": { "value": 6, "unit": "min" },
              "shop": {
                "crew": 2,
                "stands": 4,
                "mixers": 1,
                "testBeds": 1,
                "shifts": [
                  { "from": "2026-03-16T14:00:00+01:00", "to": "2026-03-16T22:00:00+01:00" },
                  { "from": "2026-03-17T06:00:00+01:00", "to": "2026-03-17T14:00:00+01:00" }
                ],
                "taskTimes": {
                  "prepare": { "value": 40, "unit": "min" },
                  "position": { "value": 15, "unit": "min" },
                  "proof": { "value": 20, "unit": "min" },
                  "record": { "value": 10, "unit": "min" }
                }
              }
            }
            """),
        new("stop", "A dose that the sheet does not have for this cold, and a filling that lasts past the gel", """
            {
              "reference": "JOB-0419",
              "compound": { "profile": "demonstration" },
              "doses": 5,
              "mixedAt": "2026-03-13T07:00:00+01:00",
              "thermalModel": "uniform",
              "conditions": {
                "air": { "constant": { "value": 9, "unit": "degC" } },
                "steelTemperature": { "value": 8, "unit": "degC" },
                "compoundTemperature": { "value": 18, "unit": "degC" }
              },
              "ends": [
                {
                  "id": "A",
                  "quantity": 6,
                  "rope": { "diameter": { "value": 20, "unit": "mm" }, "construction": "6x36", "core": "iwrc", "grade": 1770, "finish": "bright" },
                  "socket": {
                    "basket": {
                      "smallEndDiameter": { "value": 23, "unit": "mm" },
                      "largeEndDiameter": { "value": 45, "unit": "mm" },
                      "length": { "value": 100, "unit": "mm" }
                    }
                  }
                }
              ],
              "pourTime": { "value": 15, "unit": "min" }
            }
            """),
        new("missing", "Nobody measured the steel, and the forecast ends before the cone is cured: undetermined", """
            {
              "reference": "JOB-0420",
              "compound": { "profile": "demonstration" },
              "doses": 0,
              "mixedAt": "2026-03-14T16:00:00+01:00",
              "thermalModel": "uniform",
              "conditions": {
                "air": {
                  "series": [
                    { "at": "2026-03-14T15:00:00+01:00", "temperature": { "value": 11, "unit": "degC" } },
                    { "at": "2026-03-14T18:00:00+01:00", "temperature": { "value": 7, "unit": "degC" } }
                  ]
                },
                "compoundTemperature": { "value": 18, "unit": "degC" }
              },
              "ends": [
                {
                  "id": "A",
                  "quantity": 1,
                  "rope": { "diameter": { "value": 20, "unit": "mm" }, "construction": "6x36", "core": "iwrc", "grade": 1770, "finish": "bright" },
                  "socket": {
                    "basket": {
                      "smallEndDiameter": { "value": 23, "unit": "mm" },
                      "largeEndDiameter": { "value": 45, "unit": "mm" },
                      "length": { "value": 100, "unit": "mm" }
                    }
                  }
                }
              ]
            }
            """),
    ];
}
