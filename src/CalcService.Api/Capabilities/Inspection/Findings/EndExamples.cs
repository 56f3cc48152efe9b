using CalcService.Api.Pages;
using CalcService.Engine.Findings;
using static CalcService.Api.Capabilities.Inspection.Findings.InspectionExamples;

namespace CalcService.Api.Capabilities.Inspection.Findings;

/// <summary>What the eye sees on the end.</summary>
internal static class EndExamples
{
    public static IReadOnlyList<FindingExample> All { get; } =
    [
        new("end-cracked", Severity.Stop, "/inspection/cracks", end => Found(end, "cracks", "yes")),
        new("end-corroded", Severity.Stop, "/inspection/corrosion", end => Found(end, "corrosion", "heavy")),
        new("end-corroded", Severity.Caution, "/inspection/corrosion", end => Found(end, "corrosion", "light")),
        new("end-worn", Severity.Stop, "/inspection/wear", end => Found(end, "wear", "heavy")),
        new("end-worn", Severity.Caution, "/inspection/wear", end => Found(end, "wear", "light")),
        new("end-bent", Severity.Stop, "/inspection/bendAtMouth", end => Found(end, "bendAtMouth", "yes")),
        new("end-bent", Severity.Caution, "/inspection/bendAtMouth", end => Found(end, "bendAtMouth", "yes").With("/ruleSet", "naval")),
        new("end-improperly-applied", Severity.Stop, "/inspection/improperlyApplied", end => Found(end, "improperlyApplied", "yes")),
        new("end-improperly-applied", Severity.Caution, "/inspection/improperlyApplied", end => Found(end, "improperlyApplied", "yes").With("/ruleSet", "naval")),
        new("cone-moved", Severity.Stop, "/inspection/coneMovement", end => Found(end, "coneMovement", "yes")),
        new("rust-bleeds", Severity.Caution, "/inspection/rustBleed", end => Found(end, "rustBleed", "yes")),
        new("lubricant-poor", Severity.Caution, "/inspection/lubricant", end => Found(end, "lubricant", "dry")),
    ];
}
