using static CalcService.Api.Tests.Facts.FactRow;

namespace CalcService.Api.Tests.Facts;

/// <summary>The facts behind the stop rules of a service inspection.</summary>
internal static class InspectionFacts
{
    /// <summary>A mine's hoist of which everything is said.</summary>
    private static readonly (string Pointer, string? Json)[] Mine =
    [
        ("/ruleSet", "\"mine-hoist\""),
        ("/inspection/baselineDiameter", """{"value": 20, "unit": "mm"}"""),
        ("/inspection/drumTurnsLeft", """{"value": 5, "unit": "1"}"""),
        ("/attachment", """{"efficiency": {"value": 90, "unit": "%"}, "resinByDesign": "yes"}"""),
    ];

    public static FactTable Table { get; } = new("/v1/service-inspections", "Service inspection", HasPurpose: false,
    [
        new("/inspection/brokenWires",
            """[{"count": 6, "place": "lay", "fromMouth": {"value": 5, "unit": "m"}, "inOneStrand": 2}]""",
            Stop, "broken-wires-reject", Unknown, null, "not-looked-at"),
        new("/inspection/brokenWires/0/inOneStrand", "3", Stop, "broken-wires-reject", Unknown, null, "broken-wires-not-placed")
        {
            When = ", where it decides",
            Given = [("/inspection/brokenWires", """[{"count": 4, "place": "lay", "fromMouth": {"value": 5, "unit": "m"}}]""")],
        },
        new("/inspection/brokenWires/1/fromMouth",
            """{"value": 5.05, "unit": "m"}""",
            Stop, "broken-wires-reject", Unknown, null, "broken-wires-not-placed")
        {
            When = ", where it decides",
            Given =
            [
                ("/inspection/brokenWires", """
                    [{"count": 3, "place": "lay", "fromMouth": {"value": 5, "unit": "m"}, "inOneStrand": 1},
                    {"count": 3, "place": "lay", "inOneStrand": 1}]
                    """),
            ],
        },
        new("/inspection/brokenWires/0/place",
            "\"mouth\"",
            Stop, "broken-wires-reject", Unknown, Unknown, "broken-wires-not-placed")
        {
            When = ", where it decides",
            Given = [("/rope/function", "\"pendant\""), ("/inspection/brokenWires", """[{"count": 2, "inOneStrand": 1}]""")],
        },
        new("/rope/function", "\"standing\"", Stop, "broken-wires-reject", Unknown, Unknown, "broken-wires-not-placed")
        {
            When = ", where broken wires reject by it",
            Given =
            [
                ("/inspection/brokenWires", """[{"count": 4, "place": "lay", "fromMouth": {"value": 5, "unit": "m"}, "inOneStrand": 2}]"""),
            ],
        },
        new("/rope/layLength",
            """{"value": 130, "unit": "mm"}""",
            Stop, "broken-wires-reject", Unknown, null, "broken-wires-not-placed")
        {
            When = ", where broken wires reject by it",
            Given =
            [
                ("/inspection/brokenWires", """
                    [{"count": 3, "place": "lay", "fromMouth": {"value": 5, "unit": "m"}, "inOneStrand": 1},
                    {"count": 3, "place": "lay", "fromMouth": {"value": 5.1, "unit": "m"}, "inOneStrand": 1}]
                    """),
            ],
        },
        new("/inspection/coneMovement", "\"yes\"", Stop, "cone-moved", Unknown, Unknown, "not-looked-at"),
        new("/inspection/bendAtMouth", "\"yes\"", Stop, "end-bent", Unknown, Unknown, "not-looked-at"),
        new("/inspection/cracks", "\"yes\"", Stop, "end-cracked", Unknown, Unknown, "not-looked-at"),
        new("/inspection/improperlyApplied", "\"yes\"", Stop, "end-improperly-applied", Unknown, Unknown, "not-looked-at"),
        new("/inspection/corrosion", "\"heavy\"", Stop, "end-corroded", Unknown, Unknown, "not-looked-at"),
        new("/inspection/wear", "\"heavy\"", Stop, "end-worn", Unknown, Unknown, "not-looked-at"),
        new("/inspection/highestTemperature",
            """{"value": 90, "unit": "degC"}""",
            Stop, "overheated", Unknown, null, "highest-temperature-missing"),
        new("/inspection/chemicals", """["acetone"]""", Stop, "met-attacking-chemical", Care, null, "chemicals-not-told"),
        new("/rope/measuredDiameter",
            """{"value": 17, "unit": "mm"}""",
            Stop, "diameter-reduced", Unknown, null, "diameter-not-measured"),
        new("/inspection/baselineDiameter",
            """{"value": 23, "unit": "mm"}""",
            Stop, "diameter-reduced", Unknown, null, "diameter-not-measured")
        {
            When = ", in a mine",
            Given = Mine,
        },
        new("/inspection/strengthLoss", """{"value": 11, "unit": "%"}""", Stop, "strength-lost", Proceed, null, null)
        {
            When = ", in a mine, where it was tested",
            Given = Mine,
        },
        new("/inspection/drumTurnsLeft",
            """{"value": 2.9, "unit": "1"}""",
            Stop, "drum-turns-few", Unknown, null, "drum-turns-missing")
        {
            When = ", in a mine",
            Given = Mine,
        },
        new("/inspection/drumTurnsLeft",
            """{"value": 2.9, "unit": "1"}""",
            Stop, "drum-turns-few", Unknown, null, "drum-turns-missing")
        {
            When = ", under `general`, of the end at the drum (`atDrum`)",
            Given = [("/ruleSet", "\"general\""), ("/inspection/atDrum", "\"yes\"")],
        },
        new("/inspection/drumTurnsLeft", """{"value": 2.9, "unit": "1"}""", Stop, "drum-turns-few", Proceed, null, null)
        {
            When = ", under `general`, of another end",
            Given = [("/ruleSet", "\"general\"")],
        },
        new("/inspection/socketedOn", "\"2024-03-11\"", Stop, "resocketing-overdue", Unknown, null, "socketing-date-missing")
        {
            When = ", on a platform",
            Given = [("/ruleSet", "\"platform\"")],
        },
        new("/attachment/resinByDesign", "\"no\"", Stop, "mine-medium-not-by-design", Unknown, Unknown, "mine-evidence-missing")
        {
            When = ", in a mine",
            Given = Mine,
        },
        new("/attachment/efficiency",
            """{"value": 70, "unit": "%"}""",
            Stop, "mine-attachment-weak", Unknown, null, "mine-evidence-missing")
        {
            When = ", in a mine",
            Given = Mine,
        },
    ]);
}
