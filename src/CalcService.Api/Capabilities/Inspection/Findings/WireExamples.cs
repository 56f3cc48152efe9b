using CalcService.Api.Pages;
using CalcService.Engine.Findings;
using static CalcService.Api.Capabilities.Inspection.Findings.InspectionExamples;
using static CalcService.Api.Pages.NodeEdits;

namespace CalcService.Api.Capabilities.Inspection.Findings;

/// <summary>Broken wires, the cut and the rope that is left.</summary>
internal static class WireExamples
{
    private const string Turns = "/inspection/drumTurnsLeft";

    public static IReadOnlyList<FindingExample> All { get; } =
    [
        new("rule-set-missing", Severity.Unknown, "/ruleSet", end => end.Without("/ruleSet")),
        new("not-looked-at", Severity.Unknown, Wires, end => end.Without(Wires)),
        new("broken-wires-reject", Severity.Stop, Wires, Rejected),
        new("broken-wires-not-placed", Severity.Unknown, Wires + "/0/inOneStrand", end => Broken(end, 3, "lay", 5, null)),
        new("limit-of-another-rule-set", Severity.Unknown, Wires, end => Broken(end, 5, "mouth", null, 2)),
        new("core-wires-broken", Severity.Caution, Wires, end => Broken(end, 1, "core", 5, 1)),
        new("cut-beyond-damage", Severity.Caution, Wires, end => Rejected(end).With("/inspection/lengthLeft", Quantity(8, "m"))),
        new("rope-left-unknown", Severity.Caution, "/inspection/lengthLeft", Rejected),
        new("rope-left-short", Severity.Stop, "/inspection/lengthLeft",
        end => Rejected(end).With("/inspection/lengthLeft", Quantity(5.9, "m"))),
        new("drum-turns-few", Severity.Stop, Turns, end => Mine(end).With(Turns, Quantity(2.9, "1"))),
        new("drum-turns-missing", Severity.Unknown, Turns, end => Mine(end).Without(Turns)),
    ];
}
