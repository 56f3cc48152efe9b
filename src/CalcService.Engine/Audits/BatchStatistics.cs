namespace CalcService.Engine.Audits;

/// <summary>A number of a record that stood in an earlier line already.</summary>
public sealed record RepeatedNumber(string Number, long Line);

/// <summary>Numbers of records.</summary>
/// <param name="Remembered">Different ones that are remembered.</param>
/// <param name="Missing">Records without one.</param>
/// <param name="Beyond">New ones for which there was no room any more: whether they come again is not known.</param>
/// <param name="Repeated">Records whose number had been there.</param>
/// <param name="First">The first of these.</param>
public sealed record RecordNumbers(long Remembered, long Missing, long Beyond, long Repeated, IReadOnlyList<RepeatedNumber> First);

/// <summary>A pattern on a chart that chance hardly makes.</summary>
public sealed record GroupSignal(string Rule, long Line);

/// <summary>A moving average with its limits, and how often it was outside.</summary>
public sealed record GroupAverage(double Last, double Lower, double Upper, int Outside);

/// <summary>One-sided tolerance limits: so far the share of all ends that the rules name is covered, each way.</summary>
public sealed record GroupTolerance(double Factor, double Lower, double Upper);

/// <summary>What the records of one lot, or of one who mixed, say together. Null where there are too few.</summary>
public sealed record GroupStatistics
{
    public required string Name { get; init; }

    public required long Records { get; init; }

    public required long Refused { get; init; }

    /// <summary>Records with a gel ratio: mean and limits hold over these.</summary>
    public required long Charted { get; init; }

    /// <summary>Of these the first ones, held against the zone rules and the moving average.</summary>
    public required long Tested { get; init; }

    public double? Mean { get; init; }

    public double? Deviation { get; init; }

    public double? Lower { get; init; }

    public double? Upper { get; init; }

    public GroupAverage? Ewma { get; init; }

    public GroupTolerance? Tolerance { get; init; }

    public long SignalCount { get; init; }

    public IReadOnlyList<GroupSignal> Signals { get; init; } = [];

    /// <summary>Whether there are too few for more than a beginning.</summary>
    public required bool IsProvisional { get; init; }

    /// <summary>Whether the lot's gels came so much sooner or later than the sheet's that it has to be doubted.</summary>
    public required bool IsOutOfFamily { get; init; }
}

/// <summary>What all records of a batch say together.</summary>
public sealed record BatchStatistics
{
    public required long Records { get; init; }

    public required long WithoutRatio { get; init; }

    public required RecordNumbers Numbers { get; init; }

    public required IReadOnlyList<GroupStatistics> Lots { get; init; }

    /// <summary>Records with a lot that found no room.</summary>
    public required long LotsBeyond { get; init; }

    public required IReadOnlyList<GroupStatistics> Crews { get; init; }

    public required long CrewsBeyond { get; init; }
}
