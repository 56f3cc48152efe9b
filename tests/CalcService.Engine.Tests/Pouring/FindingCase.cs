using CalcService.Engine.Findings;
using CalcService.Engine.Pouring;
using CalcService.Engine.Tests.Findings;

namespace CalcService.Engine.Tests.Pouring;

/// <summary>A pour with one thing wrong, and the finding that has to say so.</summary>
/// <param name="Code">The finding.</param>
/// <param name="Severity">How much it weighs.</param>
/// <param name="Pointer">The member it points to.</param>
/// <param name="Change">What is wrong with the pour.</param>
/// <param name="Besides">Codes that follow from the same fault.</param>
public sealed record FindingCase(
    string Code, Severity Severity, string Pointer, Func<PourPlanInput, PourPlanInput> Change, params IReadOnlyList<string> Besides)
    : IFindingCase
{
    public long Steps { get; init; } = Budget.DefaultSteps;

    public Outcome<PourPlanResult> Plan() => GoodPour.Plan(Change(GoodPour.Input), Steps);
}
