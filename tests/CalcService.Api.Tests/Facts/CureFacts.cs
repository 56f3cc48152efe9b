using static CalcService.Api.Tests.Facts.FactRow;

namespace CalcService.Api.Tests.Facts;

/// <summary>The facts behind the stop rules of a cure schedule.</summary>
internal static class CureFacts
{
    public static FactTable Table { get; } = new("/v1/cure-schedules", "Cure schedule", HasPurpose: true,
    [
        new("/conditions/steelTemperature",
            """{"value": 0, "unit": "degC"}""",
            Stop, "outside-pouring-range", Unknown, null, "reading-missing")
        {
            Plan = Unknown,
            Quote = Unknown,
        },
        new("/conditions/compoundTemperature",
            """{"value": 40, "unit": "degC"}""",
            Stop, "outside-pouring-range", Unknown, null, "reading-missing")
        {
            Plan = Unknown,
            Quote = Unknown,
        },
        new("/pourTime", """{"value": 25, "unit": "min"}""", Stop, "gel-before-pour-ends", Care, null, "pour-time-not-stated"),
        new("/observations/0/seenIn", "\"cone\"", Stop, "gel-before-pour-ends", Stop, Stop, "gel-place-unknown")
        {
            When = ", of a gel before the pour has ended",
            Given = [("/observations", """[{"end": "A", "gelAt": "2026-03-12T08:33:00+01:00"}]""")],
            Plan = Stop,
            Quote = Stop,
        },
        new("/observations/0/seenIn", "\"cup\"", Care, "gel-seen-in-cup", Care, Care, "gel-place-unknown")
        {
            When = ", of a later gel",
            Given = [("/observations", """[{"end": "A", "gelAt": "2026-03-12T08:50:00+01:00"}]""")],
            Plan = Care,
            Quote = Care,
        },
        new("/doses", "2", Stop, "dose-contradicts-sheet", Proceed, null, null) { When = " (the sheet's, where nobody says)" },
        new("/ends/0/socket/bore", "\"oldResin\"", Stop, "bore-not-clean", Proceed, Unknown, "facts-not-stated"),
        new("/ends/0/socket/material/kind", "\"greyIron\"", Stop, "socket-metal-unfit", Proceed, Unknown, "facts-not-stated")
        {
            Given = [("/ends/0/socket/material", "{}")],
        },
        new("/ends/0/socket/breakingForce",
            """{"value": 100, "unit": "kN"}""",
            Stop, "socket-weaker-than-rope", Proceed, null, null),
    ]);
}
