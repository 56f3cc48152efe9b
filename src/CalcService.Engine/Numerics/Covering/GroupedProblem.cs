namespace CalcService.Engine.Numerics.Covering;

/// <summary>Equal demands that are each covered within one group.</summary>
/// <param name="Size">What one of them takes.</param>
/// <param name="Time">How long serving one of them takes.</param>
/// <param name="Count">How many there are.</param>
public sealed record CoverDemand(long Size, long Time, int Count);

/// <summary>
/// Demands to be served in groups. Each group takes whole items that cover its demands, and must be done within a time:
/// ⌈items/side by side⌉·time for each round + the times of its demands.
/// </summary>
public sealed record GroupedProblem
{
    public required IReadOnlyList<CoverItem> Items { get; init; }

    public required IReadOnlyList<CoverDemand> Demands { get; init; }

    /// <summary>What every group takes besides its demands.</summary>
    public long PerGroup { get; init; }

    /// <summary>Longest time of a group.</summary>
    public required long TimeLimit { get; init; }

    /// <summary>Time for one round of items.</summary>
    public long RoundTime { get; init; }

    /// <summary>Items in one round.</summary>
    public int SideBySide { get; init; } = 1;

    public CoverObjective Objective { get; init; }
}

/// <summary>One group: how many of each demand it serves and of each item it takes.</summary>
public sealed record CoverGroup(IReadOnlyList<int> Served, IReadOnlyList<int> Taken);

/// <summary>Groups that serve all demands.</summary>
/// <param name="Groups">The groups.</param>
/// <param name="IsOptimal">Whether none are better in the first term of the objective, proven.</param>
/// <param name="Gap">How far the first term of the objective may be above the best, as a share of it.</param>
public sealed record GroupedCover(IReadOnlyList<CoverGroup> Groups, bool IsOptimal, double Gap);
