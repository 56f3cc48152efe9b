using Google.OrTools.LinearSolver;

namespace CalcService.Engine.Numerics.Scheduling;

/// <summary>Counts of one linear programme and what they keep, gathered by resource and bucket.</summary>
internal sealed class CountRows(Solver solver, int resources, int buckets)
{
    private readonly Dictionary<Variable, double>[][] _uses = Empty(resources, buckets);
    private readonly Dictionary<Variable, double>[][] _work = Empty(resources, buckets);

    public Variable Count(int most) => solver.MakeNumVar(0, most, "");

    public void NotMore(Variable count, Variable than) => AtMost(0, (count, 1), (than, -1));

    /// <summary>In no bucket more than another count; none where that is null.</summary>
    public void NotMore(Variable?[] counts, Func<int, Variable?> than)
    {
        for (var t = 0; t < buckets; t++)
        {
            // Where a count stays as it was the row before says as much: the other one only rises.
            if (counts[t] is not { } count || (t > 0 && ReferenceEquals(count, counts[t - 1])))
            {
                continue;
            }

            if (than(t) is { } other)
            {
                NotMore(count, other);
            }
            else
            {
                count.SetUb(0);
            }
        }
    }

    /// <summary>How many of a resource are in use.</summary>
    public void Use(int resource, int t, Variable? count, double factor) => Add(_uses[resource][t], count, factor);

    /// <summary>What a resource has done up to the end of a bucket.</summary>
    public void Work(int resource, int t, Variable? count, double factor) => Add(_work[resource][t], count, factor);

    /// <summary>Holds uses and work against what there is.</summary>
    public void Close(SchedulingProblem problem, double[] open)
    {
        for (var resource = 0; resource < resources; resource++)
        {
            var isHeld = problem.Jobs.Any(job => job.Holds.Any(hold => hold.Resource == resource));
            var inWindow = !isHeld && problem.Jobs.All(job => job.Steps.All(step => step.InWindow || !step.Resources.Contains(resource)));
            var time = 0.0;
            for (var t = 0; t < buckets; t++)
            {
                var share = inWindow ? open[t] : 1;
                time += share;
                AtMost(problem.Capacities[resource] * share, _uses[resource][t]);
                if (!isHeld)
                {
                    AtMost(problem.Capacities[resource] * time, _work[resource][t]);
                }
            }
        }
    }

    private void AtMost(double most, Dictionary<Variable, double> terms)
    {
        // Rows that nothing can break only cost time.
        if (terms.Sum(term => Math.Max(0, term.Value) * term.Key.Ub()) > most)
        {
            AtMost(most, [.. terms.Select(term => (term.Key, term.Value))]);
        }
    }

    private void AtMost(double most, params (Variable Count, double Factor)[] terms)
    {
        var row = solver.MakeConstraint(double.NegativeInfinity, most, "");
        foreach (var (count, factor) in terms)
        {
            row.SetCoefficient(count, factor);
        }
    }

    private static void Add(Dictionary<Variable, double> terms, Variable? count, double factor)
    {
        if (count is not null && factor != 0)
        {
            terms[count] = terms.GetValueOrDefault(count) + factor;
        }
    }

    private static Dictionary<Variable, double>[][] Empty(int resources, int buckets) =>
        [.. Enumerable.Range(0, resources)
        .Select(_ => Enumerable.Range(0, buckets).Select(_ => new Dictionary<Variable, double>()).ToArray())];
}
