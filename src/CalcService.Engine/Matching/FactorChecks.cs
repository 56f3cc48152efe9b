using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Matching;

/// <summary>The design factor that a match counts with.</summary>
/// <param name="Value">Breaking force over working load.</param>
/// <param name="Rule">The rule that it comes from; null where the request gives it.</param>
/// <param name="IsFirm">Whether the request or a law gives it; else it is remembered or reasoned.</param>
internal sealed record TakenFactor(double Value, RuleLimit? Rule, bool IsFirm);

/// <summary>The design factor: the request's, else the rule's; and whether a rule asks for more.</summary>
internal static class FactorChecks
{
    /// <returns>Null where neither request nor rules have one.</returns>
    public static TakenFactor? Factor(MatchScope scope, RuleLimit? remembered)
    {
        var laws = HoistingLaw.Of(scope).ToArray();
        if (scope.Input.Duty.DesignFactor is not { } given)
        {
            return ByRule(scope, remembered, laws);
        }

        var factor = Measure.Count(given);
        var missed = laws.Where(law => law.Limit.Judge(factor).IsBelow)
            .OrderByDescending(law => law.Severity).ThenByDescending(law => law.Limit, RuleLimit.ByNumber).FirstOrDefault();
        if (missed is not null)
        {
            var source = missed.Limit.Source;
            string[] related = [MatchPointers.DesignFactor, MatchPointers.Use, MatchPointers.Function, MatchPointers.Construction];
            scope.Find(MatchingFindings.DesignFactorBelowLaw, missed.Pointer, missed.Limit.Judge(factor),
                [.. related.Except([missed.Pointer])],
                missed.Severity, words: [new("document", source.Document), new("clause", source.Clause), new("why", missed.Why)]);
        }
        else if ((remembered ?? scope.Rules.FactorLeast) is var least && least.Judge(factor) is { IsBelow: true } low)
        {
            scope.Find(MatchingFindings.DesignFactorBelowRule, MatchPointers.DesignFactor, low,
                [MatchPointers.Use], words: new FindingWord("document", least.Source.Document));
        }

        return new(given, null, true);
    }

    private static TakenFactor? ByRule(MatchScope scope, RuleLimit? remembered, IEnumerable<LawFactor> laws)
    {
        // The largest holds: it keeps the others too.
        var law = laws.MaxBy(one => one.Limit, RuleLimit.ByNumber)?.Limit;
        var isLaw = law is not null && (remembered is null || RuleLimit.ByNumber.Compare(law, remembered) >= 0);
        if ((isLaw ? law : remembered) is not { } rule)
        {
            if (scope.Input.Duty.Use != DutyUse.Unknown)
            {
                scope.Find(MatchingFindings.DesignFactorMissing, MatchPointers.DesignFactor, related: [MatchPointers.Use]);
            }

            return null;
        }

        scope.Assume(MatchPointers.DesignFactor, rule);
        if (!isLaw)
        {
            scope.Find(MatchingFindings.DesignFactorFromMemory, MatchPointers.DesignFactor, new((Measure?)rule, null),
                related: [MatchPointers.Use],
                source: rule.Source, words: new FindingWord("document", rule.Source.Document));
        }

        return new(rule.InPlaceOf(null), rule, rule.Source.Basis == Basis.Law);
    }
}
