using static CalcService.Api.Tests.Facts.FactRow;

namespace CalcService.Api.Tests.Facts;

/// <summary>The facts behind the stop rules of a record audit.</summary>
internal static class AuditFacts
{
    public static FactTable Table { get; } = new("/v1/record-audits", "Record audit", HasPurpose: true,
    [
        new("/conditions/air",
            """{"constant": {"value": 0, "unit": "degC"}}""",
            Stop, "outside-pouring-range", Unknown, null, "record-fact-missing")
        {
            Quote = Care,
        },
        new("/conditions/steelTemperature",
            """{"value": 6, "unit": "degC"}""",
            Stop, "steel-at-dew-point", Unknown, null, "record-fact-missing")
        {
            Quote = Care,
        },
        new("/conditions/compoundTemperature",
            """{"value": 40, "unit": "degC"}""",
            Stop, "outside-pouring-range", Unknown, null, "record-fact-missing")
        {
            Quote = Care,
        },
        new("/conditions/relativeHumidity",
            """{"value": 100, "unit": "%"}""",
            Stop, "steel-at-dew-point", Unknown, null, "record-fact-missing")
        {
            Quote = Care,
        },
        new("/mix/kits/0/expiresOn", "\"2026-03-01\"", Stop, "lot-expired-when-mixed", Unknown, null, "record-fact-missing")
        {
            Quote = Care,
        },
        new("/mix/kits/0/state", "\"opened\"", Stop, "lot-unfit-when-mixed", Unknown, Unknown, "record-fact-missing") { Quote = Care },
        new("/mix/kits/0/quarantined", "\"yes\"", Stop, "lot-unfit-when-mixed", Unknown, Unknown, "record-fact-missing")
        {
            Quote = Care,
        },
        new("/mix/kits/0/storage",
            """{"lowest": {"value": 10, "unit": "degC"}, "highest": {"value": 60, "unit": "degC"}}""",
            Stop, "lot-unfit-when-mixed", Care, Unknown, "record-trail-missing")
        {
            When = ", where the sheet has a range",
            Given =
            [
                ("/compound/sheet/storage", """{"minimum": {"value": 5, "unit": "degC"}, "maximum": {"value": 25, "unit": "degC"}}"""),
            ],
            Quote = Care,
            UnknownJson = """{"known": "unknown"}""",
            UnknownAsked = "record-fact-missing",
        },
        new("/mix/dosesPerKit", "2", Stop, "dose-contradicts-sheet", Unknown, null, "record-fact-missing") { Quote = Care },
        new("/mix/doseAdded", "\"afterHardener\"", Stop, "dose-after-hardener", Care, Unknown, "record-trail-missing")
        {
            When = ", where a dose was given",
            Given =
            [
                ("/compound/sheet/doses/0/perKit", "1"), ("/compound/sheet/gelTimes/0/doses", "1"),
                    ("/compound/sheet/gelTimes/1/doses", "1"),
                ("/mix/dosesPerKit", "1"),
            ],
            Quote = Care,
            UnknownAsked = "record-fact-missing",
        },
        new("/conditions/ignitionSource", "\"yes\"", Care, "poured-near-ignition", Proceed, Proceed, "ignition-source-not-recorded"),
        new("/socket/material/kind", "\"greyIron\"", Stop, "socket-metal-unfit", Care, Unknown, "record-trail-missing")
        {
            Quote = Care,
            UnknownAsked = "record-fact-missing",
        },
        new("/mix/baskets", "5", Stop, "kits-short", Care, null, "record-trail-missing") { Quote = Care },
        new("/rope/certificate/breakingForce",
            """{"value": 330, "unit": "kN"}""",
            Stop, "socket-weaker-than-rope", Unknown, null, "record-fact-missing")
        {
            Quote = Care,
        },
        new("/socket/breakingForce",
            """{"value": 200, "unit": "kN"}""",
            Stop, "socket-weaker-than-rope", Unknown, null, "record-fact-missing")
        {
            Quote = Care,
        },
        new("/socket/basket",
            """
                {"smallEndDiameter": {"value": 20, "unit": "mm"}, "largeEndDiameter": {"value": 45, "unit": "mm"},
                "length": {"value": 100, "unit": "mm"}}
                """,
            Stop, "rope-does-not-enter", Unknown, null, "record-fact-missing")
        {
            Quote = Care,
        },
        new("/socket/proofRating",
            """{"value": 90, "unit": "kN"}""",
            Stop, "proof-above-socket-rating", Unknown, null, "record-fact-missing")
        {
            Quote = Care,
        },
        new("/times/mixedAt",
            "\"2026-03-12T08:20:00+01:00\"",
            Stop, "poured-beyond-pot-life", Unknown, null, "record-fact-missing")
        {
            Quote = Care,
        },
        new("/times/pouredAt",
            "\"2026-03-12T08:55:00+01:00\"",
            Stop, "poured-beyond-pot-life", Unknown, null, "record-fact-missing")
        {
            Quote = Care,
        },
        new("/times/gelAt", "\"2026-03-12T08:40:00+01:00\"", Stop, "gel-before-pour-ends", Unknown, null, "record-fact-missing")
        {
            Quote = Care,
        },
        new("/gelSeenIn", "\"cone\"", Stop, "gel-before-pour-ends", Unknown, Unknown, "gel-place-unknown")
        {
            When = ", of a gel before the basket was full",
            Given = [("/times/gelAt", "\"2026-03-12T08:40:00+01:00\"")],
            Plan = Unknown,
            Quote = Unknown,
        },
        new("/times/movedAt", "\"2026-03-12T08:55:00+01:00\"", Stop, "moved-before-gel", Unknown, null, "record-fact-missing")
        {
            Quote = Care,
        },
        new("/times/releasedAt",
            "\"2026-03-12T10:34:00+01:00\"",
            Stop, "loaded-before-cured", Unknown, null, "record-fact-missing")
        {
            Quote = Care,
        },
        new("/times/proofAt", "\"2026-03-12T10:34:00+01:00\"", Stop, "loaded-before-cured", Unknown, null, "record-fact-missing")
        {
            Quote = Care,
        },
        new("/times/inServiceAt", "\"2026-03-12T10:34:00+01:00\"", Stop, "loaded-before-cured", Proceed, null, null)
        {
            When = " (not in service yet, where nobody says)",
            Quote = Care,
        },
        new("/hardness/value", """{"value": 30, "unit": "1"}""", Stop, "hardness-low", Unknown, null, "record-fact-missing")
        {
            When = ", where the sheet asks for it",
            Quote = Care,
        },
        new("/proof/askedLoad", """{"value": 120, "unit": "kN"}""", Stop, "test-load-short", Unknown, null, "record-fact-missing")
        {
            Quote = Care,
        },
        new("/proof/load", """{"value": 50, "unit": "kN"}""", Stop, "test-load-short", Unknown, null, "record-fact-missing")
        {
            Quote = Care,
        },
        new("/proof/wireSlip", "\"yes\"", Stop, "wire-slipped", Unknown, Unknown, "record-fact-missing") { Quote = Care },
        new("/proof/creepUnderHold", "\"yes\"", Stop, "creep-under-hold", Unknown, Unknown, "record-fact-missing") { Quote = Care },
        new("/proof/cracks", "\"yes\"", Stop, "cracked-under-proof", Unknown, Unknown, "record-fact-missing") { Quote = Care },
        new("/proof/asymmetry", "\"yes\"", Stop, "seated-askew", Unknown, Unknown, "record-fact-missing") { Quote = Care },
        new("/proof/ratedLoad", """{"value": 101, "unit": "kN"}""", Unknown, "proof-below-rated-load", Care, null, "record-trail-missing")
        {
            Quote = Care,
        },
        new("/mix/volume", """{"value": 0, "unit": "mL"}""", Unknown, "recorded-volume-off", Care, null, "record-trail-missing") { Quote = Care },
        new("/looks/bore", "\"fail\"", Stop, "look-failed", Unknown, Unknown, "record-fact-missing") { Quote = Care },
        new("/looks/broom", "\"fail\"", Stop, "look-failed", Unknown, Unknown, "record-fact-missing") { Quote = Care },
        new("/looks/core", "\"fail\"", Stop, "look-failed", Unknown, Unknown, "record-fact-missing") { Quote = Care },
        new("/looks/alignment", "\"fail\"", Stop, "look-failed", Unknown, Unknown, "record-fact-missing") { Quote = Care },
        new("/looks/seal", "\"fail\"", Stop, "look-failed", Unknown, Unknown, "record-fact-missing") { Quote = Care },
        new("/looks/fill", "\"fail\"", Stop, "look-failed", Unknown, Unknown, "record-fact-missing") { Quote = Care },
        new("/looks/surface", "\"fail\"", Stop, "look-failed", Unknown, Unknown, "record-fact-missing") { Quote = Care },
        new("/looks/afterLoad", "\"fail\"", Stop, "look-failed", Unknown, Unknown, "record-fact-missing") { Quote = Care },
    ]);
}
