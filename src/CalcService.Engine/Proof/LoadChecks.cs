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
        var rule = scope.Book.Matching.Duties.Select(duty => duty.ProofFactor)
            .FirstOrDefault(factor => factor is not null && factor.RuleSet == input.RuleSet);
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
        if (byRule is null && input.RatedLoadN is { } load && Judged.Force(proof, load) is { IsBelow: true } little)
        {
            scope.Write("proof-load", CheckOutcome.Undetermined, LoadFindings.ProofBelowRated, little, missing: [ProofPointers.ProofLoad]);
            scope.Find(LoadFindings.ProofBelowRated, ProofPointers.ProofLoad, little, [ProofPointers.RatedLoad]);
            return proof;
        }

        var judged = new Judged(Measure.Force(proof), byRule is { } least ? Limit.Of(Measure.Force(least)) : null);
        scope.Write("proof-load", judged.IsBelow ? CheckOutcome.Fail : byRule is null ? CheckOutcome.NotApplicable : CheckOutcome.Pass,
            LoadFindings.ProofBelowRule, judged);
        if (judged.IsBelow)
        {
            scope.Find(LoadFindings.ProofBelowRule, ProofPointers.ProofLoad, judged, [ProofPointers.RatedLoad]);
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
            new(meantN is { } meant ? Measure.Force(meant) : null, null), missing: [missing]);
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
            var judged = Judged.Force(high, rating!.Value);
            scope.Weigh(Id, judged.IsAbove ? LoadFindings.ProofAboveRating : null, LoadFindings.ProofAboveRating, judged);
            if (judged.IsAbove)
            {
                scope.Find(LoadFindings.ProofAboveRating, ProofPointers.ProofRating, judged, [ProofPointers.ProofLoad]);
            }
        }
    }

    private static void CheckRope(ProofScope scope, double? highestN, double? breakingN)
    {
        const string Id = "half-of-breaking-force";
        var fact = StatedFact.Of(ProofPointers.Certificate, "the breaking force of the rope, or its class and grade", breakingN is not null,
            isNeeded: true);
        if (scope.Has(fact, Id, LoadFindings.ProofAboveShare) && breakingN is { } breaking && highestN is { } high)
        {
            var (against, judged) = TestLoads.CheckRope(scope, high, breaking, scope.Book.Matching, ProofPointers.ProofLoad,
                ProofPointers.Certificate);
            scope.Weigh(Id, against, LoadFindings.ProofAboveShare, judged);
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
            Judged.Duration(-early.TotalSeconds, 0));
        if (early > TimeSpan.Zero)
        {
            scope.Find(ProofFindings.NotCured, "/testedAt", Measure.Duration(early.TotalSeconds), related: [ProofPointers.ProofLoadFrom],
                words: [new("at", TestTimes.At(scope.Input.TestedAt)),
                    new("from", TestTimes.NotBefore(from.Value, scope.Input.TestedAt.Offset))]);
        }
    }

    private static void CheckZone(ProofScope scope)
    {
        const string Id = "exclusion-zone";
        var zone = scope.Input.ExclusionZone;
        if (!scope.Has(StatedFact.Of(ProofPointers.Zone, "whether people are kept away", zone, isNeeded: false), Id,
            ProofFindings.ZoneOpen))
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
