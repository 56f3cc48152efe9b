using static CalcService.Api.Tests.Facts.FactRow;

namespace CalcService.Api.Tests.Facts;

/// <summary>The facts behind the stop rules of a termination match.</summary>
internal static class MatchFacts
{
    public static FactTable Table { get; } = new("/v1/termination-matches", "Termination match", HasPurpose: false,
    [
        new("/rope/certificate/breakingForce",
            """{"value": 330, "unit": "kN"}""",
            Stop, "socket-weaker-than-rope", Care, null, "rope-strength-estimated")
        {
            When = ", where class, core and grade give an estimate",
        },
        new("/rope/certificate/breakingForce",
            """{"value": 330, "unit": "kN"}""",
            Stop, "socket-weaker-than-rope", Unknown, null, "rope-strength-missing")
        {
            When = " elsewhere",
            Given = [("/rope/grade", null)],
        },
        new("/socket/breakingForce",
            """{"value": 200, "unit": "kN"}""",
            Stop, "socket-weaker-than-rope", Unknown, null, "socket-strength-unknown"),
        new("/socket/ratedLoad", """{"value": 20, "unit": "kN"}""", Stop, "load-above-socket-rating", Care, null, "facts-taken")
        {
            When = ", where a load is meant",
        },
        new("/socket/proofRating", """{"value": 20, "unit": "kN"}""", Stop, "proof-above-socket-rating", Care, null, "facts-taken")
        {
            When = ", where a proof load is meant",
            Given = [("/duty/proofLoad", """{"value": 50, "unit": "kN"}""")],
        },
        new("/socket/material/kind", "\"greyIron\"", Stop, "socket-metal-unfit", Proceed, Proceed, null)
        {
            Given = [("/socket/material", "{}")],
        },
        new("/duty/use", "\"mineHoist\"", Stop, "mine-medium-not-by-design", Unknown, Unknown, "duty-missing")
        {
            Given = [("/duty/resinByDesign", "\"no\""), ("/duty/designFactor", """{"value": 8, "unit": "1"}""")],
        },
        new("/duty/load", """{"value": 60, "unit": "kN"}""", Stop, "load-above-working-limit", Proceed, null, null),
        new("/duty/designFactor",
            """{"value": 3, "unit": "1"}""",
            Unknown, "design-factor-below-rule", Care, null, "design-factor-from-memory"),
        new("/duty/liftsPersons", "\"yes\"", Unknown, "design-factor-below-law", Proceed, Unknown, "design-factor-below-law")
        {
            When = ", of a hoist rope whose design factor is below what persons ask for",
            Given =
            [
                ("/duty/use", "\"hoistRope\""),
                ("/duty/designFactor", """{"value": 4, "unit": "1"}"""),
                ("/rope/function", "\"running\""),
            ],
        },
        new("/rope/function",
            "\"rotationResistant\"",
            Stop, "design-factor-below-law", Unknown, Unknown, "design-factor-below-law")
        {
            When = ", where the design factor is below what a rotation resistant hoist rope asks for",
            Given = [("/duty/use", "\"hoistRope\""), ("/duty/designFactor", """{"value": 3.4, "unit": "1"}""")],
        },
        new("/duty/rotationResistance",
            "\"typeII\"",
            Stop, "design-factor-below-law", Unknown, Unknown, "design-factor-below-law")
        {
            When = ", of such a rope",
            Given =
            [
                ("/duty/use", "\"hoistRope\""),
                ("/duty/designFactor", """{"value": 4, "unit": "1"}"""),
                ("/rope/function", "\"rotationResistant\""),
                ("/duty/dutyCycle", "\"yes\""),
            ],
        },
        new("/duty/makersApproval", "\"no\"", Stop, "design-factor-below-law", Unknown, Unknown, "design-factor-below-law")
        {
            When = ", of such a rope of type I",
            Given =
            [
                ("/duty/use", "\"hoistRope\""),
                ("/duty/designFactor", """{"value": 4, "unit": "1"}"""),
                ("/rope/function", "\"rotationResistant\""),
                ("/duty/rotationResistance", "\"typeI\""),
            ],
        },
        new("/duty/dutyCycle", "\"yes\"", Stop, "design-factor-below-law", Unknown, Unknown, "design-factor-below-law")
        {
            When = ", of such a rope of type II or III",
            Given =
            [
                ("/duty/use", "\"hoistRope\""),
                ("/duty/designFactor", """{"value": 4, "unit": "1"}"""),
                ("/rope/function", "\"rotationResistant\""),
                ("/duty/rotationResistance", "\"typeII\""),
            ],
            AskedAt = "/duty/designFactor",
        },
        new("/duty/resinByDesign", "\"no\"", Stop, "mine-medium-not-by-design", Unknown, Unknown, "mine-evidence-missing")
        {
            When = ", in a mine",
            Given = [("/duty/use", "\"mineHoist\""), ("/duty/designFactor", """{"value": 8, "unit": "1"}""")],
        },
        new("/duty/efficiency",
            """{"value": 70, "unit": "%"}""",
            Stop, "mine-attachment-weak", Unknown, null, "mine-evidence-missing")
        {
            When = ", in a mine where `typeTested` is not yes",
            Given =
            [
                ("/duty/use", "\"mineHoist\""),
                ("/duty/designFactor", """{"value": 8, "unit": "1"}"""),
                ("/duty/resinByDesign", "\"yes\""),
                ("/duty/typeTested", null),
            ],
            AskedAt = "/duty/typeTested",
        },
        new("/service/lowest",
            """{"value": -30, "unit": "degC"}""",
            Stop, "service-outside-sheet", Unknown, null, "service-temperature-missing"),
        new("/service/highest",
            """{"value": 90, "unit": "degC"}""",
            Stop, "service-outside-sheet", Unknown, null, "service-temperature-missing"),
        new("/service/chemicals", """["acetone"]""", Stop, "chemical-attacks", Care, null, "surroundings-not-given"),
        new("/preparation/core", "\"leftIn\"", Stop, "left-in-broom", Proceed, Proceed, null)
        {
            When = ", where the rope's core is fibre",
            Given = [("/rope/core", "\"fibre\"")],
        },
        new("/preparation/plasticLeftIn", "\"yes\"", Stop, "left-in-broom", Care, Care, "plastic-filled-rope")
        {
            When = ", where `rope.plasticFilled` is yes",
            Given = [("/rope/plasticFilled", "\"yes\"")],
        },
        new("/preparation/plasticLeftIn", "\"yes\"", Stop, "left-in-broom", Proceed, Proceed, null) { When = " elsewhere" },
        new("/preparation/cleaner", "\"acid\"", Stop, "cleaner-forbidden", Proceed, Proceed, null),
    ]);
}
