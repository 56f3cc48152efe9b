namespace CalcService.Engine.Numerics.Scheduling;

/// <summary>A step of a job.</summary>
/// <param name="Duration">How long it takes.</param>
/// <param name="Resources">What it occupies meanwhile, one of each.</param>
/// <param name="InWindow">Whether it has to lie inside one of the windows.</param>
public sealed record SchedulingStep(long Duration, IReadOnlyList<int> Resources, bool InWindow);

/// <summary>A step that may not start before a time that depends on when another one started.</summary>
/// <param name="Step">The step that waits.</param>
/// <param name="NotBefore">For each slot of the anchor's start the earliest start, or -1 where the anchor can't start in that slot.</param>
public sealed record SchedulingRelease(int Step, IReadOnlyList<long> NotBefore);

/// <summary>A resource that a job keeps from the start of a step until a release.</summary>
public sealed record SchedulingHold(int Resource, int FromStep, int UntilRelease);

/// <summary>Steps one after another.</summary>
public sealed record SchedulingJob
{
    /// <summary>Jobs of one kind are the same, so their order doesn't matter.</summary>
    public required int Kind { get; init; }

    public required IReadOnlyList<SchedulingStep> Steps { get; init; }

    /// <summary>The step whose start the releases depend on; it starts at the beginning of a slot. Null without releases.</summary>
    public int? Anchor { get; init; }

    public IReadOnlyList<SchedulingRelease> Releases { get; init; } = [];

    public IReadOnlyList<SchedulingHold> Holds { get; init; } = [];
}

/// <summary>Jobs that share resources, to be done as soon as possible. Times are whole numbers from 0.</summary>
public sealed record SchedulingProblem
{
    /// <summary>How many there are of each resource.</summary>
    public required IReadOnlyList<int> Capacities { get; init; }

    /// <summary>When steps that need a window can be done, in rising order.</summary>
    public required IReadOnlyList<(long From, long To)> Windows { get; init; }

    public required IReadOnlyList<SchedulingJob> Jobs { get; init; }

    /// <summary>Length of a slot.</summary>
    public long Slot { get; init; } = 1;

    /// <summary>Nothing ends later.</summary>
    public required long Horizon { get; init; }
}

/// <summary>When each step of each job starts, and until when each release holds.</summary>
public sealed record ScheduledJob(IReadOnlyList<long> Starts, IReadOnlyList<long> Releases);

/// <summary>A schedule.</summary>
/// <param name="Jobs">In the order of the problem.</param>
/// <param name="Finish">When the last step ends.</param>
/// <param name="IsOptimal">Whether none ends sooner, proven.</param>
/// <param name="Gap">How much sooner one might end, as a share of the finish.</param>
public sealed record Schedule(IReadOnlyList<ScheduledJob> Jobs, long Finish, bool IsOptimal, double Gap);
