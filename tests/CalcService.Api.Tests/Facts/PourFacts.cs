using static CalcService.Api.Tests.Facts.FactRow;

namespace CalcService.Api.Tests.Facts;

/// <summary>The facts behind the stop rules of a pour plan.</summary>
internal static class PourFacts
{
    public static FactTable Table { get; } = new("/v1/pour-plans", "Pour plan", HasPurpose: true,
    [
        new("/ends/0/socket/bore", "\"oldResin\"", Stop, "bore-not-clean", Unknown, Unknown, "facts-not-stated"),
        new("/ends/0/fibreCore", "\"left\"", Stop, "left-in-broom", Unknown, Unknown, "facts-not-stated")
        {
            When = ", where the rope's core is fibre",
            Given = [("/ends/0/rope/core", "\"fibre\"")],
        },
        new("/ends/0/plastic", "\"left\"", Stop, "left-in-broom", Unknown, Unknown, "facts-not-stated")
        {
            When = ", where `rope.plasticFilled` is yes",
            Given = [("/ends/0/rope/plasticFilled", "\"yes\"")],
        },
        new("/ends/0/plastic", "\"left\"", Stop, "left-in-broom", Care, Unknown, "facts-not-stated")
        {
            When = ", where nobody says whether the rope is filled (no: not asked for)",
            Given = [("/ends/0/rope/plasticFilled", null)],
        },
        new("/ends/0/cleaner", "\"acid\"", Stop, "cleaner-forbidden", Unknown, Unknown, "facts-not-stated")
        {
            When = ", where `rope.lubricant` is heavy",
            Given = [("/ends/0/rope/lubricant", "\"heavy\"")],
        },
        new("/ends/0/cleaner", "\"acid\"", Stop, "cleaner-forbidden", Unknown, Unknown, "facts-not-stated")
        {
            When = ", where `rope.lubricant` is unknown",
            Given = [("/ends/0/rope/lubricant", "\"unknown\"")],
        },
        new("/ends/0/cleaner", "\"flux\"", Stop, "cleaner-forbidden", Care, Unknown, "facts-not-stated") { When = " elsewhere" },
        new("/ends/0/driedAt", "\"2026-03-12T09:00:00+01:00\"", Stop, "broom-not-dry", Care, null, "facts-not-stated"),
        new("/ends/0/straightBelow", """{"value": 0, "unit": "m"}""", Stop, "no-straight-rope", Care, null, "facts-not-stated")
        {
            When = " (below two rope diameters: caution, `straight-rope-short`)",
        },
        new("/ends/0/tilt", """{"value": 6, "unit": "deg"}""", Unknown, "rope-tilted", Care, null, "facts-not-stated"),
        new("/ends/0/socket/material/kind", "\"greyIron\"", Stop, "socket-metal-unfit", Care, Unknown, "facts-not-stated"),
        new("/ends/0/socket/breakingForce",
            """{"value": 200, "unit": "kN"}""",
            Stop, "socket-weaker-than-rope", Care, null, "facts-not-stated")
        {
            When = ", `rope.certificate.breakingForce` (or class, core and grade)",
        },
        new("/stock/0/state", "\"opened\"", Stop, "lot-not-sealed", Unknown, Unknown, "facts-not-stated")
        {
            When = ", of lots that are used",
        },
        new("/stock/0/quarantined", "\"yes\"", Stop, "lot-quarantined", Unknown, Unknown, "facts-not-stated")
        {
            When = ", of lots that are used",
        },
        new("/stock/0/storage",
            """{"highest": {"value": 60, "unit": "degC"}}""",
            Stop, "storage-outside-range", Care, Unknown, "facts-not-stated")
        {
            When = ", of lots that are used",
            UnknownJson = """{"known": "unknown"}""",
        },
        new("/conditions/place", "\"confined\"", Care, "confined-space", Care, Unknown, "facts-not-stated")
        {
            When = ", indoors, outdoors or in a confined space",
        },
        new("/conditions/ignitionSource", "\"yes\"", Stop, "ignition-source", Unknown, Unknown, "facts-not-stated"),
        new("/dose/added", "\"afterHardener\"", Stop, "dose-after-hardener", Care, Unknown, "facts-not-stated")
        {
            When = ", where a dose is meant",
            Given = [("/dose", "{}")],
        },
    ]);
}
