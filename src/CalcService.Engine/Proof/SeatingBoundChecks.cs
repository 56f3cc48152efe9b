using CalcService.Engine.Cones;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Proof;

/// <summary>Readings of the seating that can't be, each kind of them one finding with every step that takes part.</summary>
internal static class SeatingBoundChecks
{
    private sealed record Wrong(int Step, int? Before, FindingDefinition Against, Judged Judged);

    /// <returns>The steps that take part: no model is held against them.</returns>
    public static HashSet<int> Check(ProofScope scope, IReadOnlyList<ProofStep> steps)
    {
        var wrong = Enumerable.Range(0, steps.Count).Select(i => Judge(scope, steps, i)).OfType<Wrong>().ToArray();
        HashSet<int> parts = [.. wrong.Select(one => one.Step)];
        foreach (var kind in wrong.GroupBy(one => one.Against))
        {
            var worst = kind.MaxBy(one => steps[one.Step].LoadN)!;
            int[] others =
                [.. kind.Select(one => one.Step).Concat(kind.Select(one => one.Before).OfType<int>()).Distinct()
                .Where(step => step != worst.Step).Order()];
            scope.Find(kind.Key, SeatingChecks.At(worst.Step), worst.Judged,
                [.. others.Select(SeatingChecks.At)]);
        }

        foreach (var one in wrong)
        {
            Write(scope, one.Step, one.Against, one.Judged);
            if (one.Before is { } before && parts.Add(before))
            {
                Write(scope, before, one.Against, Measure.Length(steps[before].SeatingM!.Value));
            }
        }

        return parts;
    }

    private static Wrong? Judge(ProofScope scope, IReadOnlyList<ProofStep> steps, int index)
    {
        if (steps[index] is not { SeatingM: { } read } step)
        {
            return null;
        }

        // Only what was held before it under less load: a cone that is unloaded stays where it is.
        var before = Enumerable.Range(0, index).Where(i => Judged.Force(steps[i].LoadN, step.LoadN).IsBelow && steps[i].SeatingM > 0
            && steps[i].SeatingM <= scope.Input.Rope.DiameterM)
            .Select(i => (int?)i).MaxBy(i => steps[i!.Value].SeatingM);
        return SeatingBounds.Judge(read, before is { } at ? steps[at].SeatingM!.Value : 0, scope.Input.Rope.DiameterM) is var (against,
            judged)
            ? new(index, against == TestFindings.SeatingContradicts ? before : null, against, judged) : null;
    }

    private static void Write(ProofScope scope, int step, FindingDefinition against, Judged judged) =>
        scope.Weigh(SeatingChecks.IdOf(step), against, against, judged, against == TestFindings.SeatingContradicts
            ? [SeatingChecks.At(step)] : []);
}
