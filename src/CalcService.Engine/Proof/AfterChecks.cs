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
        Look(scope, "wire-slip", ProofPointers.Slip, seen.WireSlip, ProofFindings.WireSlipped, "whether single wires slipped");
        Look(scope, "cracks", ProofPointers.Cracks, seen.Cracks, ProofFindings.Cracked, "whether anything cracked");
        Look(scope, "asymmetry", ProofPointers.Asymmetry, seen.Asymmetry, ProofFindings.SeatedAskew, "whether the cone seated straight");
        Look(scope, "creep", ProofPointers.Creep, seen.CreepUnderHold, ProofFindings.Creeps, "whether the cone went on moving under the held load");
        CheckLoad(scope, proofN, steps);
        CheckSeating(scope, steps);
    }

    private static void Look(ProofScope scope, string id, string pointer, bool? fact, FindingDefinition definition, string what)
    {
        scope.Check(id, fact switch { null => ProofOutcome.Undetermined, true => ProofOutcome.Fail, _ => ProofOutcome.Pass }, definition, missing: fact is null ? [pointer] : []);
        if (fact is null)
        {
            scope.Find(ProofFindings.NotWatched, pointer, words: new FindingWord("what", what));
        }
        else if (fact == true)
        {
            scope.Find(definition, pointer);
        }
    }

    private static void CheckLoad(ProofScope scope, double? proofN, IReadOnlyList<ProofStep> steps)
    {
        if (steps.Count == 0)
        {
            scope.Find(ProofFindings.NotWatched, ProofPointers.Steps, words: new FindingWord("what", "which loads were held"));
            scope.Check("test-load", ProofOutcome.Undetermined, ProofFindings.TestLoadShort, missing: [ProofPointers.Steps]);
            return;
        }

        if (proofN is not { } proof)
        {
            return;
        }

        var rules = scope.Book.Proof;
        var highest = steps.Max(step => step.LoadN);
        var (least, most) = (proof * (1 - rules.Under.Si), proof * (1 + rules.Over.Si));
        var (isShort, isOver) = (Judged.IsBelow(highest, least), Judged.IsAbove(highest, most));
        scope.Check("test-load", isShort || isOver ? ProofOutcome.Fail : ProofOutcome.Pass, ProofFindings.TestLoadShort, Measure.Force(highest), Measure.Force(isOver ? most : least));
        if (isShort)
        {
            scope.Find(ProofFindings.TestLoadShort, ProofPointers.Steps, Measure.Force(highest), Measure.Force(least), [ProofPointers.ProofLoad]);
        }
        else if (isOver)
        {
            scope.Find(ProofFindings.TestLoadOver, ProofPointers.Steps, Measure.Force(highest), Measure.Force(most), [ProofPointers.ProofLoad]);
        }
    }

    private static void CheckSeating(ProofScope scope, IReadOnlyList<ProofStep> steps)
    {
        var input = scope.Input;
        if (steps.All(step => step.SeatingM is null))
        {
            scope.Find(ProofFindings.SeatingNotRead, ProofPointers.Steps);
            scope.Check("seating", ProofOutcome.Undetermined, ProofFindings.SeatingLittle, missing: [ProofPointers.Steps]);
            return;
        }

        if (input.ReadAt == SeatingPlace.Unknown || input.ReadUnderLoad != true)
        {
            var pointer = input.ReadAt == SeatingPlace.Unknown ? ProofPointers.ReadAt : ProofPointers.UnderLoad;
            scope.Find(ProofFindings.SeatingPlaceUnknown, pointer, related: [ProofPointers.Steps]);
            scope.Check("seating", ProofOutcome.Undetermined, ProofFindings.SeatingLittle, missing: [pointer]);
            return;
        }

        for (var i = 0; i < steps.Count; i++)
        {
            if (steps[i] is { SeatingM: { } read, Expected: { } band })
            {
                var outside = read < band.LowM ? ProofFindings.SeatingLittle : read > band.HighM ? ProofFindings.SeatingMuch : null;
                scope.Check($"seating-step-{i + 1}", outside is null ? ProofOutcome.Pass : ProofOutcome.Fail, outside ?? ProofFindings.SeatingLittle, Measure.Length(read),
                    Measure.Length(read > band.HighM ? band.HighM : band.LowM));
                if (outside is not null)
                {
                    scope.Find(outside, $"{ProofPointers.Steps}/{i}/seating", Measure.Length(read), Measure.Length(read < band.LowM ? band.LowM : band.HighM));
                }
            }
        }
    }
}
