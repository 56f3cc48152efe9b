using CalcService.Engine.Numerics.Scheduling;
using CsCheck;

namespace CalcService.Engine.Tests.Numerics;

public sealed class SchedulerTests
{
    /// <summary>Fisher and Thompson's job shop of six jobs on six machines, from memory: machine and time of each step.</summary>
    private static readonly int[][] Ft06 =
    [
        [2, 1, 0, 3, 1, 6, 3, 7, 5, 3, 4, 6],
        [1, 8, 2, 5, 4, 10, 5, 10, 0, 10, 3, 4],
        [2, 5, 3, 4, 5, 8, 0, 9, 1, 1, 4, 7],
        [1, 5, 0, 5, 2, 5, 3, 3, 4, 8, 5, 9],
        [2, 9, 1, 3, 4, 5, 5, 4, 0, 3, 3, 1],
        [1, 3, 3, 3, 5, 9, 0, 10, 4, 4, 2, 1],
    ];

    [Fact]
    public void Job_shop_of_six_by_six_has_its_known_optimum()
    {
        // ft06: 55 (Muth and Thompson, Industrial Scheduling, 1963; from memory).
        var schedule = Solve(new()
        {
            Capacities = [1, 1, 1, 1, 1, 1],
            Windows = [],
            Horizon = 200,
            Jobs = [.. Ft06.Select((row, j) =>
            new SchedulingJob { Kind = j,
            Steps = [.. row.Chunk(2).Select(step => new SchedulingStep(step[1], [step[0]], InWindow: false))] })],
        })!;
        Assert.Equal((55, true, 0.0), (schedule.Finish, schedule.IsOptimal, schedule.Gap));
    }

    [Fact]
    public void Flow_shop_of_two_machines_is_as_short_as_Johnsons_rule() =>
        Gen.Select(Gen.Int[1, 9].Array[2].Array[2, 7], Gen.Int[100, 1000]).Sample(
        (times, horizon) =>
        {
            // Johnson (1954): those shorter on the first machine in rising order of it, then the others in falling order of the second.
            var order = times.Where(t => t[0] < t[1]).OrderBy(t => t[0])
                .Concat(times.Where(t => t[0] >= t[1]).OrderByDescending(t => t[1]));
            var (first, second) = (0, 0);
            foreach (var t in order)
            {
                first += t[0];
                second = Math.Max(first, second) + t[1];
            }

            var schedule = Solve(new()
            {
                Capacities = [1, 1], Windows = [], Horizon = horizon,
                Jobs = [.. times.Select((t, j) => new SchedulingJob { Kind = j, Steps = [new(t[0], [0], false), new(t[1], [1], false)] })],
            })!;
            Assert.Equal((second, true), (schedule.Finish, schedule.IsOptimal));
        }, iter: 60);

    [Fact]
    public void Small_shop_is_as_short_as_the_best_of_all_that_can_be_tried() =>
        Gen.Select(Gen.Int[1, 2].Array[3], Gen.Int[1, 3].Array[2], Gen.Int[3, 6], Gen.Int[0, 4].Array[14].Array[2], Gen.Int[0, 3], Gen.Bool)
        .Sample(
            (durations, capacities, opens, waits, cures, alike) =>
            {
                // Two ends: position and pour by one hand, a stand held until the gel, then a load. A later pour may gel sooner, and at
                // some times none can start.
                SchedulingJob Job(int kind)
                {
                    long[] still = [.. waits[kind].Select((wait, t) => wait == 0 ? -1L : t + wait)];
                    long[] full = [.. still.Select(t => t < 0 ? -1 : t + cures)];
                    return new()
                    {
                        Kind = kind,
                        Steps = [new(durations[0], [0], true), new(durations[1], [0], true), new(durations[2], [0], true)],
                        Anchor = 1,
                        Releases = [new(2, still), new(2, full)],
                        Holds = [new(1, 0, 0)],
                    };
                }

                var problem = new SchedulingProblem { Capacities = capacities, Windows = [(0, opens), (opens + 2, 14)], Horizon = 14,
                    Jobs = [Job(0), Job(alike ? 0 : 1)] };
                var schedule = Solve(problem);
                var best = BruteForce.Finish(problem);
                Assert.Equal(best, schedule?.Finish);
                Assert.True(schedule is null
                    || (schedule.IsOptimal && BruteForce.IsAllowed(problem, [.. schedule.Jobs.Select(one => one.Starts.ToArray())])));
            }, iter: 100);

    [Theory]
    [InlineData(12)]
    [InlineData(60)]
    public void Shop_whose_only_hand_is_never_idle_ends_when_its_work_is_done(int quantity)
    {
        // By hand: a pour and a load of 10 each, releases 50 after the pour, later ones slower. The first load waits for the first cure and
        // by then others are poured, so the hand works through every shift of 240, of which 24 tasks fill each; the last task ends with the
        // work.
        var tasks = 2 * quantity;
        var finish = ((tasks - 1) / 24 * 1000) + ((((tasks - 1) % 24) + 1) * 10);
        long[] cured = [.. Enumerable.Range(0, 1200).Select(slot => (slot * 5) + 50L + (slot / 40))];
        var problem = new SchedulingProblem
        {
            Capacities = [1],
            Windows = [.. Enumerable.Range(0, 6).Select(shift => (shift * 1000L, (shift * 1000L) + 240))],
            Horizon = 5240,
            Slot = 5,
            Jobs = [.. Enumerable.Repeat(new SchedulingJob { Kind = 0, Steps = [new(10, [0], true), new(10, [0], true)], Anchor = 0,
            Releases = [new(1, cured)] }, quantity)],
        };
        var schedule = Solve(problem)!;
        Assert.Equal((finish, true, 0.0), (schedule.Finish, schedule.IsOptimal, schedule.Gap));
        Assert.True(BruteForce.IsAllowed(problem, [.. schedule.Jobs.Select(one => one.Starts.ToArray())]));
    }

    [Fact]
    public void Work_that_the_shifts_cannot_hold_has_no_schedule()
    {
        // By hand: 13 jobs of 20 are 260 of work, the two shifts have 250, no job is too long for either and nothing else stands in the
        // way.
        var job = new SchedulingJob { Kind = 0, Steps = [new(10, [0], true), new(10, [0], true)] };
        Assert.Null(Solve(new() { Capacities = [1], Windows = [(0, 125), (500, 625)], Horizon = 625,
            Jobs = [.. Enumerable.Repeat(job, 13)] }));
    }

    [Fact]
    public void Step_that_fits_no_window_has_no_schedule() => Assert.Null(Solve(new()
    {
        Capacities = [1], Windows = [(0, 10), (20, 30)], Horizon = 30, Jobs = [new() { Kind = 0, Steps = [new(11, [0], true)] }],
    }));

    [Fact]
    public void Uses_that_fit_the_capacity_get_one_each() =>
        Assert.Equal([0, 1, 0, 1],
        Scheduler.Assign([(0, 5, 0), (2, 9, 0), (5, 8, 0), (9, 10, 0)], [2]).Select((one, i) => i == 3 ? 1 - one : one));

    private static Schedule? Solve(SchedulingProblem problem) => Scheduler.Solve(problem, TestContext.Current.CancellationToken);
}
