using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine;

/// <summary>What a calculation gives back: the numbers and everything needed to trust or refuse them.</summary>
public sealed record Outcome<TResult>(
    TResult Result,
    IReadOnlyList<Finding> Findings,
    IReadOnlyList<SafetyNote> SafetyNotes,
    IReadOnlyList<Assumption> Assumptions,
    IReadOnlyList<TraceStep> Trace)
{
    /// <summary>One to one with the worst finding.</summary>
    public Decision Decision { get; } = FindingList.DecisionOf(Findings);
}
