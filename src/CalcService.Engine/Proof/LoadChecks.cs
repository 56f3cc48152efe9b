using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Proof;

/// <summary>What has to be right before anything is loaded.</summary>
public static class LoadChecks
{
    /// <returns>The proof load; null where nobody can say.</returns>
    internal static double? ProofLoad(ProofScope scope)
    {
        var input = scope.Input;
        var rule = scope.Book.Matching.Duties.Select(duty => duty.ProofFactor).FirstOrDefault(factor => factor is not null && factor.RuleSet == input.RuleSet);
        double? byRule = rule is not null && input.RatedLoadN is { } rated ? RequiredProofLoadN(rated, rule.Si, scope.Trace) : null;
        var meant = input.ProofLoadN ?? byRule;
        if (rule is not null && byRule is null)
        {
            scope.Find(LoadFindings.RatedLoadMissing, ProofPointers.RatedLoad);
            Open(scope, meant, ProofPointers.RatedLoad);
            return meant;
        }

        // Without a rule set nobody knows whether it asks for more.
        if (input.RuleSet is null || meant is not { } proof)
        {
            var pointer = input.RuleSet is null ? ProofPointers.RuleSet : ProofPointers.ProofLoad;
            scope.Find(ProofFindings.ProofLoadUnknown, pointer, related: [ProofPointers.ProofLoad]);
            Open(scope, meant, pointer);
            return meant;
        }

        var isShort = byRule is { } least && Judged.IsBelow(proof, least);
        scope.Write("proof-load", isShort ? CheckOutcome.Fail : byRule is null ? CheckOutcome.NotApplicable : CheckOutcome.Pass, ProofFindings.ProofBelowRule, Measure.Force(proof),
            byRule is { } asked ? Measure.Force(asked) : null);
        if (isShort)
        {
            scope.Find(ProofFindings.ProofBelowRule, ProofPointers.ProofLoad, Measure.Force(proof), Measure.Force(byRule!.Value), [ProofPointers.RatedLoad]);
        }

        return proof;
    }

    private static void Open(ProofScope scope, double? meantN, string missing) =>
        scope.Write("proof-load", CheckOutcome.Undetermined, ProofFindings.ProofBelowRule, meantN is { } meant ? Measure.Force(meant) : null, missing: [missing]);

    /// <param name="scope">The evaluation.</param>
    /// <param name="highestN">The highest load that is meant, or was read.</param>
    /// <param name="breakingN">Breaking force of the rope.</param>
    internal static void Check(ProofScope scope, double? highestN, double? breakingN)
    {
        var input = scope.Input;
        var share = scope.Book.Matching.ProofShare.Value!.Value;
        if (input.ProofRatingN is not { } rating)
        {
            scope.Find(ProofFindings.RatingMissing, ProofPointers.ProofRating);
            scope.Write("socket-rating", CheckOutcome.Undetermined, LoadFindings.ProofAboveRating, missing: [ProofPointers.ProofRating]);
        }
        else if (highestN is { } high)
        {
            var isAbove = Judged.IsAbove(high, rating);
            scope.Write("socket-rating", isAbove ? CheckOutcome.Fail : CheckOutcome.Pass, LoadFindings.ProofAboveRating, Measure.Force(high), Measure.Force(rating));
            if (isAbove)
            {
                scope.Find(LoadFindings.ProofAboveRating, ProofPointers.ProofRating, Measure.Force(high), Measure.Force(rating), [ProofPointers.ProofLoad]);
            }
        }

        if (breakingN is null)
        {
            scope.Find(ProofFindings.BreakingForceMissing, ProofPointers.Certificate);
        }
        else if (highestN is { } high)
        {
            var isAbove = Judged.IsAbove(high, share.Si * breakingN.Value);
            scope.Write("half-of-breaking-force", isAbove ? CheckOutcome.Fail : CheckOutcome.Pass, LoadFindings.ProofAboveShare, Measure.Fraction(high / breakingN.Value), share);
            if (isAbove)
            {
                scope.Find(LoadFindings.ProofAboveShare, ProofPointers.ProofLoad, Measure.Force(high), share, [ProofPointers.Certificate]);
            }
        }

        CheckCure(scope);
        if (input.ExclusionZone != true)
        {
            scope.Find(ProofFindings.ZoneNotSet, ProofPointers.Zone);
        }
    }

    /// <summary>P = k·W: the rated load, pulled straight, times the factor of the rule set; in N.</summary>
    [Formula("required-proof-load", "DOE-STD-1090-96; NAVEDTRA 14080", "11.3.2.2, 15.4.7.1; chapter 3, proof testing slings", Basis.Published, Symbol = "P", Name = "required proof load",
        Expression = "k·W", Kind = QuantityKind.Force, Range = "one leg, pulled straight")]
    public static double RequiredProofLoadN(double ratedLoadN, double factor, Trace trace) =>
        trace.Step("required-proof-load", factor * ratedLoadN, new("k", Measure.Count(factor)), new("W", Measure.Force(ratedLoadN)));

    private static void CheckCure(ProofScope scope)
    {
        if (scope.Input.ProofLoadFrom is not { } from)
        {
            scope.Find(ProofFindings.CureNotTold, ProofPointers.ProofLoadFrom);
            scope.Write("cure", CheckOutcome.Undetermined, ProofFindings.NotCured, missing: [ProofPointers.ProofLoadFrom]);
            return;
        }

        var early = from - scope.Input.TestedAt;
        scope.Write("cure", early > TimeSpan.Zero ? CheckOutcome.Fail : CheckOutcome.Pass, ProofFindings.NotCured, Measure.Duration(-early.TotalSeconds), Measure.Duration(0));
        if (early > TimeSpan.Zero)
        {
            scope.Find(ProofFindings.NotCured, "/testedAt", Measure.Duration(early.TotalSeconds), related: [ProofPointers.ProofLoadFrom]);
        }
    }
}
