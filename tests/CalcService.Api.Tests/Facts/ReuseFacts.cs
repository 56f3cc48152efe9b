using static CalcService.Api.Tests.Facts.FactRow;

namespace CalcService.Api.Tests.Facts;

/// <summary>The facts behind the stop rules of a reuse assessment.</summary>
internal static class ReuseFacts
{
    public static FactTable Table { get; } = new("/v1/reuse-assessments", "Reuse assessment", HasPurpose: false,
    [
        new("/socket/history/welded", "\"yes\"", Stop, "socket-welded", Unknown, Unknown, "socket-history-missing"),
        new("/socket/history/straightened", "\"yes\"", Stop, "socket-straightened", Unknown, Unknown, "socket-history-missing"),
        new("/socket/history/arcStruck", "\"yes\"", Stop, "socket-arc-struck", Unknown, Unknown, "socket-history-missing"),
        new("/socket/history/overloaded", "\"yes\"", Stop, "socket-overloaded", Unknown, Unknown, "socket-history-missing"),
        new("/coneRemoval/method", "\"burntOut\"", Stop, "cone-burnt-out", Unknown, Unknown, "cone-removal-unknown")
        {
            Given = [("/coneRemoval/maximumTemperature", null)],
        },
        new("/coneRemoval/maximumTemperature",
            """{"value": 350, "unit": "degC"}""",
            Stop, "socket-overheated", Unknown, null, "cone-removal-unknown")
        {
            When = ", unless pressed out cold",
            Given =
            [
                ("/coneRemoval/method", "\"pressedWarm\""),
                ("/limits/removalTemperature", """{"value": 300, "unit": "degC"}"""),
            ],
        },
        new("/inspection/visual/cracks", "\"yes\"", Stop, "socket-cracked", Unknown, Unknown, "visual-inspection-missing"),
        new("/inspection/visual/corrosion", "\"severe\"", Stop, "socket-corroded", Unknown, Unknown, "visual-inspection-missing"),
        new("/inspection/visual/surface",
            "\"oldResin\"",
            Unknown, "socket-surface-covered", Unknown, Unknown, "visual-inspection-missing"),
        new("/inspection/surfaceMethod", "\"none\"", Unknown, "crack-search-missing", Unknown, Unknown, "crack-search-missing"),
        new("/inspection/indications",
            """[{"kind": "crack", "place": "pin"}]""",
            Stop, "socket-cracked", Unknown, null, "crack-search-missing"),
        new("/inspection/indications/0/kind", "\"crack\"", Stop, "socket-cracked", Unknown, Unknown, "indication-unclear")
        {
            Given = [("/inspection/indications", """[{"place": "pin"}]""")],
            AskedAt = "/inspection/indications/0",
        },
        new("/inspection/places", """["basket"]""", Unknown, "crack-search-missing", Unknown, null, "crack-search-missing"),
        new("/socket/material/kind", "\"greyIron\"", Stop, "socket-metal-unfit", Care, Unknown, "facts-taken")
        {
            UnknownAsked = "socket-steel-unknown",
        },
        new("/socket/material/yieldStrength",
            """{"value": 60, "unit": "MPa"}""",
            Stop, "yields-at-proof-load", Unknown, null, "socket-steel-unknown"),
        new("/socket/material/tensileStrength",
            """{"value": 71, "unit": "MPa"}""",
            Stop, "yields-at-proof-load", Unknown, null, "socket-steel-unknown")
        {
            Given = [("/socket/material/yieldStrength", """{"value": 70, "unit": "MPa"}""")],
        },
        new("/socket/pin/yieldStrength",
            """{"value": 200, "unit": "MPa"}""",
            Stop, "pin-yields-at-proof-load", Proceed, null, "pin-steel-assumed")
        {
            When = " (a pin that yields by the socket's steel: undetermined)",
        },
        new("/socket/measured/stations",
            """
                [{"fromSmallEnd": {"value": 0, "unit": "mm"}, "diameters": [{"value": 23.6, "unit": "mm"},
                {"value": 23.6, "unit": "mm"}]}, {"fromSmallEnd": {"value": 50, "unit": "mm"},
                "diameters": [{"value": 34.1, "unit": "mm"}, {"value": 34.2, "unit": "mm"}]},
                {"fromSmallEnd": {"value": 100, "unit": "mm"}, "diameters": [{"value": 45.1, "unit": "mm"},
                {"value": 45.1, "unit": "mm"}]}]
                """,
            Stop, "bore-worn", Unknown, null, "wear-measurement-missing"),
        new("/socket/measured/outerDiameter",
            """{"value": 68, "unit": "mm"}""",
            Stop, "outside-worn", Unknown, null, "wear-measurement-missing")
        {
            Given = [("/limits/outsideLoss", """{"value": 2, "unit": "%"}""")],
        },
        new("/socket/measured/pinHoleDiameters",
            """[{"value": 38.4, "unit": "mm"}, {"value": 38.4, "unit": "mm"}]""",
            Stop, "pin-hole-worn", Unknown, null, "wear-measurement-missing"),
        new("/socket/measured/pinDiameter",
            """{"value": 20, "unit": "mm"}""",
            Stop, "pin-yields-at-proof-load", Unknown, null, "wear-measurement-missing"),
        new("/socket/measured/earThickness",
            """{"value": 15.1, "unit": "mm"}""",
            Stop, "ear-thin", Unknown, null, "wear-measurement-missing"),
        new("/socket/measured/earGap",
            """{"value": 41.5, "unit": "mm"}""",
            Stop, "ears-spread", Unknown, null, "wear-measurement-missing"),
        new("/socket/measured/pitDepth",
            """{"value": 0.9, "unit": "mm"}""",
            Stop, "pits-deep", Unknown, null, "wear-measurement-missing"),
        new("/socket/measured/earWidth", """{"value": 77, "unit": "mm"}""", Stop, "ear-narrow", Care, null, "facts-taken")
        {
            When = " (as drawn, where nobody measured)",
            Given = [("/limits/earWidthLoss", """{"value": 2, "unit": "%"}""")],
        },
        new("/socket/measured/earEndDistance", """{"value": 38, "unit": "mm"}""", Stop, "ear-end-worn", Care, null, "facts-taken")
        {
            When = " (as drawn, where nobody measured)",
            Given = [("/limits/earEndDistanceLoss", """{"value": 2, "unit": "%"}""")],
        },
        new("/socket/breakingForce",
            """{"value": 200, "unit": "kN"}""",
            Stop, "socket-weaker-than-rope", Unknown, null, "socket-breaking-force-missing")
        {
            When = ", where a rope is meant",
        },
        new("/socket/ratedLoad",
            """{"value": 40, "unit": "kN"}""",
            Stop, "intended-load-above-rating", Unknown, null, "rated-load-missing"),
        new("/socket/proofRating", """{"value": 50, "unit": "kN"}""", Stop, "proof-above-socket-rating", Care, null, "facts-taken"),
        new("/intended/rope/certificate/breakingForce",
            """{"value": 340, "unit": "kN"}""",
            Stop, "socket-weaker-than-rope", Unknown, null, "intended-rope-strength-missing")
        {
            When = ", where class, core and grade give no estimate",
            Given = [("/intended/rope/grade", null)],
        },
        new("/intended/rope/certificate/breakingForce",
            """{"value": 340, "unit": "kN"}""",
            Stop, "socket-weaker-than-rope", Care, null, "facts-taken")
        {
            When = " elsewhere",
        },
        new("/intended/ratedLoad", """{"value": 55, "unit": "kN"}""", Stop, "intended-load-above-rating", Proceed, null, null)
        {
            When = " (the socket's, where nobody says)",
        },
        new("/intended/proofLoad", """{"value": 125, "unit": "kN"}""", Stop, "proof-above-socket-rating", Proceed, null, null)
        {
            When = " (twice the rated load, where nobody says)",
        },
    ]);
}
