using CalcService.Engine.Compounds;
using CalcService.Engine.Cones;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Proof;

/// <summary>What has to be right before anything is loaded.</summary>
internal static class LoadChecks
{
    /// <returns>The proof load; null where nobody can say.</returns>
    public static double? ProofLoad(ProofScope scope)
    {
        var input = scope.Input;
        var rule = scope.Book.Matching.Duties.Select(duty => duty.ProofFactor).FirstOrDefault(factor => factor is not null && factor.RuleSet == input.RuleSet);
        double? byRule = rule is not null && input.RatedLoadN is { } rated ? TestLoads.RequiredN(rated, rule.Si, scope.Trace) : null;
        var meant = input.ProofLoadN ?? byRule;
        // Without a rule set nobody knows whether it asks for more.
        var missing = input.RuleSet is null ? ProofPointers.RuleSet
            : rule is not null && byRule is null ? ProofPointers.RatedLoad
            : meant is null ? ProofPointers.ProofLoad
            : null;
        if (missing is not null)
        {
            Open(scope, meant, missing);
            return meant;
        }

        var proof = meant!.Value;
        if (byRule is null && TestLoads.AgainstRated(proof, input.RatedLoadN) is { } little)
        {
            scope.Write("proof-load", CheckOutcome.Undetermined, little, Measure.Force(proof), Measure.Force(input.RatedLoadN!.Value), missing: [ProofPointers.ProofLoad]);
            scope.Find(little, ProofPointers.ProofLoad, Measure.Force(proof), Measure.Force(input.RatedLoadN.Value), [ProofPointers.RatedLoad]);
            return proof;
        }

        var against = byRule is { } least ? TestLoads.AgainstRule(proof, least) : null;
        scope.Write("proof-load", against is not null ? CheckOutcome.Fail : byRule is null ? CheckOutcome.NotApplicable : CheckOutcome.Pass, LoadFindings.ProofBelowRule, Measure.Force(proof),
            byRule is { } asked ? Measure.Force(asked) : null);
        if (against is not null)
        {
            scope.Find(against, ProofPointers.ProofLoad, Measure.Force(proof), Measure.Force(byRule!.Value), [ProofPointers.RatedLoad]);
        }

        return proof;
    }

    /// <param name="scope">The evaluation.</param>
    /// <param name="highestN">The highest load that is meant, or was read.</param>
    /// <param name="breakingN">Breaking force of the rope.</param>
    public static void Check(ProofScope scope, double? highestN, double? breakingN)
    {
        CheckRating(scope, highestN);
        CheckRope(scope, highestN, breakingN);
        CheckCure(scope);
        if (HardnessCheck.Check(scope, scope.Input.Compound.Hardness, scope.Input.Hardness, ProofPointers.Hardness) is { } asked)
        {
            scope.Ask(asked);
        }

        CheckZone(scope);
    }

    private static void Open(ProofScope scope, double? meantN, string missing)
    {
        scope.Write("proof-load", CheckOutcome.Undetermined, LoadFindings.ProofBelowRule,
            meantN is { } meant ? Measure.Force(meant) : null, missing: [missing]);
        if (scope.Purpose != Purpose.Quote)
        {
            scope.Find(missing == ProofPointers.RatedLoad ? LoadFindings.RatedLoadMissing : ProofFindings.ProofLoadUnknown, missing,
                related: missing == ProofPointers.RuleSet ? [ProofPointers.ProofLoad] : []);
        }
    }

    private static void CheckRating(ProofScope scope, double? highestN)
    {
        const string Id = "socket-rating";
        var rating = scope.Input.ProofRatingN;
        if (scope.Has(StatedFact.Of(ProofPointers.ProofRating, "the proof rating of the socket", rating is not null, isNeeded: true), Id,
            LoadFindings.ProofAboveRating)
            && highestN is { } high)
        {
            var (against, found, limit) = (TestLoads.AgainstRating(high, rating!.Value), Measure.Force(high), Measure.Force(rating.Value));
            scope.Weigh(Id, against, LoadFindings.ProofAboveRating, found, limit);
            if (against is not null)
            {
                scope.Find(against, ProofPointers.ProofRating, found, limit, [ProofPointers.ProofLoad]);
            }
        }
    }

    private static void CheckRope(ProofScope scope, double? highestN, double? breakingN)
    {
        const string Id = "half-of-breaking-force";
        var fact = StatedFact.Of(ProofPointers.Certificate, "the breaking force of the rope, or its class and grade", breakingN is not null, isNeeded: true);
        if (scope.Has(fact, Id, LoadFindings.ProofAboveShare) && breakingN is { } breaking && highestN is { } high)
        {
            var against = TestLoads.CheckRope(scope, high, breaking, scope.Book.Matching, ProofPointers.ProofLoad, ProofPointers.Certificate);
            scope.Weigh(Id, against, LoadFindings.ProofAboveShare, Measure.Force(high),
                Measure.Force(TestLoads.ShareN(breaking, scope.Book.Matching)));
        }
    }

    private static void CheckCure(ProofScope scope)
    {
        const string Id = "cure";
        var from = scope.Input.ProofLoadFrom;
        if (!scope.Has(StatedFact.Of(ProofPointers.ProofLoadFrom, "from when on the cure allows the load", from is not null,
            isNeeded: true), Id, ProofFindings.NotCured))
        {
            return;
        }

        var early = from!.Value - scope.Input.TestedAt;
        scope.Write(Id, early > TimeSpan.Zero ? CheckOutcome.Fail : CheckOutcome.Pass, ProofFindings.NotCured,
            Measure.Duration(-early.TotalSeconds), Measure.Duration(0));
        if (early > TimeSpan.Zero)
        {
            scope.Find(ProofFindings.NotCured, "/testedAt", Measure.Duration(early.TotalSeconds), related: [ProofPointers.ProofLoadFrom],
                words: [new("at", TestTimes.At(scope.Input.TestedAt)), new("from", TestTimes.NotBefore(from.Value, scope.Input.TestedAt.Offset))]);
        }
    }

    private static void CheckZone(ProofScope scope)
    {
        const string Id = "exclusion-zone";
        var zone = scope.Input.ExclusionZone;
        if (!scope.Has(StatedFact.Of(ProofPointers.Zone, "whether people are kept away", zone, isNeeded: false), Id, ProofFindings.ZoneOpen))
        {
            return;
        }

        scope.Weigh(Id, zone == Fact.No ? ProofFindings.ZoneOpen : null, ProofFindings.ZoneOpen);
        if (zone == Fact.No)
        {
            scope.Find(ProofFindings.ZoneOpen, ProofPointers.Zone);
        }
    }
}
