using CalcService.Api.OpenApi;

namespace CalcService.Api.Capabilities.Audits;

/// <summary>Requests that run as they stand: invented records of an invented job.</summary>
public static class RecordAuditExamples
{
    /// <summary>The rope with its certificate.</summary>
    private const string Rope = """
        "rope": {
          "diameter": { "value": 20, "unit": "mm" },
          "construction": "6x36",
          "core": "iwrc",
          "grade": 1770,
          "finish": "bright",
          "certificate": { "number": "C-1190", "breakingForce": { "value": 252, "unit": "kN" } }
        }
        """;

    /// <summary>The socket as it was bought.</summary>
    private const string Socket = """
        "socket": {
          "id": "SOCK-31",
          "certificate": "S-88213",
          "heatNumber": "H-4471",
          "basket": {
            "smallEndDiameter": { "value": 23, "unit": "mm" },
            "largeEndDiameter": { "value": 45, "unit": "mm" },
            "length": { "value": 100, "unit": "mm" },
            "tolerance": { "value": 0.5, "unit": "mm" }
          },
          "outerAtSmallEnd": { "value": 40, "unit": "mm" },
          "outerAtMouth": { "value": 70, "unit": "mm" },
          "material": { "kind": "castSteel" },
          "breakingForce": { "value": 320, "unit": "kN" },
          "proofRating": { "value": 130, "unit": "kN" }
        }
        """;

    /// <summary>Air, steel and compound as they were read.</summary>
    private const string Conditions = """
        "conditions": {
          "air": {
            "series": [
              { "at": "2026-03-12T08:00:00+01:00", "temperature": { "value": 15, "unit": "degC" } },
              { "at": "2026-03-12T20:00:00+01:00", "temperature": { "value": 12, "unit": "degC" } },
              { "at": "2026-03-13T09:00:00+01:00", "temperature": { "value": 10, "unit": "degC" } }
            ]
          },
          "steelTemperature": { "value": 14, "unit": "degC" },
          "compoundTemperature": { "value": 18, "unit": "degC" },
          "relativeHumidity": { "value": 60, "unit": "%" },
          "ignitionSource": "no"
        }
        """;

    public static IReadOnlyList<RequestExample> All { get; } =
    [
        new("accepted", "A whole record, computed with the demonstration compound: accepted with that remark", $$"""
            {
              "reference": "TR-0417-A1",
              "auditedOn": "2026-03-20",
              "compound": { "profile": "demonstration" },
              "record": { "number": "TR-0417-A1", "end": "A1" },
              {{Rope}},
              {{Socket}},
              {{Conditions}},
              "mix": {
                "kits": [{ "lot": "A-118", "kit": "small", "count": 1, "expiresOn": "2027-01-31", "state": "sealed", "quarantined": "no" }],
                "dosesPerKit": 0,
                "baskets": 3,
                "volume": { "value": 76, "unit": "mL" }
              },
              "times": {
                "preparedAt": "2026-03-12T07:50:00+01:00",
                "readAt": "2026-03-12T08:20:00+01:00",
                "mixedAt": "2026-03-12T08:30:00+01:00",
                "pouredAt": "2026-03-12T08:42:00+01:00",
                "gelAt": "2026-03-12T09:05:00+01:00",
                "movedAt": "2026-03-12T10:30:00+01:00",
                "releasedAt": "2026-03-13T08:00:00+01:00",
                "proofAt": "2026-03-13T08:40:00+01:00",
                "inServiceAt": "2026-03-16T07:00:00+01:00"
              },
              "gelSeenIn": "cone",
              "hardness": { "method": "indenter of the sheet", "value": { "value": 45, "unit": "1" }, "readAt": "lip" },
              "proof": {
                "asked": "yes",
                "ratedLoad": { "value": 50, "unit": "kN" },
                "askedLoad": { "value": 100, "unit": "kN" },
                "load": { "value": 98, "unit": "kN" },
                "seating": { "value": 1.8, "unit": "mm" },
                "seatingReadAt": "mouth",
                "readUnderLoad": "yes",
                "wireSlip": "no",
                "creepUnderHold": "no",
                "cracks": "no",
                "asymmetry": "no"
              },
              "people": [
                { "role": "preparer", "name": "R. Vos", "qualifiedUntil": "2026-12-31" },
                { "role": "mixer", "name": "R. Vos", "qualifiedUntil": "2026-12-31" },
                { "role": "pourer", "name": "K. Lind", "qualifiedUntil": "2027-06-30" },
                { "role": "inspector", "name": "M. Arco", "qualifiedUntil": "2027-03-31" },
                { "role": "proofTester", "name": "M. Arco", "qualifiedUntil": "2027-03-31" }
              ],
              "looks": {
                "bore": "pass",
                "broom": "pass",
                "core": "pass",
                "alignment": "pass",
                "seal": "pass",
                "fill": "pass",
                "surface": "pass",
                "afterLoad": "pass"
              }
            }
            """),
        new("remarks", "The air read once, hardness at the mouth only: accepted with remarks", $$"""
            {
              "reference": "TR-0417-A2",
              "auditedOn": "2026-03-20",
              "compound": { "profile": "demonstration" },
              "record": { "number": "TR-0417-A2", "end": "A2" },
              {{Rope}},
              {{Socket}},
              "conditions": {
                "air": { "constant": { "value": 15, "unit": "degC" } },
                "steelTemperature": { "value": 14, "unit": "degC" },
                "compoundTemperature": { "value": 18, "unit": "degC" },
                "relativeHumidity": { "value": 60, "unit": "%" },
                "ignitionSource": "no"
              },
              "mix": {
                "kits": [{ "lot": "A-118", "kit": "small", "count": 1, "expiresOn": "2027-01-31", "state": "sealed", "quarantined": "no" }],
                "dosesPerKit": 0,
                "baskets": 3,
                "volume": { "value": 76, "unit": "mL" }
              },
              "times": {
                "preparedAt": "2026-03-12T07:50:00+01:00",
                "readAt": "2026-03-12T08:20:00+01:00",
                "mixedAt": "2026-03-12T08:30:00+01:00",
                "pouredAt": "2026-03-12T08:42:00+01:00",
                "gelAt": "2026-03-12T09:05:00+01:00",
                "movedAt": "2026-03-12T10:30:00+01:00",
                "releasedAt": "2026-03-13T08:00:00+01:00",
                "proofAt": "2026-03-13T08:40:00+01:00",
                "inServiceAt": "2026-03-16T07:00:00+01:00"
              },
              "gelSeenIn": "cone",
              "hardness": { "method": "indenter of the sheet", "value": { "value": 45, "unit": "1" }, "readAt": "mouth" },
              "proof": {
                "asked": "yes",
                "ratedLoad": { "value": 50, "unit": "kN" },
                "askedLoad": { "value": 100, "unit": "kN" },
                "load": { "value": 98, "unit": "kN" },
                "seating": { "value": 1.8, "unit": "mm" },
                "seatingReadAt": "mouth",
                "readUnderLoad": "yes",
                "wireSlip": "no",
                "creepUnderHold": "no",
                "cracks": "no",
                "asymmetry": "no"
              },
              "people": [
                { "role": "preparer", "name": "R. Vos", "qualifiedUntil": "2026-12-31" },
                { "role": "mixer", "name": "R. Vos", "qualifiedUntil": "2026-12-31" },
                { "role": "pourer", "name": "K. Lind", "qualifiedUntil": "2027-06-30" },
                { "role": "inspector", "name": "M. Arco", "qualifiedUntil": "2027-03-31" },
                { "role": "proofTester", "name": "M. Arco", "qualifiedUntil": "2027-03-31" }
              ],
              "looks": {
                "bore": "pass",
                "broom": "pass",
                "core": "pass",
                "alignment": "pass",
                "seal": "pass",
                "fill": "pass",
                "surface": "pass",
                "afterLoad": "pass"
              }
            }
            """),
        new("incomplete", "A record without certificate, steel temperature, gel, first move, one look and some names: incomplete", $$"""
            {
              "reference": "TR-0417-A2",
              "auditedOn": "2026-03-20",
              "compound": { "profile": "demonstration" },
              "record": { "number": "TR-0417-A2", "end": "A2" },
              "rope": {
                "diameter": { "value": 20, "unit": "mm" },
                "construction": "6x36",
                "core": "iwrc",
                "grade": 1770,
                "finish": "bright"
              },
              {{Socket}},
              "conditions": {
                "air": { "constant": { "value": 15, "unit": "degC" } },
                "compoundTemperature": { "value": 18, "unit": "degC" },
                "relativeHumidity": { "value": 60, "unit": "%" },
                "ignitionSource": "no"
              },
              "mix": {
                "kits": [{ "lot": "A-118", "kit": "small", "count": 1, "resinExpiresOn": "2027-01-31" }],
                "dosesPerKit": 0,
                "baskets": 3,
                "volume": { "value": 76, "unit": "mL" }
              },
              "times": {
                "preparedAt": "2026-03-12T07:50:00+01:00",
                "readAt": "2026-03-12T08:20:00+01:00",
                "mixedAt": "2026-03-12T08:30:00+01:00",
                "pouredAt": "2026-03-12T08:42:00+01:00",
                "releasedAt": "2026-03-13T08:00:00+01:00",
                "proofAt": "2026-03-13T08:40:00+01:00",
                "inServiceAt": "2026-03-16T07:00:00+01:00"
              },
              "proof": {
                "asked": "yes",
                "ratedLoad": { "value": 50, "unit": "kN" },
                "askedLoad": { "value": 100, "unit": "kN" },
                "load": { "value": 98, "unit": "kN" },
                "seatingReadAt": "mouth",
                "readUnderLoad": "yes",
                "wireSlip": "no",
                "creepUnderHold": "no",
                "cracks": "no",
                "asymmetry": "no"
              },
              "people": [{ "role": "mixer", "name": "R. Vos" }],
              "looks": {
                "bore": "pass",
                "broom": "pass",
                "core": "pass",
                "alignment": "pass",
                "fill": "pass",
                "surface": "pass",
                "afterLoad": "pass"
              }
            }
            """),
        new("refused", "An opened lot past its date, a dose that the sheet has not, poured late, moved before gel, loaded too soon: refused", $$"""
            {
              "reference": "TR-0417-A3",
              "auditedOn": "2026-03-20",
              "compound": { "profile": "demonstration" },
              "record": { "number": "TR-0417-A3", "end": "A3" },
              {{Rope}},
              {{Socket}},
              {{Conditions}},
              "mix": {
                "kits": [{ "lot": "A-091", "kit": "small", "count": 1, "expiresOn": "2026-02-28", "state": "opened" }],
                "dosesPerKit": 2,
                "baskets": 3,
                "volume": { "value": 76, "unit": "mL" }
              },
              "times": {
                "preparedAt": "2026-03-12T07:50:00+01:00",
                "readAt": "2026-03-12T08:20:00+01:00",
                "mixedAt": "2026-03-12T08:30:00+01:00",
                "pouredAt": "2026-03-12T09:10:00+01:00",
                "gelAt": "2026-03-12T09:20:00+01:00",
                "movedAt": "2026-03-12T09:15:00+01:00",
                "releasedAt": "2026-03-12T09:40:00+01:00",
                "proofAt": "2026-03-12T10:00:00+01:00",
                "inServiceAt": "2026-03-16T07:00:00+01:00"
              },
              "gelSeenIn": "cone",
              "hardness": { "method": "indenter of the sheet", "value": { "value": 45, "unit": "1" }, "readAt": "lip" },
              "proof": {
                "asked": "yes",
                "ratedLoad": { "value": 50, "unit": "kN" },
                "askedLoad": { "value": 100, "unit": "kN" },
                "load": { "value": 90, "unit": "kN" },
                "seating": { "value": 1.8, "unit": "mm" },
                "seatingReadAt": "mouth",
                "readUnderLoad": "yes",
                "wireSlip": "yes",
                "creepUnderHold": "no",
                "cracks": "no",
                "asymmetry": "no"
              },
              "people": [
                { "role": "preparer", "name": "R. Vos", "qualifiedUntil": "2026-12-31" },
                { "role": "mixer", "name": "R. Vos", "qualifiedUntil": "2026-01-31" },
                { "role": "pourer", "name": "K. Lind", "qualifiedUntil": "2027-06-30" },
                { "role": "inspector", "name": "M. Arco", "qualifiedUntil": "2027-03-31" },
                { "role": "proofTester", "name": "M. Arco", "qualifiedUntil": "2027-03-31" }
              ],
              "looks": {
                "bore": "pass",
                "broom": "pass",
                "core": "pass",
                "alignment": "pass",
                "seal": "pass",
                "fill": "fail",
                "surface": "pass",
                "afterLoad": "pass"
              }
            }
            """),
    ];
}
