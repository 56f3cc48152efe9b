namespace CalcService.Engine.Curing;

/// <summary>People are there from one time to another.</summary>
public sealed record Shift(DateTimeOffset From, DateTimeOffset To);

/// <summary>How long the tasks of one end take, s.</summary>
public sealed record TaskTimes(double PrepareS, double PositionS, double ProofS, double RecordS);

/// <summary>Who and what the ends go through.</summary>
public sealed record ShopInput
{
    public int? Crew { get; init; }

    public int? Stands { get; init; }

    public int? Mixers { get; init; }

    public int? TestBeds { get; init; }

    /// <summary>In rising order, apart from each other.</summary>
    public required IReadOnlyList<Shift> Shifts { get; init; }

    public required TaskTimes TaskTimes { get; init; }
}

/// <summary>A task of one end.</summary>
/// <param name="End">The kind of end.</param>
/// <param name="Unit">1 for the first of its kind.</param>
/// <param name="Task">prepare, position, pour, undisturbed, cure, proof or record.</param>
/// <param name="From">Start.</param>
/// <param name="To">End.</param>
/// <param name="On">Who and what it occupies, such as "crew 1, mixer 1"; empty for a cure, which needs nobody.</param>
public sealed record ShopTask(string End, int Unit, string Task, DateTimeOffset From, DateTimeOffset To, string On);

/// <summary>The tasks of a shop.</summary>
/// <param name="Tasks">By start, then end and unit.</param>
/// <param name="FinishedAt">When the last one ends.</param>
/// <param name="IsOptimal">Whether none ends sooner, proven.</param>
/// <param name="Gap">How much sooner it might end, as a share of the time from the first shift on.</param>
public sealed record ShopSchedule(IReadOnlyList<ShopTask> Tasks, DateTimeOffset FinishedAt, bool IsOptimal, double Gap);
