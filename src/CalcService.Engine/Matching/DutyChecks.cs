using CalcService.Engine.Cones;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Matching;

/// <summary>What the duty asks: design factor, working load, proof load.</summary>
internal static class DutyChecks
{
    public static WorkingLoad Check(MatchScope scope, RopeFacts rope)
    {
        var (duty, socket) = (scope.Input.Duty, scope.Input.Socket);
        var rule = scope.Rules.Duties.FirstOrDefault(known => known.Use == duty.Use);
        if (duty.Use == DutyUse.Unknown)
        {
            scope.Find(MatchingFindings.DutyMissing, MatchPointers.Use);
        }

        var factor = Factor(scope, duty, rule?.DesignFactor);
        var efficiency = Efficiency(scope, duty);
        double? limit = rope.BreakingForceN is { } breaking && factor is { } f ? MatchFormulas.WorkingLoadLimitN(breaking, efficiency, f, scope.Trace) : null;
        if (duty.LoadN is { } load)
        {
            if (load > limit)
            {
                scope.Find(MatchingFindings.LoadAboveLimit, MatchPointers.Load, Measure.Force(load), Measure.Force(limit.Value), [MatchPointers.DesignFactor],
                    duty.DesignFactor is null ? Severity.Caution : Severity.Stop, duty.DesignFactor is null ? rule?.DesignFactor?.Source : null);
            }

            if (load > socket.RatedLoadN)
            {
                scope.Find(MatchingFindings.LoadAboveRating, MatchPointers.Load, Measure.Force(load), Measure.Force(socket.RatedLoadN.Value), [MatchPointers.SocketRating]);
            }
        }

        var working = new WorkingLoad(factor, factor is null ? null : duty.DesignFactor is null ? "ruleSet" : "request", efficiency, limit, duty.LoadN, null);
        return working with { ProofLoadN = ProofLoad(scope, working, rule?.ProofFactor, rope.BreakingForceN) };
    }

    private static double? Factor(MatchScope scope, MatchDuty duty, RuleLimit? rule)
    {
        var remembered = rule?.Value!.Value;
        if (duty.DesignFactor is { } given)
        {
            if (given < remembered?.Si)
            {
                scope.Find(MatchingFindings.DesignFactorBelowRule, MatchPointers.DesignFactor, Measure.Count(given), remembered, [MatchPointers.Use],
                    source: rule!.Source, words: new FindingWord("document", rule.Source.Document));
            }

            return given;
        }

        if (rule is not null)
        {
            scope.Assume(MatchPointers.DesignFactor, rule.Text, remembered, AssumptionOrigin.RuleSet);
            scope.Find(MatchingFindings.DesignFactorFromMemory, MatchPointers.DesignFactor, remembered, related: [MatchPointers.Use],
                source: rule.Source, words: new FindingWord("document", rule.Source.Document));
        }
        else if (duty.Use != DutyUse.Unknown)
        {
            scope.Find(MatchingFindings.DesignFactorMissing, MatchPointers.DesignFactor, related: [MatchPointers.Use]);
        }

        return remembered?.Si;
    }

    private static double Efficiency(MatchScope scope, MatchDuty duty)
    {
        var efficiency = scope.Given(duty.Efficiency, MatchPointers.Efficiency, scope.Rules.Efficiency);
        if (duty.TypeTested != true)
        {
            scope.Find(MatchingFindings.EfficiencyNotTested, MatchPointers.TypeTested, Measure.Fraction(efficiency));
        }

        return efficiency;
    }

    private static double? ProofLoad(MatchScope scope, WorkingLoad working, RuleLimit? rule, double? breakingN)
    {
        var duty = scope.Input.Duty;
        if ((duty.ProofLoadN ?? (rule is not null && working.JudgedN is { } judged ? TestLoads.RequiredN(judged, rule.Si, scope.Trace) : null)) is not { } proof)
        {
            return null;
        }

        if (duty.ProofLoadN is null)
        {
            scope.Assume(MatchPointers.ProofLoad, rule!.Text, Measure.Force(proof), AssumptionOrigin.RuleSet);
        }

        if (scope.Input.Socket.ProofRatingN is { } rating && TestLoads.AgainstRating(proof, rating) is { } overRating)
        {
            scope.Find(overRating, MatchPointers.ProofLoad, Measure.Force(proof), Measure.Force(rating), [MatchPointers.ProofRating]);
        }

        if (breakingN is { } breaking && TestLoads.AgainstRope(proof, breaking, scope.Rules) is { } overRope)
        {
            scope.Find(overRope, MatchPointers.ProofLoad, Measure.Fraction(proof / breaking), scope.Rules.ProofShare.Value, [MatchPointers.BreakingForce]);
        }

        return proof;
    }
}
