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
        new("plastic-filled-rope", Severity.Caution, Rope + "/plasticFilled", pour => pour.With(Rope + "/plasticFilled", "yes")),
        new("cleaner-forbidden", Severity.Stop, End + "/cleaner", pour => pour.With(End + "/cleaner", "acid")),
        new("broom-not-dry", Severity.Stop, End + "/driedAt", pour => pour.With(End + "/driedAt", "2026-03-12T09:00:00+01:00")),
        new("bore-not-clean", Severity.Stop, Socket + "/bore", pour => pour.With(Socket + "/bore", "oldResin")),
        new("release-agent", Severity.Note, End + "/releaseAgent", pour => pour.With(End + "/releaseAgent", "yes")),
        new("used-rope", Severity.Caution, Rope + "/used", pour => pour.With(Rope + "/used", "yes")),
        new("broom-too-wide", Severity.Note, End + "/broomAngle", pour => pour.With(End + "/broomAngle", Quantity(100, "deg"))),
        new("alignment-not-stated", Severity.Caution, End + "/tilt", pour => pour.Without(End + "/tilt")),
        new("rope-tilted", Severity.Caution, End + "/tilt", pour => pour.With(End + "/tilt", Quantity(1, "deg"))),
    ];
}
