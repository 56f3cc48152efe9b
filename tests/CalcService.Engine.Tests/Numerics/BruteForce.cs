using CalcService.Engine.Numerics.Scheduling;

namespace CalcService.Engine.Tests.Numerics;

/// <summary>Tries every schedule of a small problem, time unit by time unit.</summary>
public static class BruteForce
{
    /// <summary>The least finish, or null where nothing is allowed.</summary>
    public static long? Finish(SchedulingProblem problem)
    {
        long? best = null;
        long[][] starts = [.. problem.Jobs.Select(job => new long[job.Steps.Count])];
        Try(0, 0);
        return best;

        void Try(int job, int step)
        {
            if (job == problem.Jobs.Count)
            {
                if (IsAllowed(problem, starts))
                {
                    var finish = problem.Jobs.Select((one, j) => starts[j][^1] + one.Steps[^1].Duration).Max();
                    best = Math.Min(best ?? long.MaxValue, finish);
                }

                return;
            }

            var (next, nextStep) = step + 1 < problem.Jobs[job].Steps.Count ? (job, step + 1) : (job + 1, 0);
            var from = step == 0 ? 0 : starts[job][step - 1] + problem.Jobs[job].Steps[step - 1].Duration;
            for (var start = from; start + problem.Jobs[job].Steps[step].Duration <= (best ?? problem.Horizon + 1) - 1; start++)
            {
                starts[job][step] = start;
                Try(next, nextStep);
            }
        }
    }

    /// <summary>Whether windows, releases and capacities hold, looked up unit by unit.</summary>
    public static bool IsAllowed(SchedulingProblem problem, long[][] starts)
    {
        int[][] used = [.. problem.Capacities.Select(_ => new int[problem.Horizon + 20])];
        for (var j = 0; j < problem.Jobs.Count; j++)
        {
            var job = problem.Jobs[j];
            for (var s = 0; s < job.Steps.Count; s++)
            {
                var (from, to) = (starts[j][s], starts[j][s] + job.Steps[s].Duration);
                if (job.Steps[s].InWindow && !problem.Windows.Any(window => window.From <= from && to <= window.To))
                {
                    return false;
                }

                foreach (var resource in job.Steps[s].Resources)
                {
                    Use(resource, from, to);
                }
            }

            if (job.Anchor is { } anchor)
            {
                long Until(int release) => starts[j][anchor] / problem.Slot < job.Releases[release].NotBefore.Count
                    ? job.Releases[release].NotBefore[(int)(starts[j][anchor] / problem.Slot)] : long.MaxValue;
                if (Enumerable.Range(0, job.Releases.Count)
                    .Any(release => Until(release) < 0 || starts[j][job.Releases[release].Step] < Until(release)))
                {
                    return false;
                }

                foreach (var hold in job.Holds)
                {
                    Use(hold.Resource, starts[j][hold.FromStep], Until(hold.UntilRelease));
                }
            }
        }

        return Enumerable.Range(0, problem.Capacities.Count).All(resource =>
            Enumerable.Range(0, (int)problem.Horizon + 20).All(time => used[resource][time] <= problem.Capacities[resource]));

        void Use(int resource, long from, long to)
        {
            for (var time = from; time < to; time++)
            {
                used[resource][time]++;
            }
        }
    }
}
