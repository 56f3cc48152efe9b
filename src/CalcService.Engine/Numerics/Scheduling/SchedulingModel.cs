using Google.OrTools.Sat;
using Google.OrTools.Util;

namespace CalcService.Engine.Numerics.Scheduling;

/// <summary>
/// The schedule as a constraint programme for CP-SAT (Google OR-Tools), for jobs that are few. One worker, a fixed seed and a limit in
/// deterministic time: the same answer everywhere.
/// </summary>
internal sealed class SchedulingModel
{
    /// <summary>Deterministic time, roughly seconds.</summary>
    private const double Time = .5;

    /// <summary>With more jobs than this, nothing better than a good list is found in the time.</summary>
    private const int MostJobs = 20;

    /// <summary>With more jobs times stretches than this, the time is gone before the search begins.</summary>
    private const int MostAlternatives = 1500;

    private readonly SchedulingProblem _problem;

    /// <summary>Of each kind of job.</summary>
    private readonly IReadOnlyDictionary<int, List<Stretch>> _stretches;
    private readonly CpModel _model = new();
    private readonly IntVar[][] _starts;
    private readonly IntVar[][] _releases;
    private readonly List<(IntervalVar Interval, int Resource)> _uses = [];
    private readonly List<(IntVar Variable, Func<ScheduledJob[], long> Value)> _hints = [];
    private readonly IntVar _finish;

    private SchedulingModel(SchedulingProblem problem, IReadOnlyDictionary<int, List<Stretch>> stretches)
    {
        (_problem, _stretches) = (problem, stretches);
        _finish = _model.NewIntVar(0, problem.Horizon, "finish");
        _starts = [.. problem.Jobs.Select(Steps)];
        _releases = [.. problem.Jobs.Select(Releases)];
        for (var resource = 0; resource < problem.Capacities.Count; resource++)
        {
            var uses = _uses.Where(use => use.Resource == resource).Select(use => use.Interval).ToArray();
            if (uses.Length > problem.Capacities[resource])
            {
                _model.AddCumulative(problem.Capacities[resource]).AddDemands(uses, Enumerable.Repeat(1, uses.Length));
            }
        }

        // Jobs of one kind in the order of the problem: any other order is the same schedule.
        foreach (var kind in problem.Jobs.Select((job, j) => (job.Kind, j)).GroupBy(pair => pair.Kind, pair => pair.j))
        {
            foreach (var (first, second) in kind.Zip(kind.Skip(1)))
            {
                var step = problem.Jobs[first].Anchor ?? 0;
                _model.Add(_starts[first][step] <= _starts[second][step]);
            }
        }
    }

    /// <summary>
    /// A schedule that ends no later than a known one, and what no schedule ends sooner than; null where none was found, or none was looked
    /// for.
    /// </summary>
    public static (ScheduledJob[] Jobs, long Bound)? Solve(SchedulingProblem problem, ScheduledJob[]? known, long bound,
        CancellationToken cancellationToken)
    {
        if (problem.Jobs.Count > MostJobs)
        {
            return null;
        }

        var stretches = problem.Jobs.DistinctBy(job => job.Kind).ToDictionary(job => job.Kind, job => Stretches(problem, job));
        if (problem.Jobs.Sum(job => stretches[job.Kind].Count) > MostAlternatives)
        {
            return null;
        }

        var within = known is null ? problem : problem with { Horizon = ListSchedule.FinishOf(problem, known) };
        return new SchedulingModel(within, stretches).Minimise(known, bound, cancellationToken);
    }

    private (ScheduledJob[] Jobs, long Bound)? Minimise(ScheduledJob[]? known, long bound, CancellationToken cancellationToken)
    {
        _model.Add(_finish >= bound);
        _model.Minimize(_finish);
        if (known is not null)
        {
            Hint(known);
        }

        var solver = new CpSolver
        {
            StringParameters = FormattableString.Invariant($"num_workers:1 random_seed:1 max_deterministic_time:{Time}"),
        };
        using var stop = cancellationToken.Register(solver.StopSearch);
        var status = solver.Solve(_model);
        cancellationToken.ThrowIfCancellationRequested();
        return status is CpSolverStatus.Optimal or CpSolverStatus.Feasible
            ? (Read(solver), Math.Max(bound, (long)Math.Ceiling(solver.BestObjectiveBound - 1e-6)))
            : null;
    }

    private void Hint(ScheduledJob[] jobs)
    {
        _model.AddHint(_finish, ListSchedule.FinishOf(_problem, jobs));
        foreach (var (variable, value) in _hints)
        {
            _model.AddHint(variable, value(jobs));
        }
    }

    private IntVar[] Steps(SchedulingJob job, int j)
    {
        var starts = new IntVar[job.Steps.Count];
        for (var s = 0; s < starts.Length; s++)
        {
            var step = job.Steps[s];
            var start = starts[s] = _model.NewIntVarFromDomain(StartsOf(job, s), $"start{j}.{s}");
            var number = s;
            _hints.Add((start, jobs => jobs[j].Starts[number]));
            if (s > 0)
            {
                _model.Add(starts[s] >= starts[s - 1] + job.Steps[s - 1].Duration);
            }

            _uses.AddRange(step.Resources.Select(resource =>
                (_model.NewFixedSizeIntervalVar(starts[s], step.Duration, $"use{j}.{s}.{resource}"), resource)));
        }

        _model.Add(_finish >= starts[^1] + job.Steps[^1].Duration);
        return starts;
    }

    /// <summary>Where a step can start: inside the windows, and an anchor at the beginning of a slot that has all releases.</summary>
    private Domain StartsOf(SchedulingJob job, int s)
    {
        var step = job.Steps[s];
        var domain = step.InWindow
            ? Domain.FromIntervals([.. _problem.Windows.Where(window => window.To - window.From >= step.Duration)
            .Select(window => new[] { window.From, window.To - step.Duration })])
            : new Domain(0, _problem.Horizon - step.Duration);
        if (job.Anchor != s)
        {
            return domain;
        }

        return domain.IntersectionWith(
            Domain.FromValues([.. _stretches[job.Kind].SelectMany(stretch => Enumerable.Range(stretch.From, stretch.To - stretch.From + 1))
            .Select(slot => slot * _problem.Slot)]));
    }

    /// <summary>Slots one after another in which every release comes as long after the start.</summary>
    private sealed record Stretch(int From, int To, long[] Delays);

    /// <summary>Of a job whose start decides about releases; none of another.</summary>
    private static List<Stretch> Stretches(SchedulingProblem problem, SchedulingJob job)
    {
        var stretches = new List<Stretch>();
        for (var slot = 0; slot < (job.Anchor is null ? 0 : job.Releases[0].NotBefore.Count); slot++)
        {
            if (job.Releases.Any(release => release.NotBefore[slot] < 0))
            {
                continue;
            }

            long[] delays = [.. job.Releases.Select(release => release.NotBefore[slot] - (slot * problem.Slot))];
            if (stretches is [.., var last] && last.To == slot - 1 && last.Delays.SequenceEqual(delays))
            {
                stretches[^1] = last with { To = slot };
            }
            else
            {
                stretches.Add(new(slot, slot, delays));
            }
        }

        return stretches;
    }

    private IntVar[] Releases(SchedulingJob job, int j)
    {
        if (job.Anchor is not { } anchor)
        {
            return [];
        }

        var start = _starts[j][anchor];
        var stretches = _stretches[job.Kind];
        var within = stretches.Select(stretch => _model.NewBoolVar($"stretch{j}.{stretch.From}")).ToArray();
        _model.AddExactlyOne(within);
        for (var i = 0; i < within.Length; i++)
        {
            var stretch = stretches[i];
            _model.AddLinearConstraint(start, stretch.From * _problem.Slot, stretch.To * _problem.Slot).OnlyEnforceIf(within[i]);
            _hints.Add((within[i], jobs => jobs[j].Starts[anchor] / _problem.Slot >= stretch.From
                && jobs[j].Starts[anchor] / _problem.Slot <= stretch.To ? 1 : 0));
        }

        var releases = job.Releases.Select((release, r) =>
        {
            var until = _model.NewIntVar(0, Math.Max(_problem.Horizon, release.NotBefore.Max()), $"release{j}.{r}");
            for (var i = 0; i < within.Length; i++)
            {
                _model.Add(until == start + stretches[i].Delays[r]).OnlyEnforceIf(within[i]);
            }

            _hints.Add((until, jobs => jobs[j].Releases[r]));
            _model.Add(_starts[j][release.Step] >= until);
            return until;
        }).ToArray();
        foreach (var hold in job.Holds)
        {
            var from = _starts[j][hold.FromStep];
            var length = _model.NewIntVar(0, Math.Max(_problem.Horizon, job.Releases[hold.UntilRelease].NotBefore.Max()),
                $"length{j}.{hold.Resource}");
            _hints.Add((length, jobs => jobs[j].Releases[hold.UntilRelease] - jobs[j].Starts[hold.FromStep]));
            _uses.Add((_model.NewIntervalVar(from, length, releases[hold.UntilRelease], $"hold{j}.{hold.Resource}"), hold.Resource));
        }

        return releases;
    }

    private ScheduledJob[] Read(CpSolver solver) =>
        [.. _starts.Zip(_releases,
        (starts, releases) => new ScheduledJob([.. starts.Select(solver.Value)], [.. releases.Select(solver.Value)]))];
}
