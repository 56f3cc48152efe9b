using CalcService.Engine.Cones;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;
using CalcService.Engine.Rules;
using CalcService.Engine.Sockets;

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

        var factor = FactorChecks.Factor(scope, rule?.DesignFactor);
        var efficiency = Efficiency(scope, duty);
        double? limit = rope.BreakingForceN is { } breaking && factor is { } by
            ? MatchFormulas.WorkingLoadLimitN(breaking, efficiency, by.Value, scope.Trace) : null;
        if (duty.LoadN is { } load)
        {
            // By a factor that is only remembered nobody knows what the rope may carry; its breaking force it never may.
            var breaks = rope.BreakingForceN is { } force && !Judged.Force(load, force).IsBelow;
            if (breaks || (limit is { } most && Judged.Force(load, most).IsAbove))
            {
                scope.Find(MatchingFindings.LoadAboveLimit, MatchPointers.Load, Judged.Force(load, limit ?? rope.BreakingForceN!.Value),
                    [MatchPointers.DesignFactor], breaks || factor!.IsFirm ? Severity.Stop : Severity.Unknown, factor?.Rule?.Source);
            }

            if (socket.RatedLoadN is { } rated && Judged.Force(load, rated) is { IsAbove: true } over)
            {
                scope.Find(MatchingFindings.LoadAboveRating, MatchPointers.Load, over,
                    [MatchPointers.SocketRating]);
            }
        }

        scope.CheckTaken(Ratings(duty, socket));
        var from = factor is null ? null : factor.Rule is null ? "request" : "ruleSet";
        var working = new WorkingLoad(factor?.Value, from, efficiency, limit, duty.LoadN, null);
        return working with { ProofLoadN = ProofLoad(scope, working, rule?.ProofFactor, rope.BreakingForceN) };
    }

    /// <summary>A load that somebody means for a socket has to be held against its maker's word.</summary>
    private static IEnumerable<(string Pointer, string What, bool IsStated)> Ratings(MatchDuty duty, MatchSocket socket)
    {
        if (duty.LoadN is not null)
        {
            yield return (MatchPointers.SocketRating, "the rated load of the socket", socket.RatedLoadN is not null);
        }

        if (duty.ProofLoadN is not null)
        {
            yield return (MatchPointers.ProofRating, "the proof load that the socket's maker allows", socket.ProofRatingN is not null);
        }
    }

    private static double Efficiency(MatchScope scope, MatchDuty duty)
    {
        var efficiency = scope.Given(duty.Efficiency, MatchPointers.Efficiency, scope.Rules.Efficiency);
        // A mine has to show it: that is asked for by itself.
        if (scope.Input.IsTypeTested != true && duty.Use != DutyUse.MineHoist)
        {
            scope.Find(MatchingFindings.EfficiencyNotTested, MatchPointers.TypeTested, Measure.Fraction(efficiency));
        }

        return efficiency;
    }

    private static double? ProofLoad(MatchScope scope, WorkingLoad working, RuleNumber? rule, double? breakingN)
    {
        var duty = scope.Input.Duty;
        double? byRule = rule is not null && working.JudgedN is { } judged ? TestLoads.RequiredN(judged, rule.Si, scope.Trace) : null;
        if ((duty.ProofLoadN ?? byRule) is not { } proof)
        {
            return null;
        }

        if (duty.ProofLoadN is null)
        {
            scope.Assume(MatchPointers.ProofLoad, rule!.Text, Measure.Force(proof), AssumptionOrigin.RuleSet);
        }

        if (byRule is { } least && Judged.Force(proof, least) is { IsBelow: true } less)
        {
            if (duty.LoadN is null)
            {
                // Enough for some rated load, not for the most that rope and end may carry.
                scope.Find(LoadFindings.RatedLoadMissing, MatchPointers.Load, related: [MatchPointers.ProofLoad]);
            }
            else
            {
                scope.Find(LoadFindings.ProofBelowRule, MatchPointers.ProofLoad, less, [MatchPointers.Load]);
            }
        }

        if (rule is null && duty.LoadN is { } rated && Judged.Force(proof, rated) is { IsBelow: true } little)
        {
            scope.Find(LoadFindings.ProofBelowRated, MatchPointers.ProofLoad, little, [MatchPointers.Load]);
        }

        if (scope.Input.Socket.ProofRatingN is { } rating && Judged.Force(proof, rating) is { IsAbove: true } over)
        {
            scope.Find(LoadFindings.ProofAboveRating, MatchPointers.ProofLoad, over, [MatchPointers.ProofRating]);
        }

        if (breakingN is { } breaking)
        {
            TestLoads.CheckRope(scope, proof, breaking, scope.Rules, MatchPointers.ProofLoad, MatchPointers.BreakingForce);
        }

        return proof;
    }
}
