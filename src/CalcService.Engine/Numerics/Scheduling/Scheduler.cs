namespace CalcService.Engine.Numerics.Scheduling;

/// <summary>Schedules jobs so that the last one ends as soon as possible.</summary>
public static class Scheduler
{
    /// <summary>The best schedule found, or null where none was found or none exists.</summary>
    public static Schedule? Solve(SchedulingProblem problem, CancellationToken cancellationToken)
    {
        // A step that fits no window, or an anchor without a slot, needs no solver to be impossible.
        var longest = problem.Windows.Count == 0 ? 0 : problem.Windows.Max(window => window.To - window.From);
        var impossible = problem.Jobs.Any(job =>
            job.Steps.Any(step => step.InWindow && step.Duration > longest)
            || (job.Anchor is not null && Enumerable.Range(0, job.Releases[0].NotBefore.Count).All(slot => job.Releases.Any(release => release.NotBefore[slot] < 0))));
        return impossible ? null : SchedulingModel.Solve(problem, cancellationToken);
    }

    /// <summary>Which one of each resource every use has, so that nobody does two things at once: each takes the first that is free.</summary>
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
