using CalcService.Api.Pages;
using CalcService.Engine.Findings;
using static CalcService.Api.Capabilities.Pouring.Findings.PourExamples;
using static CalcService.Api.Pages.NodeEdits;

namespace CalcService.Api.Capabilities.Pouring.Findings;

/// <summary>What the broom, the bore and how the rope stands raise.</summary>
internal static class BroomExamples
{
    private const string End = "/ends/0";

    public static IReadOnlyList<FindingExample> All { get; } =
    [
        new("left-in-broom", Severity.Stop, End + "/plastic", pour => pour.With(End + "/plastic", "left")),
        new("cleaner-forbidden", Severity.Stop, End + "/cleaner", pour => pour.With(End + "/cleaner", "acid")),
        new("broom-not-dry", Severity.Stop, End + "/driedAt", pour => pour.With(End + "/driedAt", "2026-03-12T09:00:00+01:00")),
        new("bore-not-clean", Severity.Stop, Socket + "/bore", pour => pour.With(Socket + "/bore", "oldResin")),
        new("release-agent", Severity.Note, End + "/releaseAgent", pour => pour.With(End + "/releaseAgent", "yes")),
        new("used-rope", Severity.Caution, Rope + "/used", pour => pour.With(Rope + "/used", "yes")),
        new("broom-too-wide", Severity.Note, End + "/broomAngle", pour => pour.With(End + "/broomAngle", Quantity(100, "deg"))),
        new("broom-too-narrow", Severity.Caution, End + "/broomAngle", pour => pour.With(End + "/broomAngle", Quantity(15, "deg"))),
        new("broom-dried-long-ago", Severity.Caution, End + "/driedAt", pour => pour.With(End + "/driedAt", "2026-03-09T08:00:00+01:00")),
        new("facts-not-stated", Severity.Unknown, Socket + "/bore", pour => pour.Without(Socket + "/bore").Without(End + "/tilt")),
        new("facts-not-stated", Severity.Caution, End + "/tilt", pour => pour.Without(End + "/tilt")),
        new("rope-tilted", Severity.Unknown, End + "/tilt", pour => pour.With(End + "/tilt", Quantity(6, "deg"))),
        new("no-straight-rope", Severity.Stop, End + "/straightBelow", pour => pour.With(End + "/straightBelow", Quantity(0, "m"))),
        new("straight-rope-short", Severity.Caution, End + "/straightBelow", pour => pour.With(End + "/straightBelow", Quantity(1, "mm"))),
        new("broom-part-contradicted", Severity.Unknown, End + "/fibreCore",
        pour => pour.With(Rope + "/core", "fibre").With(End + "/fibreCore", "none")),
        new("rope-tilted", Severity.Caution, End + "/tilt", pour => pour.With(End + "/tilt", Quantity(2, "deg"))),
    ];
}
