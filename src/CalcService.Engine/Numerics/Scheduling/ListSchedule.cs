namespace CalcService.Engine.Numerics.Scheduling;

/// <summary>
/// A schedule from an order: each step in its turn, as soon as everything it needs is free.
/// </summary>
internal sealed class ListSchedule
{
    private readonly SchedulingProblem _problem;

    /// <summary>How many of a resource are taken at each time up to the horizon.</summary>
    private readonly int[][] _taken;

    private ListSchedule(SchedulingProblem problem)
    {
        _problem = problem;
        _taken = [.. problem.Capacities.Select(_ => new int[problem.Horizon])];
    }

    /// <summary>
    /// The better of two orders: job by job, and all of them up to their anchor before what comes after it; null where neither finds a
    /// place before the horizon.
    /// </summary>
    public static ScheduledJob[]? Of(SchedulingProblem problem)
    {
        var jobs = problem.Jobs.Select((job, j) => (job, j)).ToArray();
        var whole = new ListSchedule(problem).PlaceAll(jobs.Select(entry => (entry.j, 0, entry.job.Steps.Count)));
        var halves = new ListSchedule(problem)
            .PlaceAll(jobs.Select(entry => (entry.j, 0, HalfOf(entry.job)))
            .Concat(jobs.Select(entry => (entry.j, HalfOf(entry.job), entry.job.Steps.Count))));
        var best = new[] { whole, halves }.OfType<ScheduledJob[]>().MinBy(schedule => FinishOf(problem, schedule));
        return best is null ? null : InOrder(problem, best);
    }

    /// <summary>
    /// Steps in the order of their targets, each as soon as everything it needs is free; null where one finds no place before the horizon.
    /// </summary>
    public static ScheduledJob[]? Of(SchedulingProblem problem, double[][] targets)
    {
        var parts = problem.Jobs.SelectMany((job, j) =>
            PartsOf(job).Select(part => (Job: j, part.From, part.To, At: Enumerable.Range(0, part.From + 1).Max(s => targets[j][s]))));
        var placed = new ListSchedule(problem)
            .PlaceAll(parts.OrderBy(part => part.At).ThenBy(part => part.Job).ThenBy(part => part.From)
            .Select(part => (part.Job, part.From, part.To)));
        return placed is null ? null : InOrder(problem, placed);
    }

    /// <summary>One step each; what is held until the anchor has started is placed with it.</summary>
    private static IEnumerable<(int From, int To)> PartsOf(SchedulingJob job)
    {
        for (var s = 0; s < job.Steps.Count;)
        {
            var to = job.Holds.Any(hold => hold.FromStep == s) && job.Anchor >= s ? job.Anchor.Value + 1 : s + 1;
            yield return (s, to);
            s = to;
        }
    }

    private static int HalfOf(SchedulingJob job) => job.Anchor is { } anchor ? anchor + 1 : job.Steps.Count;

    private ScheduledJob[]? PlaceAll(IEnumerable<(int Job, int From, int To)> parts)
    {
        ScheduledJob[] placed = [.. _problem.Jobs.Select(job => new ScheduledJob(new long[job.Steps.Count], new long[job.Releases.Count]))];
        return parts.All(part =>
            Place(_problem.Jobs[part.Job], (long[])placed[part.Job].Starts, (long[])placed[part.Job].Releases, part.From, part.To)) ? placed
            : null;
    }

    /// <summary>No schedule ends sooner: each resource has its work to do, each job its way to go.</summary>
    public static long Bound(SchedulingProblem problem)
    {
        var bound = 0L;
        for (var resource = 0; resource < problem.Capacities.Count; resource++)
        {
            var work = problem.Jobs.Sum(job =>
                job.Steps.Where(step => step.InWindow && step.Resources.Contains(resource)).Sum(step => step.Duration));
            bound = Math.Max(bound, WindowTime(problem, (work + problem.Capacities[resource] - 1) / problem.Capacities[resource]));
        }

        return Math.Max(bound, problem.Jobs.DistinctBy(job => job.Kind).Max(job => Alone(problem, job)));
    }

    /// <summary>
    /// When a job ends that has everything to itself, from whichever slot of its anchor that is soonest; never before the horizon where it
    /// can't.
    /// </summary>
    private static long Alone(SchedulingProblem problem, SchedulingJob job)
    {
        var anchor = job.Anchor ?? job.Steps.Count;
        var ready = job.Steps.Take(anchor).Aggregate(0L, (time, step) => EndAlone(problem, step, time));
        if (job.Anchor is null)
        {
            return ready;
        }

        var ends = from slot in Enumerable.Range(0, job.Releases[0].NotBefore.Count)
                   let start = slot * problem.Slot
                   where start >= ready && job.Releases.All(release => release.NotBefore[slot] >= 0)
                       && EndAlone(problem, job.Steps[anchor], start) == start + job.Steps[anchor].Duration
                   select Enumerable.Range(anchor + 1, job.Steps.Count - anchor - 1)
                       .Aggregate(start + job.Steps[anchor].Duration, (time, s) =>
                       EndAlone(problem, job.Steps[s],
                       job.Releases.Where(release => release.Step == s).Select(release => release.NotBefore[slot]).Append(time).Max()));
        return ends.DefaultIfEmpty(problem.Horizon).Min();
    }

    /// <summary>When a step ends that has only windows to wait for.</summary>
    private static long EndAlone(SchedulingProblem problem, SchedulingStep step, long from)
    {
        if (!step.InWindow)
        {
            return from + step.Duration;
        }

        var window = problem.Windows.FirstOrDefault(window => Math.Max(from, window.From) + step.Duration <= window.To,
            (From: problem.Horizon, To: problem.Horizon));
        return Math.Max(from, window.From) + step.Duration;
    }

    /// <summary>When the last job ends.</summary>
    public static long FinishOf(SchedulingProblem problem, ScheduledJob[] jobs) =>
        problem.Jobs.Zip(jobs, (job, placed) => placed.Starts[^1] + job.Steps[^1].Duration).Max();

    /// <summary>When so much time of windows has gone by.</summary>
    private static long WindowTime(SchedulingProblem problem, long work)
    {
        foreach (var (from, to) in problem.Windows)
        {
            if (work <= to - from)
            {
                return work == 0 ? 0 : from + work;
            }

            work -= to - from;
        }

        return 0;
    }

    /// <summary>Jobs of one kind change places so that their anchors rise.</summary>
    private static ScheduledJob[] InOrder(SchedulingProblem problem, ScheduledJob[] jobs)
    {
        foreach (var kind in problem.Jobs.Select((job, j) => (job.Kind, job.Anchor, j)).GroupBy(entry => entry.Kind))
        {
            var places = kind.Select(entry => entry.j).ToArray();
            var sorted = places.Select(j => jobs[j]).OrderBy(job => job.Starts[kind.First().Anchor ?? 0]).ToArray();
            for (var i = 0; i < places.Length; i++)
            {
                jobs[places[i]] = sorted[i];
            }
        }

        return jobs;
    }

    /// <summary>Places some steps of a job; false where one finds no place.</summary>
    private bool Place(SchedulingJob job, long[] starts, long[] releases, int first, int end)
    {
        var least = new long[starts.Length];
        for (var s = first; s < end; s++)
        {
            var from = Math.Max(least[s], s == 0 ? 0 : starts[s - 1] + job.Steps[s - 1].Duration);
            from = job.Releases.Select((release, r) => release.Step == s ? releases[r] : 0).Append(from).Max();
            if (Fit(job, s, from) is not { } start)
            {
                return false;
            }

            starts[s] = start;
            if (s != job.Anchor)
            {
                continue;
            }

            for (var r = 0; r < releases.Length; r++)
            {
                releases[r] = job.Releases[r].NotBefore[(int)(start / _problem.Slot)];
            }

            foreach (var hold in job.Holds)
            {
                if (FirstFree(hold.Resource, starts[hold.FromStep], releases[hold.UntilRelease]) is { } later)
                {
                    // Not free so long: begin the hold again when one of those who have it now is done.
                    least[hold.FromStep] = later;
                    s = hold.FromStep - 1;
                    break;
                }
            }
        }

        for (var s = first; s < end; s++)
        {
            foreach (var resource in job.Steps[s].Resources)
            {
                Take(resource, starts[s], starts[s] + job.Steps[s].Duration);
            }
        }

        foreach (var hold in job.Holds.Where(_ => job.Anchor >= first && job.Anchor < end))
        {
            Take(hold.Resource, starts[hold.FromStep], releases[hold.UntilRelease]);
        }

        return true;
    }

    /// <summary>The first start from a time on at which a step fits.</summary>
    private long? Fit(SchedulingJob job, int s, long from)
    {
        var step = job.Steps[s];
        for (var start = from; start + step.Duration <= _problem.Horizon;)
        {
            var next = start;
            if (step.InWindow)
            {
                var window = _problem.Windows.FirstOrDefault(window => window.To - step.Duration >= start
                    && window.To - window.From >= step.Duration, (-1, -1));
                if (window.To < 0)
                {
                    return null;
                }

                next = Math.Max(next, window.From);
            }

            if (job.Anchor == s)
            {
                next = (next + _problem.Slot - 1) / _problem.Slot * _problem.Slot;
                var slot = next / _problem.Slot;
                if (slot >= job.Releases[0].NotBefore.Count)
                {
                    return null;
                }

                next = job.Releases.Any(release => release.NotBefore[(int)slot] < 0) ? next + _problem.Slot : next;
            }

            if (next + step.Duration > _problem.Horizon)
            {
                return null;
            }

            foreach (var resource in step.Resources)
            {
                next = Math.Max(next, FirstFree(resource, next, next + step.Duration) ?? next);
            }

            if (next == start)
            {
                return start;
            }

            start = next;
        }

        return null;
    }

    private void Take(int resource, long from, long to)
    {
        foreach (ref var taken in _taken[resource].AsSpan((int)from, (int)(Math.Min(to, _problem.Horizon) - from)))
        {
            taken++;
        }
    }

    /// <summary>Null where a resource has one free all through a time; else when the last time ends in which it has none.</summary>
    private long? FirstFree(int resource, long from, long to)
    {
        var last = _taken[resource].AsSpan((int)from, (int)(Math.Min(to, _problem.Horizon) - from))
            .LastIndexOf(_problem.Capacities[resource]);
        return last < 0 ? null : from + last + 1;
    }
}
