using System.Globalization;
using CalcService.Engine.Numerics.Scheduling;

namespace CalcService.Engine.Curing;

/// <summary>From a schedule in minutes to tasks with the hands and places that do them.</summary>
internal static class ShopTasks
{
    private const int Position = 1, Pour = 2, Stand = 1;

    private static readonly string[] StepNames = ["prepare", "position", "pour", "proof", "record"];

    public static ShopSchedule Of(IReadOnlyList<(string End, int Unit)> units, SchedulingStep[] steps, Schedule schedule,
        DateTimeOffset start,
        IReadOnlyList<int> capacities, IReadOnlyList<string> names)
    {
        var uses = new List<(long From, long To, int Resource)>();
        var stepUses = new int[units.Count][][];
        var standUse = new int[units.Count];
        for (var u = 0; u < units.Count; u++)
        {
            var job = schedule.Jobs[u];
            stepUses[u] =
                [.. steps.Select((step, s) =>
                step.Resources.Select(resource => Add((job.Starts[s], job.Starts[s] + step.Duration, resource))).ToArray())];
            standUse[u] = Add((job.Starts[Position], job.Releases[0], Stand));
        }

        var assigned = Scheduler.Assign(uses, capacities);
        string On(IEnumerable<int> of) =>
            string.Join(", ",
            of.Select(use => $"{names[uses[use].Resource]} {(assigned[use] + 1).ToString(CultureInfo.InvariantCulture)}"));
        var tasks = new List<ShopTask>();
        for (var u = 0; u < units.Count; u++)
        {
            var job = schedule.Jobs[u];
            void Task(string name, long from, long to, string on) =>
                tasks.Add(new(units[u].End, units[u].Unit, name, start.AddMinutes(from), start.AddMinutes(to), on));
            for (var s = 0; s < steps.Length; s++)
            {
                Task(StepNames[s], job.Starts[s], job.Starts[s] + steps[s].Duration,
                    On(s is Position or Pour ? stepUses[u][s].Append(standUse[u]) : stepUses[u][s]));
            }

            var poured = Math.Min(job.Starts[Pour] + steps[Pour].Duration, job.Releases[0]);
            Task("undisturbed", poured, job.Releases[0], On([standUse[u]]));
            Task("cure", job.Releases[0], job.Releases[1], "");
        }

        return new([.. tasks.OrderBy(task => task.From).ThenBy(task => task.To).ThenBy(task => task.End, StringComparer.Ordinal)
            .ThenBy(task => task.Unit)],
            start.AddMinutes(schedule.Finish), schedule.IsOptimal, schedule.Gap);

        int Add((long From, long To, int Resource) use)
        {
            uses.Add(use);
            return uses.Count - 1;
        }
    }
}
