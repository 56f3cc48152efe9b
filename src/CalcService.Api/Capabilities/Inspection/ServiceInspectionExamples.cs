using CalcService.Api.OpenApi;

namespace CalcService.Api.Capabilities.Inspection;

/// <summary>Requests that run as they stand: invented ends with an invented compound.</summary>
public static class ServiceInspectionExamples
{
    public static IReadOnlyList<RequestExample> All { get; } =
    [
        new("serve", "A crane's hoist rope with two broken wires, everything looked at", """
            {
              "reference": "CRANE-4-HOIST",
              "assessedOn": "2026-03-12",
              "ruleSet": "construction-crane",
              "compound": { "profile": "demonstration" },
              "rope": {
                "diameter": { "value": 20, "unit": "mm" }, "construction": "6x36", "core": "iwrc", "grade": 1770, "finish": "bright",
                "function": "running", "layLength": { "value": 130, "unit": "mm" }, "measuredDiameter": { "value": 19.6, "unit": "mm" }
              },
              "inspection": {
                "brokenWires": [ { "count": 2, "place": "lay", "fromMouth": { "value": 3.5, "unit": "m" }, "inOneStrand": 1 } ],
                "coneMovement": "no", "rustBleed": "no", "bendAtMouth": "no", "cracks": "no", "improperlyApplied": "no",
                "corrosion": "none", "wear": "none", "lubricant": "good",
                "highestTemperature": { "value": 45, "unit": "degC" }, "chemicals": [],
                "socketedOn": "2024-06-03"
              }
            }
            """),
        new("withdraw", "A pendant with two broken wires at its socket: cut and socket again", """
            {
              "reference": "PENDANT-7",
              "assessedOn": "2026-03-12",
              "ruleSet": "construction-crane",
              "compound": { "profile": "demonstration" },
              "rope": {
                "diameter": { "value": 28, "unit": "mm" }, "construction": "6x36", "core": "iwrc",
                "function": "pendant", "layLength": { "value": 180, "unit": "mm" }, "measuredDiameter": { "value": 27.6, "unit": "mm" }
              },
              "inspection": {
                "brokenWires": [ { "count": 2, "place": "mouth", "inOneStrand": 1 } ],
                "coneMovement": "no", "rustBleed": "yes", "bendAtMouth": "no", "cracks": "no", "improperlyApplied": "no",
                "corrosion": "light", "wear": "none", "lubricant": "dry",
                "highestTemperature": { "value": 40, "unit": "degC" }, "chemicals": [],
                "lengthLeft": { "value": 1.2, "unit": "m" }
              }
            }
            """),
        new("care", "A crane's pendant with rust on its surface and a dry rope: it serves, with care", """
            {
              "reference": "PENDANT-6",
              "assessedOn": "2026-03-12",
              "ruleSet": "construction-crane",
              "compound": { "profile": "demonstration" },
              "rope": {
                "diameter": { "value": 28, "unit": "mm" }, "construction": "6x36", "core": "iwrc",
                "function": "pendant", "layLength": { "value": 180, "unit": "mm" }, "measuredDiameter": { "value": 27.6, "unit": "mm" }
              },
              "inspection": {
                "brokenWires": [ { "count": 1, "place": "mouth", "inOneStrand": 1 } ],
                "coneMovement": "no", "rustBleed": "no", "bendAtMouth": "no", "cracks": "no", "improperlyApplied": "no",
                "corrosion": "light", "wear": "none", "lubricant": "dry",
                "highestTemperature": { "value": 40, "unit": "degC" }, "chemicals": []
              }
            }
            """),
        new("hold", "A mine's hoist rope without evidence for its attachment, its baseline lost: undetermined", """
            {
              "reference": "SHAFT-2",
              "assessedOn": "2026-03-12",
              "ruleSet": "mine-hoist",
              "compound": { "profile": "demonstration" },
              "rope": {
                "diameter": { "value": 1.25, "unit": "in" }, "construction": "6x19", "core": "fibre",
                "function": "running", "layLength": { "value": 8, "unit": "in" }, "measuredDiameter": { "value": 1.22, "unit": "in" }
              },
              "inspection": {
                "brokenWires": [],
                "coneMovement": "no", "rustBleed": "no", "bendAtMouth": "no", "cracks": "no", "improperlyApplied": "no",
                "corrosion": "none", "wear": "light", "lubricant": "good",
                "highestTemperature": { "value": 25, "unit": "degC" }, "chemicals": [],
                "drumTurnsLeft": { "value": 4, "unit": "1" }
              }
            }
            """),
        new("overdue", "A platform's rope socketed more than two years ago", """
            {
              "reference": "PLATFORM-1",
              "assessedOn": "2026-03-12",
              "ruleSet": "platform",
              "compound": { "profile": "demonstration" },
              "rope": {
                "diameter": { "value": 10, "unit": "mm" }, "construction": "6x19", "core": "iwrc",
                "function": "running", "layLength": { "value": 65, "unit": "mm" }, "measuredDiameter": { "value": 9.8, "unit": "mm" }
              },
              "inspection": {
                "brokenWires": [],
                "coneMovement": "no", "rustBleed": "no", "bendAtMouth": "no", "cracks": "no", "improperlyApplied": "no",
                "corrosion": "none", "wear": "none", "lubricant": "good",
                "highestTemperature": { "value": 35, "unit": "degC" }, "chemicals": [],
                "socketedOn": "2024-03-11", "drumTurnsLeft": { "value": 8, "unit": "1" }, "drumDiameter": { "value": 250, "unit": "mm" }
              }
            }
            """),
    ];
}
