using CalcService.Engine.Numerics.Scheduling;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Curing;

/// <summary>
/// Takes every end through prepare, position, pour, undisturbed, cure, proof and record, in whole minutes from the first shift on. People
/// work in shifts only and finish what they begin; compound gels and cures through the night. A stand holds its end from positioning until
/// it may be moved. Each end is mixed by itself.
/// </summary>
internal static class ShopPlanner
{
    /// <summary>Pours start at whole multiples of it.</summary>
    private const int SlotMinutes = 5;

    private const int Crew = 0, Stand = 1, Mixer = 2, TestBed = 3;
    private const int Position = 1, Pour = 2, Proof = 3;

    private static readonly string[] Names = ["crew", "stand", "mixer", "test bed"];

    /// <summary>The schedule, or null, and said why, where there is none.</summary>
    public static ShopSchedule? Plan(CureScope scope, ShopInput shop, PourReleases releases)
    {
        if (PourTimeS(scope) is not { } pourTime)
        {
            return null;
        }

        int[] capacities = [Count(scope, shop.Crew, "crew"), Count(scope, shop.Stands, "stands"), Count(scope, shop.Mixers, "mixers"),
            Count(scope, shop.TestBeds, "testBeds")];
        scope.Assume(CurePointers.Steel, "steel and compound of every pour as warm as read for the earliest", null,
            AssumptionOrigin.Estimate);
        var start = shop.Shifts[0].From.AddTicks(-(shop.Shifts[0].From.Ticks % TimeSpan.TicksPerMinute));
        var times = shop.TaskTimes;
        SchedulingStep Step(double seconds, params int[] resources) => new(Minutes(seconds), resources, InWindow: true);
        var steps = new[] { Step(times.PrepareS, Crew), Step(times.PositionS, Crew), Step(pourTime, Crew, Mixer),
            Step(times.ProofS, Crew, TestBed), Step(times.RecordS, Crew) };
        var windows = shop.Shifts.Select(shift => (From: Up((shift.From - start).TotalMinutes), To: (long)(shift.To - start).TotalMinutes))
            .ToArray();
        var mixFrom = (scope.Input.MixedAt - start).TotalMinutes;

        var units = scope.Input.Ends.SelectMany((end, index) => Enumerable.Range(1, end.Quantity).Select(unit => (end, index, unit)))
            .ToArray();
        var tables = scope.Input.Ends.Select((end, index) => Tables(releases, index, mixFrom, windows)).ToArray();
        // Ends that are released alike are alike to the shop.
        var kinds = tables.Select(table =>
            Array.FindIndex(tables, one => one.Undisturbed.SequenceEqual(table.Undisturbed) && one.Proof.SequenceEqual(table.Proof)))
            .ToArray();
        var schedule = Scheduler.Solve(new()
        {
            Capacities = capacities,
            Windows = windows,
            Slot = SlotMinutes,
            Horizon = windows[^1].To,
            Jobs = [.. units.Select(unit => new SchedulingJob
            {
                Kind = kinds[unit.index],
                Steps = steps,
                Anchor = Pour,
                // The rope is held until it may be moved; only then the stand is free.
                Releases = [new(Proof, tables[unit.index].Undisturbed), new(Proof, tables[unit.index].Proof)],
                Holds = [new(Stand, Position, 0)],
            })],
        }, scope.CancellationToken);
        if (schedule is null)
        {
            scope.Find(CuringFindings.ShopDoesNotFinish, CurePointers.Shifts, related: [CurePointers.Ends, CurePointers.Air]);
            return null;
        }

        return ShopTasks.Of([.. units.Select(unit => (unit.end.Id, unit.unit))], steps, schedule,
            start.ToOffset(scope.Input.MixedAt.Offset), capacities, Names);
    }

    /// <summary>Releases in minutes from the first shift on, for each slot in which a pour could start.</summary>
    private static (long[] Undisturbed, long[] Proof) Tables(PourReleases releases, int end, double mixFrom, (long From, long To)[] windows)
    {
        var slots = (windows[^1].To / SlotMinutes) + 1;
        var (undisturbed, proof) = (new long[slots], new long[slots]);
        for (var slot = 0; slot < slots; slot++)
        {
            var minute = slot * SlotMinutes;
            var isPossible = minute >= mixFrom && windows.Any(window => minute >= window.From && minute < window.To);
            var release = isPossible ? releases.At(end, (minute - mixFrom) * 60) : null;
            (undisturbed[slot], proof[slot]) = release is { } known
                ? (Up((known.UndisturbedS / 60) + mixFrom), Up((known.LoadS / 60) + mixFrom))
                : (-1, -1);
        }

        return (undisturbed, proof);
    }

    private static double? PourTimeS(CureScope scope)
    {
        if (scope.Input.PourTimeS is { } given)
        {
            return given;
        }

        if (scope.Input.Compound.MixingTimeS is { } mixing)
        {
            scope.Assume(CurePointers.PourTime, "from mixing until the basket is full, taken as the sheet's mixing time alone",
                Measure.Duration(mixing), AssumptionOrigin.Estimate);
            return mixing;
        }

        scope.Find(CuringFindings.PourTimeUnknown, CurePointers.PourTime);
        return null;
    }

    private static int Count(CureScope scope, int? given, string member)
    {
        if (given is null)
        {
            scope.Assume($"/shop/{member}", "one", Measure.Count(1), AssumptionOrigin.Default);
        }

        return given ?? 1;
    }

    private static long Minutes(double seconds) => Math.Max(1, Up(seconds / 60));

    private static long Up(double minutes) => (long)Math.Ceiling(minutes - (1 / 60000.0));
}
