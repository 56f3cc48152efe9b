using Google.OrTools.Sat;
using Google.OrTools.Util;

namespace CalcService.Engine.Numerics.Scheduling;

/// <summary>
/// The schedule as a constraint programme for CP-SAT (Google OR-Tools), the only type here that touches the library, so that a cure without a
/// shop never loads it. One worker, a fixed seed and limits in deterministic time: the same answer everywhere. The finish is what is proven;
/// after it, starts are drawn forward as far as their own time goes.
/// </summary>
internal sealed class SchedulingModel
{
    /// <summary>Deterministic time for the finish, roughly seconds.</summary>
    private const double FinishTime = .5;

    /// <summary>Deterministic time for drawing starts forward.</summary>
    private const double ForwardTime = .2;

    private readonly SchedulingProblem _problem;
    private readonly CpModel _model = new();
    private readonly IntVar[][] _starts;
    private readonly IntVar[][] _releases;
    private readonly List<(IntervalVar Interval, int Resource)> _uses = [];
    private readonly IntVar _finish;

    private SchedulingModel(SchedulingProblem problem)
    {
        _problem = problem;
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

    /// <summary>The best schedule found, or null where none was.</summary>
    public static Schedule? Solve(SchedulingProblem problem, CancellationToken cancellationToken)
    {
        var bound = ListSchedule.Bound(problem);
        var list = ListSchedule.Of(problem);
        var finish = list is null ? problem.Horizon : problem.Jobs.Zip(list, ListSchedule.EndOf).Max();
        if (list is not null && finish == bound)
        {
            return new(list, finish, IsOptimal: true, Gap: 0);
        }

        var better = new SchedulingModel(problem with { Horizon = finish }).Minimise(list, bound, cancellationToken);
        return better ?? (list is null ? null : new(list, finish, IsOptimal: false, GapOf(finish, bound)));
    }

    private static double GapOf(long finish, long bound) => finish == 0 ? 0 : Math.Max(0, (double)(finish - bound) / finish);

    private Schedule? Minimise(ScheduledJob[]? list, long least, CancellationToken cancellationToken)
    {
        _model.Add(_finish >= least);
        _model.Minimize(_finish);
        if (list is not null)
        {
            Hint(list);
        }

        if (Run(FinishTime, cancellationToken) is not { } first)
        {
            return null;
        }

        var (solver, proven) = first;
        var finish = (long)Math.Round(solver.ObjectiveValue);
        var bound = (long)Math.Ceiling(solver.BestObjectiveBound - 1e-6);
        var best = Read(solver);

        _model.Add(_finish <= finish);
        _model.ClearHints();
        Hint(best);

        _model.Minimize(LinearExpr.Sum(_starts.SelectMany(starts => starts)));
        if (Run(ForwardTime, cancellationToken) is { } second)
        {
            best = Read(second.Solver);
        }

        return new(best, finish, proven, proven ? 0 : GapOf(finish, bound));
    }

    private void Hint(ScheduledJob[] jobs)
    {
        for (var j = 0; j < jobs.Length; j++)
        {
            for (var s = 0; s < _starts[j].Length; s++)
            {
                _model.AddHint(_starts[j][s], jobs[j].Starts[s]);
            }

            for (var r = 0; r < _releases[j].Length; r++)
            {
                _model.AddHint(_releases[j][r], jobs[j].Releases[r]);
            }
        }
    }

    private (CpSolver Solver, bool IsProven)? Run(double time, CancellationToken cancellationToken)
    {
        var solver = new CpSolver
        {
            StringParameters = FormattableString.Invariant($"num_workers:1 random_seed:1 max_deterministic_time:{time}"),
        };
        using var stop = cancellationToken.Register(solver.StopSearch);
        var status = solver.Solve(_model);
        cancellationToken.ThrowIfCancellationRequested();
        return status is CpSolverStatus.Optimal or CpSolverStatus.Feasible ? (solver, status == CpSolverStatus.Optimal) : null;
    }

    private IntVar[] Steps(SchedulingJob job, int j)
    {
        var starts = new IntVar[job.Steps.Count];
        for (var s = 0; s < starts.Length; s++)
        {
            var step = job.Steps[s];
            starts[s] = _model.NewIntVarFromDomain(StartsOf(job, s), $"start{j}.{s}");
            if (s > 0)
            {
                _model.Add(starts[s] >= starts[s - 1] + job.Steps[s - 1].Duration);
            }

            _uses.AddRange(step.Resources.Select(resource => (_model.NewFixedSizeIntervalVar(starts[s], step.Duration, $"use{j}.{s}.{resource}"), resource)));
        }

        _model.Add(_finish >= starts[^1] + job.Steps[^1].Duration);
        return starts;
    }

    /// <summary>Where a step can start: inside the windows, and an anchor at the beginning of a slot that has all releases.</summary>
    private Domain StartsOf(SchedulingJob job, int s)
    {
        var step = job.Steps[s];
        var domain = step.InWindow
            ? Domain.FromIntervals([.. _problem.Windows.Where(window => window.To - window.From >= step.Duration).Select(window => new[] { window.From, window.To - step.Duration })])
            : new Domain(0, _problem.Horizon - step.Duration);
        if (job.Anchor != s)
        {
            return domain;
        }

        var slots = Enumerable.Range(0, job.Releases[0].NotBefore.Count).Where(slot => job.Releases.All(release => release.NotBefore[slot] >= 0));
        return domain.IntersectionWith(Domain.FromValues([.. slots.Select(slot => slot * _problem.Slot)]));
    }

    private IntVar[] Releases(SchedulingJob job, int j)
    {
        if (job.Anchor is not { } anchor)
        {
            return [];
        }

        var slot = _model.NewIntVar(0, job.Releases[0].NotBefore.Count - 1, $"slot{j}");
        _model.Add(_starts[j][anchor] == slot * _problem.Slot);
        var releases = job.Releases.Select((release, r) =>
        {
            var until = _model.NewIntVar(0, Math.Max(_problem.Horizon, release.NotBefore.Max()), $"release{j}.{r}");
            _model.AddElement(slot, release.NotBefore.Select(time => Math.Max(0, time)), until);
            _model.Add(_starts[j][release.Step] >= until);
            return until;
        }).ToArray();
        foreach (var hold in job.Holds)
        {
            var from = _starts[j][hold.FromStep];
            var length = _model.NewIntVar(0, Math.Max(_problem.Horizon, job.Releases[hold.UntilRelease].NotBefore.Max()), $"length{j}.{hold.Resource}");
            _uses.Add((_model.NewIntervalVar(from, length, releases[hold.UntilRelease], $"hold{j}.{hold.Resource}"), hold.Resource));
        }

        return releases;
    }

    private ScheduledJob[] Read(CpSolver solver) =>
        [.. _starts.Zip(_releases, (starts, releases) => new ScheduledJob([.. starts.Select(solver.Value)], [.. releases.Select(solver.Value)]))];
}
