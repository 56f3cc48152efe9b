using CalcService.Engine.Findings;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Matching;

/// <summary>What the steps of one match share: the question and the rules.</summary>
internal sealed record MatchScope(MatchInput Input, RuleBook Book, Budget Budget, CancellationToken CancellationToken)
    : CalculationScope(Book, Budget)
{
    public MatchingRules Rules => Book.Matching;

    /// <summary>What the request gives, else the rule's value, said.</summary>
    public double Given(double? value, string pointer, RuleNumber rule)
    {
        if (value is null)
        {
            Assume(pointer, rule);
        }

        return value ?? rule.Si;
    }
}
