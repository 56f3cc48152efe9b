using Google.OrTools.LinearSolver;

namespace CalcService.Engine.Numerics.Scheduling;

/// <summary>
/// A schedule that only counts: N(τ) jobs of a kind have begun a step by time τ, and C(t) is the mean of N over bucket t, so a real number.
/// Every schedule gives counts that keep the constraints here, so where no counts do, no schedule does. Counts that do tell how a good
/// schedule goes.
/// </summary>
/// <remarks>
/// Jobs of a kind are the same, so they can go through each step in one order. With bucket length 1 and a duration d:
/// C(t) rises with t and where a start is possible only; a step follows the one before, N'(τ) ≤ N(τ − d), so C'(t) ≤ C(t − ⌊d⌋);
/// a resource is occupied N(τ) − N(τ − d) times, so Σ C(t) − C(t − ⌊d⌋) ≤ capacity; and up to the end of bucket t it has worked
/// ∫ N(τ) − N(τ − d) dτ, at least Σ C over the last ⌊d⌋ buckets and the fraction of one more, which is at most capacity × time in windows.
/// A start at s with a release at R(s) has 1 in the mean of bucket t from R(s) on, so C'(t) ≤ C(q) with the first q that has begun as much
/// of every such start.
/// Solved by GLOP (Google OR-Tools): one thread, the same answer everywhere.
/// </remarks>
internal sealed class CountRelaxation
{
    /// <summary>Buckets grow until the counts of all steps are no more than this.</summary>
    private const int MostCounts = 2000;

    private readonly SchedulingProblem _problem;
    private readonly SchedulingJob[] _kinds;
    private readonly int[] _quantities;
    private readonly long _bucket;
    private readonly double[] _open;
    private readonly CancellationToken _cancellationToken;

    /// <param name="problem">What is to be scheduled.</param>
    /// <param name="cancellationToken">Looked at before each programme.</param>
    public CountRelaxation(SchedulingProblem problem, CancellationToken cancellationToken)
    {
        (_problem, _cancellationToken) = (problem, cancellationToken);
        var kinds = problem.Jobs.GroupBy(job => job.Kind).ToArray();
        _kinds = [.. kinds.Select(kind => kind.First())];
        _quantities = [.. kinds.Select(kind => kind.Count())];
        var open = problem.Windows.Sum(window => window.To - window.From);
        for (_bucket = problem.Slot; (open == 0 ? problem.Horizon : open) / _bucket * _kinds.Sum(kind => kind.Steps.Count) > MostCounts;)
        {
            _bucket *= 2;
        }

        _open = [.. Enumerable.Range(0, BucketsTo(problem.Horizon)).Select(OpenShare)];
    }

    /// <summary>No schedule ends sooner; null where none ends before the horizon.</summary>
    /// <param name="known">A bound from elsewhere.</param>
    /// <param name="reached">When a known schedule ends; null where none is known.</param>
    public long? Bound(long known, long? reached)
    {
        int[] ends =
            [.. Enumerable.Range(0, _open.Length).Where(t => _open[t] > 0).Select(t => t + 1)
            .Where(end => end * _bucket >= known && !(end * _bucket >= reached))];
        var (no, yes) = (-1, ends.Length);
        while (yes - no > 1)
        {
            var middle = (no + yes) / 2;
            if (By(ends[middle], lastWaits: null) is null)
            {
                no = middle;
            }
            else
            {
                yes = middle;
            }
        }

        // At the last bucket the counts may yet end inside it.
        return no < 0 ? known : no < ends.Length - 1 || reached is not null ? Math.Max(known, (ends[no] * _bucket) + 1) : null;
    }

    /// <summary>
    /// When each step of each job should start, so that all is done by a time with the work that waits for nothing done first: the i-th of
    /// a kind when i and a share of them have. None where not even counts are.
    /// </summary>
    /// <param name="by">When all is to be done.</param>
    /// <param name="lastWaits">Whether the last step of each job is left until the others are done; it holds nothing up.</param>
    /// <param name="shares">For each answer the share by which each step is read.</param>
    public IEnumerable<double[][]> Targets(long by, bool lastWaits, IEnumerable<double[]> shares) =>
        By(Math.Min(_open.Length, BucketsTo(by)), lastWaits) is { Length: > 0 } begun ? shares.Select(share => Read(begun, share)) : [];

    private int BucketsTo(long time) => (int)((time + _bucket - 1) / _bucket);

    /// <summary>How much of a bucket lies in windows.</summary>
    private double OpenShare(int t) => _problem.Windows.Count == 0
        ? 1
        : _problem.Windows.Sum(window =>
        Math.Max(0, Math.Min(window.To, (t + 1) * _bucket) - Math.Max(window.From, t * _bucket))) / (double)_bucket;

    /// <summary>
    /// Counts with everything done by the end of a bucket; any, or those that rise soonest, with or without those of the last steps. Null
    /// where there are none, and empty where the solver can't say: that proves nothing.
    /// </summary>
    private double[][][]? By(int end, bool? lastWaits)
    {
        _cancellationToken.ThrowIfCancellationRequested();
        using var solver = Solver.CreateSolver("GLOP");
        var rows = new CountRows(solver, _problem.Capacities.Count, end);
        var counts = new Variable?[_kinds.Length][][];
        for (var k = 0; k < _kinds.Length; k++)
        {
            counts[k] = [.. _kinds[k].Steps.Select((_, s) => Counts(rows, k, s, end))];
            if (counts[k].Any(steps => steps[^1] is null))
            {
                return null;
            }

            Order(rows, _kinds[k], counts[k], end);
            Occupy(rows, _kinds[k], counts[k], end);
        }

        rows.Close(_problem, _open);
        var objective = solver.Objective();
        foreach (var steps in lastWaits is null ? [] : counts)
        {
            foreach (var count in steps.SkipLast(lastWaits == true ? 1 : 0).SelectMany(step => step).OfType<Variable>())
            {
                objective.SetCoefficient(count, objective.GetCoefficient(count) + 1);
            }
        }

        objective.SetMaximization();
        return solver.Solve() switch
        {
            Solver.ResultStatus.OPTIMAL =>
                [.. counts.Select(kind => kind.Select(step => step.Select(count => count?.SolutionValue() ?? 0).ToArray()).ToArray())],
            Solver.ResultStatus.INFEASIBLE => null,
            _ => [],
        };
    }

    /// <summary>The counts of a step: a new one in each bucket in which it may rise, null before the first.</summary>
    private Variable?[] Counts(CountRows rows, int k, int s, int end)
    {
        var (job, quantity) = (_kinds[k], _quantities[k]);
        var after = job.Steps.Skip(s).Sum(step => step.Duration);
        var counts = new Variable?[end];
        for (var t = 0; t < end; t++)
        {
            var before = t == 0 ? null : counts[t - 1];
            if (!MayStart(job, s, t, (end * _bucket) - after))
            {
                counts[t] = before;
                continue;
            }

            counts[t] = rows.Count(quantity);
            if (before is not null)
            {
                rows.NotMore(before, counts[t]!);
            }
        }

        // Begun early enough to be done: from then on all of them, so in the mean of that bucket the part of it that is left.
        var latest = end - ((double)job.Steps[s].Duration / _bucket);
        for (var t = (int)Math.Max(0, latest); t < end && t < latest + 1; t++)
        {
            if (counts[t] is { } count)
            {
                count.SetLb(quantity * Math.Min(1, t + 1 - latest));
            }
            else if (t >= latest)
            {
                counts[^1] = null;
            }
        }

        return counts;
    }

    /// <summary>Whether a start can lie in a bucket or the one before, of which a part is in this one's mean for the first time.</summary>
    private bool MayStart(SchedulingJob job, int s, int t, long latest)
    {
        var (from, to) = (((t - 1) * _bucket) + 1, Math.Min(((t + 1) * _bucket) - 1, latest));
        if (from > to || (job.Steps[s].InWindow && _problem.Windows.Count > 0
            && !_problem.Windows.Any(window => Math.Max(window.From, from) <= Math.Min(window.To - job.Steps[s].Duration, to))))
        {
            return false;
        }

        return job.Anchor != s || Slots(from, to).Any(slot => job.Releases.All(release => release.NotBefore[slot] >= 0));
    }

    private IEnumerable<int> Slots(long from, long to)
    {
        var first = (int)Math.Max(0, (from + _problem.Slot - 1) / _problem.Slot);
        var last = (int)Math.Min((to / _problem.Slot), _problem.Jobs[0].Releases.Count == 0 ? -1
            : _problem.Jobs[0].Releases[0].NotBefore.Count - 1);
        return Enumerable.Range(first, Math.Max(0, last - first + 1));
    }

    private void Order(CountRows rows, SchedulingJob job, Variable?[][] counts, int end)
    {
        for (var s = 1; s < counts.Length; s++)
        {
            var whole = (int)(job.Steps[s - 1].Duration / _bucket);
            rows.NotMore(counts[s], t => t - whole < 0 ? null : counts[s - 1][t - whole]);
        }

        foreach (var release in job.Releases)
        {
            var begun = Begun(job, release, end);
            rows.NotMore(counts[release.Step], t => begun[t] < 0 ? null : counts[job.Anchor!.Value][begun[t]]);
        }
    }

    /// <summary>For each bucket the one up to whose mean starts may have been released; -1 where none may.</summary>
    private int[] Begun(SchedulingJob job, SchedulingRelease release, int end)
    {
        var begun = new int[end];
        Array.Fill(begun, -1);
        for (var slot = 0; slot < release.NotBefore.Count; slot++)
        {
            if (job.Releases.Any(one => one.NotBefore[slot] < 0))
            {
                continue;
            }

            var (start, until) = ((double)slot * _problem.Slot / _bucket, (double)release.NotBefore[slot] / _bucket);
            for (var t = (int)until; t < end; t++)
            {
                begun[t] = Math.Max(begun[t], (int)Math.Min(t, Math.Ceiling(Math.Min(1, t + 1 - until) + start - 1 - 1e-9)));
                if (t >= until)
                {
                    break;
                }
            }
        }

        for (var t = 1; t < end; t++)
        {
            begun[t] = Math.Max(begun[t], begun[t - 1]);
        }

        return begun;
    }

    private void Occupy(CountRows rows, SchedulingJob job, Variable?[][] counts, int end)
    {
        for (var s = 0; s < counts.Length; s++)
        {
            var (whole, part) = ((int)(job.Steps[s].Duration / _bucket), (double)(job.Steps[s].Duration % _bucket) / _bucket);
            foreach (var resource in job.Steps[s].Resources)
            {
                for (var t = 0; t < end; t++)
                {
                    rows.Use(resource, t, counts[s][t], 1);
                    rows.Use(resource, t, t < whole ? null : counts[s][t - whole], -1);
                    for (var i = 0; i < whole && i <= t; i++)
                    {
                        rows.Work(resource, t, counts[s][t - i], 1);
                    }

                    rows.Work(resource, t, t < whole ? null : counts[s][t - whole], part);
                }
            }
        }

        foreach (var hold in job.Holds)
        {
            var begun = Begun(job, job.Releases[hold.UntilRelease], end);
            for (var t = 0; t < end; t++)
            {
                rows.Use(hold.Resource, t, counts[hold.FromStep][t], 1);
                rows.Use(hold.Resource, t, begun[t] < 0 ? null : counts[job.Anchor!.Value][begun[t]], -1);
            }
        }
    }

    private double[][] Read(double[][][] begun, double[] shares)
    {
        var starts = _problem.Jobs.Select(job => new double[job.Steps.Count]).ToArray();
        for (var k = 0; k < _kinds.Length; k++)
        {
            int[] jobs = [.. Enumerable.Range(0, starts.Length).Where(j => _problem.Jobs[j].Kind == _kinds[k].Kind)];
            for (var s = 0; s < begun[k].Length; s++)
            {
                var (before, i) = (0.0, 0);
                for (var t = 0; t < begun[k][s].Length; t++)
                {
                    var now = begun[k][s][t];
                    for (; i < jobs.Length && now >= i + shares[s]; i++)
                    {
                        starts[jobs[i]][s] = (t + ((i + shares[s] - before) / (now - before))) * _bucket;
                    }

                    before = now;
                }
            }
        }

        return starts;
    }
}
