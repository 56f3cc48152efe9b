using static CalcService.Api.Tests.Facts.FactRow;

namespace CalcService.Api.Tests.Facts;

/// <summary>The facts behind the stop rules of a proof load evaluation.</summary>
internal static class ProofFacts
{
    /// <summary>Nothing was loaded yet: what was is judged as done, whatever the answer is for.</summary>
    private static readonly (string Pointer, string? Json)[] Ahead = [("/measured", null)];

    public static FactTable Table { get; } = new("/v1/proof-load-evaluations", "Proof load evaluation", HasPurpose: true,
    [
        new("/ruleSet", "\"hoist-rope\"", Unknown, "proof-load-unknown", Unknown, null, "proof-load-unknown")
        {
            When = " (without `test.proofLoad`)",
            Given = Ahead,
            Plan = Unknown,
        },
        new("/test/ratedLoad",
            """{"value": 80, "unit": "kN"}""",
            Stop, "proof-above-socket-rating", Unknown, null, "rated-load-missing")
        {
            Given = Ahead,
            Plan = Unknown,
        },
        new("/test/proofLoad", """{"value": 99, "unit": "kN"}""", Stop, "proof-below-rule", Proceed, null, null)
        {
            When = " (the rule set's, where nobody says)",
        },
        new("/socket/proofRating",
            """{"value": 95, "unit": "kN"}""",
            Stop, "proof-above-socket-rating", Unknown, null, "facts-not-stated")
        {
            Given = Ahead,
        },
        new("/rope/certificate/breakingForce",
            """{"value": 90, "unit": "kN"}""",
            Stop, "proof-at-breaking-force", Unknown, null, "facts-not-stated")
        {
            When = " (or class, core and grade)",
            Given = [.. Ahead, ("/rope/grade", null)],
            Quote = Proceed,
        },
        new("/rope/construction", "null", Unknown, "rope-identity-missing", Unknown, null, "rope-identity-missing")
        {
            Given = Ahead,
            Plan = Unknown,
        },
        new("/test/proofLoadFrom",
            "\"2026-03-12T16:00:00+01:00\"",
            Stop, "not-cured-for-proof", Unknown, null, "facts-not-stated")
        {
            Given = Ahead,
        },
        new("/test/exclusionZone", "\"no\"", Stop, "no-exclusion-zone", Care, Unknown, "facts-not-stated") { Given = Ahead },
        new("/test/hardness/value", """{"value": 35, "unit": "1"}""", Stop, "hardness-low", Unknown, null, "facts-not-stated")
        {
            When = ", where the sheet asks for it",
            Given =
            [
                .. Ahead, ("/compound/sheet/hardness", """{"method": "indenter", "minimum": {"value": 40, "unit": "1"}}"""),
                ("/test/hardness", """{"method": "indenter", "readAt": "lip"}"""),
            ],
        },
        new("/measured/steps",
            """[{"load": {"value": 60, "unit": "kN"}, "seating": {"value": 1, "unit": "mm"}}]""",
            Stop, "test-load-short", Unknown, null, "facts-not-stated")
        {
            When = ", after the test",
            Plan = Unknown,
            Quote = Unknown,
        },
        new("/measured/wireSlip", "\"yes\"", Stop, "wire-slipped", Unknown, Unknown, "facts-not-stated") {
            When = ", after the test",
            Plan = Unknown,
            Quote = Unknown,
        },
        new("/measured/cracks", "\"yes\"", Stop, "cracked-under-proof", Unknown, Unknown, "facts-not-stated")
        {
            When = ", after the test",
            Plan = Unknown,
            Quote = Unknown,
        },
        new("/measured/asymmetry", "\"yes\"", Stop, "seated-askew", Unknown, Unknown, "facts-not-stated")
        {
            When = ", after the test",
            Plan = Unknown,
            Quote = Unknown,
        },
        new("/measured/creepUnderHold", "\"yes\"", Stop, "creep-under-hold", Unknown, Unknown, "facts-not-stated")
        {
            When = ", after the test",
            Plan = Unknown,
            Quote = Unknown,
        },
    ]);
}
