namespace CalcService.Engine.Numerics.Scheduling;

/// <summary>Schedules jobs so that the last one ends as soon as possible.</summary>
/// <remarks>
/// Counts give a bound and say in which order steps should come; lists read from them are good schedules of many jobs, and a constraint
/// programme goes on from the best list where jobs are few. All of it is the same everywhere.
/// </remarks>
public static class Scheduler
{
    /// <summary>How far beyond the bound counts are asked for, in slots, and whether last steps wait.</summary>
    private static readonly (int Later, bool LastWaits)[] Guides = [(0, false), (0, true), (6, false), (6, true), (12, false), (12, true)];

    private static readonly double[] Shares = [.02, .25, .5, .75, .98];

    /// <summary>The best schedule found, or null where none was found or none exists.</summary>
    public static Schedule? Solve(SchedulingProblem problem, CancellationToken cancellationToken)
    {
        // A step that fits no window, or an anchor without a slot, needs no solver to be impossible.
        var longest = problem.Windows.Count == 0 ? 0 : problem.Windows.Max(window => window.To - window.From);
        if (problem.Jobs.Any(job => job.Steps.Any(step => step.InWindow && step.Duration > longest)
            || (job.Anchor is not null
            && Enumerable.Range(0, job.Releases[0].NotBefore.Count).All(slot => job.Releases.Any(release => release.NotBefore[slot] < 0)))))
        {
            return null;
        }

        var best = ListSchedule.Of(problem);
        long? Finish() => best is null ? null : ListSchedule.FinishOf(problem, best);
        var counts = new CountRelaxation(problem, cancellationToken);
        if (counts.Bound(ListSchedule.Bound(problem), Finish()) is not { } bound)
        {
            return null;
        }

        var lists = from guide in Finish() <= bound ? [] : Guides
                    from targets in counts.Targets(bound + (guide.Later * problem.Slot), guide.LastWaits, SharesOf(problem.Jobs[0]))
                    select ListSchedule.Of(problem, targets);
        best = lists.Prepend(best).OfType<ScheduledJob[]>().MinBy(list => (ListSchedule.FinishOf(problem, list), EndsOf(list)));
        if (!(Finish() <= bound) && SchedulingModel.Solve(problem, best, bound, cancellationToken) is var (jobs, proven))
        {
            (best, bound) = (Forward(problem, jobs), proven);
        }

        return best is null ? null : Of(best, ListSchedule.FinishOf(problem, best), bound);
    }

    /// <summary>When jobs end on the whole: of two schedules the one with less is done sooner.</summary>
    private static long EndsOf(ScheduledJob[] jobs) => jobs.Sum(job => job.Starts[^1]);

    private static Schedule Of(ScheduledJob[] jobs, long finish, long bound) =>
        new(jobs, finish, finish <= bound, finish <= bound ? 0 : (double)(finish - bound) / finish);

    /// <summary>Shares by which the counts of steps are read: one before the anchor, one from it on, and one after it.</summary>
    private static IEnumerable<double[]> SharesOf(SchedulingJob job) =>
        from before in Shares
        from anchor in job.Anchor is null ? [before] : Shares
        from after in job.Anchor is null ? [before] : Shares
        select job.Steps.Select((_, s) => s < job.Anchor ? before : s == job.Anchor ? anchor : after).ToArray();

    /// <summary>The same schedule with every step as soon as it can be in its order, where that ends no later.</summary>
    private static ScheduledJob[] Forward(SchedulingProblem problem, ScheduledJob[] jobs) =>
        ListSchedule.Of(problem, [.. jobs.Select(job => job.Starts.Select(start => (double)start).ToArray())]) is { } list
        && ListSchedule.FinishOf(problem, list) <= ListSchedule.FinishOf(problem, jobs)
            ? list
            : jobs;

    /// <summary>
    /// Which one of each resource every use has, so that nobody does two things at once: each takes the first that is free.
    /// </summary>
    /// <param name="uses">Start, end and resource of each use.</param>
    /// <param name="capacities">How many there are of each resource.</param>
    public static int[] Assign(IReadOnlyList<(long From, long To, int Resource)> uses, IReadOnlyList<int> capacities)
    {
        var assigned = new int[uses.Count];
        var freeFrom = capacities.Select(capacity => new long[capacity]).ToArray();
        foreach (var i in Enumerable.Range(0, uses.Count).OrderBy(i => uses[i].From).ThenBy(i => uses[i].To).ThenBy(i => i))
        {
            var free = freeFrom[uses[i].Resource];
            assigned[i] = Array.FindIndex(free, time => time <= uses[i].From);
            free[assigned[i]] = uses[i].To;
        }

        return assigned;
    }
}
