using CalcService.Engine.Cones;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Audits;

/// <summary>The proof load as recorded: how high, what was seen, how far the cone seated.</summary>
internal static class ProofDayChecks
{
    public static RecomputedPlan Check(AuditScope scope, RopeFacts? rope, RecomputedPlan plan)
    {
        var proof = scope.Input.Proof;
        scope.MustHold("proof-asked", AuditFindings.FactMissing,
            scope.Ask().Fact(proof.IsAsked is not null, AuditPointers.ProofAsked, "whether the end has to be proof loaded"));
        if (!scope.Input.IsTested)
        {
            scope.Skip("proof-load", TestFindings.TestLoadShort);
            scope.Skip("proof-rating", LoadFindings.ProofAboveRating);
            scope.Skip("half-of-breaking-force", LoadFindings.ProofAboveShare);
            scope.Skip("wire-slip", TestFindings.WireSlipped);
            scope.Skip("creep", TestFindings.Creeps);
            scope.Skip("cracks", TestFindings.Cracked);
            scope.Skip("asymmetry", TestFindings.SeatedAskew);
            scope.Skip("seating", TestFindings.SeatingNotRead);
            return plan;
        }

        plan = CheckLoad(scope, proof, plan);
        CheckRating(scope, proof);
        CheckRope(scope, proof, rope?.BreakingForceN);
        Look(scope, "wire-slip", proof.WireSlip, AuditPointers.WireSlip, TestFindings.WireSlipped, "whether single wires slipped");
        Look(scope, "creep", proof.Creep, AuditPointers.Creep, TestFindings.Creeps, "whether the cone went on moving under the held load");
        Look(scope, "cracks", proof.Cracks, AuditPointers.Cracks, TestFindings.Cracked, "whether anything cracked");
        Look(scope, "asymmetry", proof.Asymmetry, AuditPointers.Asymmetry, TestFindings.SeatedAskew, "whether the cone seated straight");
        return SeatingCheck.Check(scope, rope, plan);
    }

    private static RecomputedPlan CheckLoad(AuditScope scope, RecordedProof proof, RecomputedPlan plan)
    {
        if (proof.IsAsked == false)
        {
            // Loaded though nobody asked for it: there is nothing that it falls short of.
            scope.Skip("proof-load", TestFindings.TestLoadShort, Force(proof.LoadN));
            return plan;
        }

        var asked = scope.Ask()
            .Fact(proof.AskedN is not null, AuditPointers.AskedLoad, "what the end had to be loaded to")
            .Fact(proof.LoadN is not null, AuditPointers.ProofLoad, "what it was loaded to")
            .Trail(proof.RatedN is not null, AuditPointers.RatedLoad, "the rated load that the proof load is for");
        var found = Force(proof.LoadN);
        if (proof.AskedN is not { } must)
        {
            scope.Judge("proof-load", null, TestFindings.TestLoadShort, asked.Gaps, Hold(proof.LoadN, null));
            return plan;
        }

        var loads = TestLoads.Of(must, scope.Book.Proof);
        var rated = Hold(must, proof.RatedN);
        var little = rated.IsBelow ? LoadFindings.ProofBelowRated : null;
        if (little is not null)
        {
            scope.Find(little, AuditPointers.AskedLoad, rated, [AuditPointers.RatedLoad]);
        }

        var (against, judged) = loads.Judge(found);
        if (against is not null)
        {
            scope.Find(against, AuditPointers.ProofLoad, judged, [AuditPointers.AskedLoad]);
        }

        if (asked.Gaps.Count > 0)
        {
            scope.Judge("proof-load", against?.Severities[0], TestFindings.TestLoadShort, asked.Gaps, judged);
        }
        else
        {
            scope.Weigh("proof-load", against ?? little, TestFindings.TestLoadShort, judged);
        }

        return plan with { LeastTestLoadN = ((Measure)loads.Least).Si, MostTestLoadN = ((Measure)loads.Most).Si };
    }

    private static void CheckRating(AuditScope scope, RecordedProof proof)
    {
        var rating = scope.Input.Socket.ProofRatingN;
        var asked = scope.Ask()
            .Fact(rating is not null, AuditPointers.ProofRating, "the proof rating of the socket")
            .Fact(proof.LoadN is not null, AuditPointers.ProofLoad, "what it was loaded to");
        scope.MustNotExceed("proof-rating", Hold(proof.LoadN, rating), AuditPointers.ProofRating, LoadFindings.ProofAboveRating,
            asked.Gaps);
    }

    /// <summary>The higher of what was meant and what was read, as before the test. Gaps have been found by others.</summary>
    private static void CheckRope(AuditScope scope, RecordedProof proof, double? breakingN)
    {
        const string Id = "half-of-breaking-force";
        var (highN, pointer) = proof.LoadN is null || proof.AskedN > proof.LoadN ? (proof.AskedN, AuditPointers.AskedLoad)
            : (proof.LoadN, AuditPointers.ProofLoad);
        if (highN is not { } loadN || breakingN is not { } breaking)
        {
            scope.Write(Id, CheckOutcome.Undetermined, LoadFindings.ProofAboveShare, Hold(highN, null),
                missing: [highN is null ? AuditPointers.ProofLoad : AuditPointers.RopeStrength]);
            return;
        }

        var (against, judged) = TestLoads.CheckRope(scope, loadN, breaking, scope.Book.Matching, pointer, AuditPointers.RopeStrength);
        scope.Weigh(Id, against, LoadFindings.ProofAboveShare, judged);
    }

    private static Judged Hold(double? foundN, double? limitN) => new(Force(foundN), Force(limitN) is { } limit ? Limit.Of(limit) : null);

    private static Measure? Force(double? newtons) => newtons is { } known ? Measure.Force(known) : null;

    private static void Look(AuditScope scope, string id, bool? fact, string pointer, FindingDefinition rule, string what)
    {
        _ = scope.Ask().Fact(fact is not null, pointer, what);
        scope.MustNotBe(id, fact, pointer, rule, new(AuditFindings.FactMissing, pointer, what));
    }
}
