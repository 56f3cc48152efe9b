using CalcService.Engine.Findings;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Curing;

/// <summary>What the steps of one schedule share: the question and the rules.</summary>
internal sealed record CureScope(CureScheduleInput Input, RuleBook Book, Budget Budget, CancellationToken CancellationToken)
    : CalculationScope(Book, Budget)
{
    public CuringRules Rules => Book.Curing;
}
