using CalcService.Engine.Cones;
using CalcService.Engine.Findings;

namespace CalcService.Engine.Proof;

/// <summary>
/// The seating that was read, beside what load transfer lets expect. Too much is news at every step; too little only at the
/// highest one, since a cone that still sticks under a small load comes down under the next.
/// </summary>
internal static class SeatingChecks
{
    /// <param name="scope">The evaluation.</param>
    /// <param name="steps">The loads that were held.</param>
    /// <param name="seats">Whether there is a cone that can seat; else nothing is expected of it.</param>
    public static void Check(ProofScope scope, IReadOnlyList<ProofStep> steps, bool seats)
    {
        var impossible = SeatingBoundChecks.Check(scope, steps);
        if (!seats)
        {
            scope.Skip("seating", TestFindings.SeatingLittle);
            return;
        }

        var top = Enumerable.Range(0, steps.Count).MaxBy(i => (steps[i].LoadN, steps[i].SeatingM is not null, i));
        if (steps[top].SeatingM is null)
        {
            scope.Find(TestFindings.SeatingNotRead, At(top));
            scope.Write("seating", CheckOutcome.Undetermined, TestFindings.SeatingLittle, missing: [At(top)]);
        }

        var readings = Enumerable.Range(0, steps.Count).Where(i => steps[i].SeatingM is not null && !impossible.Contains(i)).ToArray();
        if (readings.Length == 0)
        {
            return;
        }

        if (scope.Input.ReadAt == SeatingPlace.Unknown || scope.Input.ReadUnderLoad != true)
        {
            var pointer = scope.Input.ReadAt == SeatingPlace.Unknown ? ProofPointers.ReadAt : ProofPointers.UnderLoad;
            scope.Find(TestFindings.SeatingPlaceUnknown, pointer, related: [ProofPointers.Steps]);
            scope.Checks.RemoveAll(check => check.Id == "seating");
            scope.Write("seating", CheckOutcome.Undetermined, TestFindings.SeatingLittle, missing: [pointer]);
            return;
        }

        var against = readings.Select(i => (Step: i, Judged: Judge(scope, steps[i], i, top))).Where(one => one.Judged is not null)
            .ToArray();
        foreach (var kind in against.GroupBy(one => one.Judged!.Value.Against))
        {
            var (step, worst) = kind.MaxBy(one => steps[one.Step].LoadN);
            scope.Find(kind.Key, At(step), worst!.Value.Judged,
                [.. kind.Where(one => one.Step != step).Select(one => At(one.Step))]);
        }
    }

    private static (FindingDefinition Against, Judged Judged)? Judge(ProofScope scope, ProofStep step, int index, int top)
    {
        if (step is not { SeatingM: { } read, Expected: { } band })
        {
            return null;
        }

        var (found, judged) = band.Judge(read);
        var against = found == TestFindings.SeatingLittle && index != top ? null : found;
        scope.Weigh(IdOf(index), against, TestFindings.SeatingLittle, judged);
        return against is null ? null : (against, judged);
    }

    public static string IdOf(int step) => $"seating-step-{step + 1}";

    public static string At(int step) => $"{ProofPointers.Steps}/{step}/seating";
}
