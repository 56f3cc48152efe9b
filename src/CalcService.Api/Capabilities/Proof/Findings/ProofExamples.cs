using System.Text.Json.Nodes;
using CalcService.Api.Pages;
using CalcService.Engine.Findings;
using static CalcService.Api.Pages.NodeEdits;

namespace CalcService.Api.Capabilities.Proof.Findings;

/// <summary>A proof load with which nothing is wrong, and what raises each finding of its own. The compound is invented.</summary>
internal static class ProofExamples
{
    private const string Steps = "/measured/steps", Proof = "/test/proofLoad";

    private const string Good = """
        {
          "reference": "SLING-1",
          "testedAt": "2026-03-12T14:00:00+01:00",
          "ruleSet": "sling",
          "compound": { "sheet": {
            "name": "invented for the findings",
            "kits": [ { "code": "small", "volume": { "value": 300, "unit": "mL" } } ],
            "cured": { "modulus": { "value": 6000, "unit": "MPa" }, "poissonRatio": { "value": 0.25, "unit": "1" },
              "shrinkageAfterGel": { "value": 0.4, "unit": "%" } } } },
          "rope": { "diameter": { "value": 20, "unit": "mm" }, "construction": "6x36", "core": "iwrc", "grade": 1770, "finish": "bright",
            "metallicArea": { "value": 184, "unit": "mm2" }, "certificate": { "breakingForce": { "value": 252, "unit": "kN" } } },
          "socket": {
            "basket": { "smallEndDiameter": { "value": 23, "unit": "mm" }, "largeEndDiameter": { "value": 45, "unit": "mm" },
              "length": { "value": 100, "unit": "mm" } },
            "outerAtSmallEnd": { "value": 37, "unit": "mm" },
            "outerAtMouth": { "value": 72, "unit": "mm" },
            "proofRating": { "value": 130, "unit": "kN" } },
          "test": { "ratedLoad": { "value": 50, "unit": "kN" }, "proofLoadFrom": "2026-03-12T12:00:00+01:00", "exclusionZone": "yes",
            "seatingReadAt": "mouth", "readUnderLoad": "yes" },
          "measured": {
            "steps": [
              { "load": { "value": 50, "unit": "kN" }, "seating": { "value": 0.8, "unit": "mm" } },
              { "load": { "value": 100, "unit": "kN" }, "seating": { "value": 1.3, "unit": "mm" } } ],
            "wireSlip": "no", "cracks": "no", "asymmetry": "no", "creepUnderHold": "no" }
        }
        """;

    public static OperationExamples Operation { get; } = new("/v1/proof-load-evaluations", JsonNode.Parse(Good)!.AsObject(),
        [.. Before, .. After]);

    private static IEnumerable<FindingExample> Before =>
    [
        new("proof-load-unknown", Severity.Unknown, Proof, test => test.With("/ruleSet", "hoist-rope")),
        new("rated-load-missing", Severity.Unknown, "/test/ratedLoad", test => test.Without("/test/ratedLoad")),
        new("proof-below-rule", Severity.Stop, Proof, test => test.With(Proof, Quantity(99, "kN"))),
        new("facts-not-stated", Severity.Unknown, "/socket/proofRating", test => test.Without("/socket/proofRating")),
        new("facts-not-stated", Severity.Caution, "/test/proofLoadFrom",
            test => test.With("/purpose", "plan").Without("/test/proofLoadFrom").Without("/measured")),
        new("proof-above-socket-rating", Severity.Stop, "/socket/proofRating",
        test => test.With("/socket/proofRating", Quantity(95, "kN"))),
        new("proof-below-rated-load", Severity.Unknown, Proof,
        test => test.With("/ruleSet", "general").With(Proof, Quantity(49, "kN")).Without("/measured")),
        new("proof-above-half-breaking", Severity.Caution, Proof,
        test => test.With("/rope/certificate/breakingForce", Quantity(199, "kN"))),
        new("not-cured-for-proof", Severity.Stop, "/testedAt", test => test.With("/test/proofLoadFrom", "2026-03-12T16:00:00+01:00")),
        new("proof-at-breaking-force", Severity.Stop, Proof, test => test.With("/ruleSet", "general").With(Proof, Quantity(300, "kN"))
            .With("/socket/proofRating", Quantity(400, "kN")).Without("/measured")),
        new("facts-not-stated", Severity.Caution, "/test/exclusionZone", test => test.Without("/test/exclusionZone")),
        new("facts-not-stated", Severity.Unknown, "/test/hardness/value", test => Hard(test, null, null)),
        new("no-exclusion-zone", Severity.Stop, "/test/exclusionZone", test => test.With("/test/exclusionZone", "no")),
        new("hardness-low", Severity.Stop, "/test/hardness/value", test => Hard(test, 35, "lip")),
        new("hardness-not-at-lip", Severity.Caution, "/test/hardness/readAt", test => Hard(test, 45, "mouth")),
        new("seating-not-computed", Severity.Caution, "/compound/sheet/cured", test => test.Without("/compound/sheet/cured/modulus")),
    ];

    private static IEnumerable<FindingExample> After =>
    [
        new("wire-slipped", Severity.Stop, "/measured/wireSlip", test => test.With("/measured/wireSlip", "yes")),
        new("cracked-under-proof", Severity.Stop, "/measured/cracks", test => test.With("/measured/cracks", "yes")),
        new("seated-askew", Severity.Stop, "/measured/asymmetry", test => test.With("/measured/asymmetry", "yes")),
        new("creep-under-hold", Severity.Stop, "/measured/creepUnderHold", test => test.With("/measured/creepUnderHold", "yes")),
        new("test-load-short", Severity.Stop, Steps, test => Read(test, 94, 1.3)),
        new("test-load-over", Severity.Caution, Steps, test => Read(test, 101, 1.3)),
        new("seating-not-read", Severity.Caution, Steps + "/0/seating", test => Read(test, 100, null)),
        new("seating-not-comparable", Severity.Caution, "/test/seatingReadAt", test => test.Without("/test/seatingReadAt")),
        new("seating-little", Severity.Caution, Steps + "/0/seating", test => Read(test, 100, .2)),
        new("seating-much", Severity.Caution, Steps + "/0/seating", test => Read(test, 100, 4)),
        new("seating-contradicts", Severity.Unknown, Steps + "/1/seating", test => test.With(Steps + "/1/seating", Quantity(.5, "mm"))),
        new("seated-through", Severity.Stop, Steps + "/0/seating", test => Read(test, 100, 50)),
    ];

    private static JsonObject Hard(JsonObject test, double? value, string? readAt)
    {
        test = test.With("/compound/sheet/hardness", new JsonObject { ["method"] = "indenter", ["minimum"] = Quantity(40, "1") });
        return value is { } read
            ? test.With("/test/hardness", new JsonObject { ["method"] = "indenter", ["value"] = Quantity(read, "1"), ["readAt"] = readAt })
            : test;
    }

    private static JsonObject Read(JsonObject test, double loadKN, double? seatingMm)
    {
        var step = new JsonObject { ["load"] = Quantity(loadKN, "kN") };
        if (seatingMm is { } seating)
        {
            step["seating"] = Quantity(seating, "mm");
        }

        return test.With(Steps, new JsonArray(step));
    }
}
