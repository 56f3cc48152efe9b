using System.Text.Json.Nodes;
using CalcService.Api.OpenApi;
using CalcService.Api.Pages;
using CalcService.Engine.Findings;
using static CalcService.Api.Pages.NodeEdits;

namespace CalcService.Api.Capabilities.Audits.Findings;

/// <summary>A record with which nothing is wrong, and what raises each finding of its own. Record and compound are invented.</summary>
internal static class AuditExamples
{
    private const string Kit = "/mix/kits/0", Hardness = "/hardness", Times = "/times";

    private const string Sheet = """
        {
          "name": "invented for the findings",
          "kits": [ { "code": "small", "volume": { "value": 300, "unit": "mL" } } ],
          "pouring": { "minimum": { "value": 2, "unit": "degC" }, "maximum": { "value": 34, "unit": "degC" } },
          "doses": [ { "from": { "value": 2, "unit": "degC" }, "below": { "value": 34, "unit": "degC" }, "perKit": 0 } ],
          "gelTimes": [
            { "temperature": { "value": 5, "unit": "degC" }, "doses": 0, "time": { "value": 66, "unit": "min" } },
            { "temperature": { "value": 20, "unit": "degC" }, "doses": 0, "time": { "value": 24, "unit": "min" } } ],
          "potLife": { "value": 75, "unit": "%" },
          "fullStrength": [ { "temperature": { "value": 20, "unit": "degC" }, "afterGel": { "value": 90, "unit": "min" } } ],
          "hardness": { "method": "indenter", "minimum": { "value": 40, "unit": "1" } },
          "cured": { "modulus": { "value": 6000, "unit": "MPa" }, "poissonRatio": { "value": 0.25, "unit": "1" },
            "shrinkageAfterGel": { "value": 0.4, "unit": "%" } }
        }
        """;

    /// <summary>The whole record of the documentation with a compound that isn't the demonstration.</summary>
    public static OperationExamples Operation { get; } = new("/v1/record-audits",
        RequestExamples.Of("record-audits", "accepted").Json
            .With("/compound", new JsonObject { ["sheet"] = JsonNode.Parse(Sheet) }).With(Hardness + "/method", "indenter")
            .With("/proof/seating", Quantity(1.3, "mm")),
        [.. Held, .. Work, .. Load]);

    private static IEnumerable<FindingExample> Held =>
    [
        new("record-fact-missing", Severity.Unknown, "/conditions/steelTemperature",
            record => record.Without("/conditions/steelTemperature")),
        new("record-fact-missing", Severity.Caution, "/times/gelAt", record => record.Without("/times/gelAt").With("/purpose", "plan")),
        new("record-trail-missing", Severity.Caution, "/record/number", record => record.Without("/record/number")),
        new("record-times-contradict", Severity.Unknown, Times + "/mixedAt",
        record => record.With(Times + "/preparedAt", "2026-03-12T08:35:00+01:00")),
        new("record-time-after-audit", Severity.Unknown, Times + "/inServiceAt",
        record => record.With(Times + "/inServiceAt", "2026-03-21T07:00:00+01:00")),
        new("look-failed", Severity.Stop, "/looks/seal", record => record.With("/looks/seal", "fail")),
        new("qualification-expired", Severity.Caution, "/people/1/qualifiedUntil",
        record => record.With("/people/1/qualifiedUntil", "2026-02-28")),
    ];

    private static IEnumerable<FindingExample> Load =>
    [
        new("proof-above-half-breaking", Severity.Caution, "/proof/load", record => Loaded(record, 127)),
        new("proof-at-breaking-force", Severity.Stop, "/proof/load", record => Loaded(record, 300)),
        new("seating-contradicts", Severity.Unknown, "/proof/seating", record => record.With("/proof/seating", Quantity(-1, "mm"))),
        new("seated-through", Severity.Stop, "/proof/seating", record => record.With("/proof/seating", Quantity(50, "mm"))),
    ];

    private static JsonObject Loaded(JsonObject record, double loadKN) =>
        record.With("/proof/askedLoad", Quantity(loadKN, "kN")).With("/proof/load", Quantity(loadKN, "kN"))
        .With("/socket/proofRating", Quantity(400, "kN"));

    private static IEnumerable<FindingExample> Work =>
    [
        new("lot-expired-when-mixed", Severity.Stop, Kit + "/expiresOn", record => record.With(Kit + "/expiresOn", "2026-03-11")),
        new("dose-after-hardener", Severity.Stop, "/mix/doseAdded", record => record.With("/mix/doseAdded", "afterHardener")),
        new("poured-near-ignition", Severity.Caution, "/conditions/ignitionSource",
        record => record.With("/conditions/ignitionSource", "yes")),
        new("ignition-source-not-recorded", Severity.Note, "/conditions/ignitionSource",
        record => record.Without("/conditions/ignitionSource")),
        new("lot-unfit-when-mixed", Severity.Stop, Kit + "/state", record => record.With(Kit + "/state", "opened")),
        new("poured-beyond-pot-life", Severity.Stop, Times + "/pouredAt",
        record => record.With(Times + "/pouredAt", "2026-03-12T08:55:00+01:00")),
        new("poured-beyond-pot-life", Severity.Unknown, Times + "/pouredAt",
        record => record.With(Times + "/pouredAt", "2026-03-12T08:55:00+01:00")
            .With("/compound/sheet/gelTimes/1/temperature", Quantity(17, "degC"))),
        new("recorded-volume-off", Severity.Unknown, "/mix/volume", record => record.With("/mix/volume", Quantity(0, "mL"))),
        new("before-seen-gel", Severity.Stop, Times + "/movedAt",
        record => record.With(Times + "/movedAt", "2026-03-12T08:55:00+01:00").Without("/conditions/air")),
        new("recorded-volume-off", Severity.Caution, "/mix/volume", record => record.With("/mix/volume", Quantity(50, "mL"))),
        new("kits-short", Severity.Caution, "/mix/kits", record => record.With("/mix/baskets", 4)),
        new("kits-short", Severity.Stop, "/mix/kits", record => record.With("/mix/baskets", 5)),
        new("hardness-low", Severity.Stop, Hardness + "/value", record => record.With(Hardness + "/value", Quantity(35, "1"))),
        new("hardness-not-at-lip", Severity.Caution, Hardness + "/readAt", record => record.With(Hardness + "/readAt", "mouth")),
        new("moved-before-gel", Severity.Stop, Times + "/movedAt", record => record.With(Times + "/movedAt", "2026-03-12T08:55:00+01:00")),
        new("loaded-before-cured", Severity.Stop, Times + "/releasedAt",
        record => record.With(Times + "/releasedAt", "2026-03-12T10:34:00+01:00")),
        new("loaded-before-cured", Severity.Unknown, Times + "/releasedAt",
        record => record.With(Times + "/releasedAt", "2026-03-12T10:50:00+01:00")),
        new("cure-not-followed", Severity.Unknown, "/conditions/air/series",
        record =>
        record.With("/conditions/air/series/1/at", "2026-03-12T08:40:00+01:00")
        .With("/conditions/air/series/2/at", "2026-03-12T08:50:00+01:00")),
        new("air-during-cure-assumed", Severity.Caution, "/conditions/air",
        record => record.With("/conditions/air", new JsonObject { ["constant"] = Quantity(15, "degC") })),
    ];
}
