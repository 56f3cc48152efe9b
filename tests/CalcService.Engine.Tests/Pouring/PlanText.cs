using System.Text.Json;
using CalcService.Engine.Pouring;

namespace CalcService.Engine.Tests.Pouring;

/// <summary>Everything in an outcome as one text, to compare outcomes by.</summary>
public static class PlanText
{
    public static string Of(Outcome<PourPlanResult> outcome) => JsonSerializer.Serialize(new
    {
        outcome.Decision,
        outcome.Result,
        Findings = outcome.Findings.Select(finding => new
        {
            finding.Definition.Code, finding.Severity, finding.Pointer, finding.Related, finding.Measured, finding.Limit, finding.Words,
            finding.Source,
        }),
        outcome.SafetyNotes,
        outcome.Assumptions,
        Trace = outcome.Trace.Select(step => new { step.Formula.Id, step.Of, step.Value, step.Substitutions }),
    });
}
