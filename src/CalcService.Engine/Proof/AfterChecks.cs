using CalcService.Engine.Cones;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Proof;

/// <summary>What the test showed.</summary>
internal static class AfterChecks
{
    public static void Check(ProofScope scope, double? proofN, IReadOnlyList<ProofStep> steps, bool seats)
    {
        var seen = scope.Input.Observations;
        Look(scope, "wire-slip", ProofPointers.Slip, seen.WireSlip, TestFindings.WireSlipped, "whether single wires slipped");
        Look(scope, "cracks", ProofPointers.Cracks, seen.Cracks, TestFindings.Cracked, "whether anything cracked");
        Look(scope, "asymmetry", ProofPointers.Asymmetry, seen.Asymmetry, TestFindings.SeatedAskew, "whether the cone seated straight");
        Look(scope, "creep", ProofPointers.Creep, seen.CreepUnderHold, TestFindings.Creeps,
            "whether the cone went on moving under the held load");
        if (scope.Has(StatedFact.Of(ProofPointers.Steps, "which loads were held", steps.Count > 0, isNeeded: true), "test-load",
            TestFindings.TestLoadShort))
        {
            CheckLoad(scope, proofN, steps);
            SeatingChecks.Check(scope, steps, seats);
        }
        else
        {
            scope.Write("seating", seats ? CheckOutcome.Undetermined : CheckOutcome.NotApplicable, TestFindings.SeatingLittle,
                missing: seats ? [ProofPointers.Steps] : []);
        }
    }

    private static void Look(ProofScope scope, string id, string pointer, Fact? fact, FindingDefinition definition, string what)
    {
        if (!scope.Has(StatedFact.Of(pointer, what, fact, isNeeded: true), id, definition))
        {
            return;
        }

        scope.Write(id, fact == Fact.Yes ? CheckOutcome.Fail : CheckOutcome.Pass, definition);
        if (fact == Fact.Yes)
        {
            scope.Find(definition, pointer);
        }
    }

    private static void CheckLoad(ProofScope scope, double? proofN, IReadOnlyList<ProofStep> steps)
    {
        if (proofN is not { } proof)
        {
            return;
        }

        var (against, highest) = TestLoads.Of(proof, scope.Book.Proof).Judge(Measure.Force(steps.Max(step => step.LoadN)));
        scope.Weigh("test-load", against, TestFindings.TestLoadShort, highest);
        if (against is not null)
        {
            scope.Find(against, ProofPointers.Steps, highest, [ProofPointers.ProofLoad]);
        }
    }
}
