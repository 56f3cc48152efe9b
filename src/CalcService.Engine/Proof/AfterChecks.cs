using CalcService.Engine.Cones;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Proof;

/// <summary>What the test showed.</summary>
internal static class AfterChecks
{
    public static void Check(ProofScope scope, double? proofN, IReadOnlyList<ProofStep> steps)
    {
        var seen = scope.Input.Observations;
        Look(scope, "wire-slip", ProofPointers.Slip, seen.WireSlip, TestFindings.WireSlipped, "whether single wires slipped");
        Look(scope, "cracks", ProofPointers.Cracks, seen.Cracks, TestFindings.Cracked, "whether anything cracked");
        Look(scope, "asymmetry", ProofPointers.Asymmetry, seen.Asymmetry, ProofFindings.SeatedAskew, "whether the cone seated straight");
        Look(scope, "creep", ProofPointers.Creep, seen.CreepUnderHold, TestFindings.Creeps, "whether the cone went on moving under the held load");
        CheckLoad(scope, proofN, steps);
        CheckSeating(scope, steps);
    }

    private static void Look(ProofScope scope, string id, string pointer, bool? fact, FindingDefinition definition, string what) =>
        scope.MustNotBe(id, fact, pointer, definition, new(ProofFindings.NotWatched, pointer, what));

    private static void CheckLoad(ProofScope scope, double? proofN, IReadOnlyList<ProofStep> steps)
    {
        const string Id = "test-load";
        if (scope.IsOpen(Id, TestFindings.TestLoadShort, steps.Count == 0 ? [new(ProofFindings.NotWatched, ProofPointers.Steps, "which loads were held")] : [])
            || proofN is not { } proof)
        {
            return;
        }

        var highest = Measure.Force(steps.Max(step => step.LoadN));
        var (against, limitN) = TestLoads.Of(proof, scope.Book.Proof).Judge(highest.Si);
        var limit = Measure.Force(limitN);
        scope.Write(Id, against is null ? CheckOutcome.Pass : CheckOutcome.Fail, against ?? TestFindings.TestLoadShort, highest, limit);
        if (against is not null)
        {
            scope.Find(against, ProofPointers.Steps, highest, limit, [ProofPointers.ProofLoad]);
        }
    }

    private static void CheckSeating(ProofScope scope, IReadOnlyList<ProofStep> steps)
    {
        var input = scope.Input;
        if (steps.All(step => step.SeatingM is null))
        {
            scope.Find(TestFindings.SeatingNotRead, ProofPointers.Steps);
            scope.Write("seating", CheckOutcome.Undetermined, TestFindings.SeatingLittle, missing: [ProofPointers.Steps]);
            return;
        }

        if (input.ReadAt == SeatingPlace.Unknown || input.ReadUnderLoad != true)
        {
            var pointer = input.ReadAt == SeatingPlace.Unknown ? ProofPointers.ReadAt : ProofPointers.UnderLoad;
            scope.Find(TestFindings.SeatingPlaceUnknown, pointer, related: [ProofPointers.Steps]);
            scope.Write("seating", CheckOutcome.Undetermined, TestFindings.SeatingLittle, missing: [pointer]);
            return;
        }

        for (var i = 0; i < steps.Count; i++)
        {
            if (steps[i] is { SeatingM: { } read, Expected: { } band })
            {
                var (against, limitM) = band.Judge(read);
                scope.Write($"seating-step-{i + 1}", against is null ? CheckOutcome.Pass : CheckOutcome.Fail, against ?? TestFindings.SeatingLittle,
                    Measure.Length(read), Measure.Length(limitM));
                if (against is not null)
                {
                    scope.Find(against, $"{ProofPointers.Steps}/{i}/seating", Measure.Length(read), Measure.Length(limitM));
                }
            }
        }
    }
}
