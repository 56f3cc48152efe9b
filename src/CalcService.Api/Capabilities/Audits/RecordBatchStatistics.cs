using CalcService.Api.Units;
using CalcService.Engine.Audits;

namespace CalcService.Api.Capabilities.Audits;

/// <summary>What the records of a batch say together: the member statistics of its summary.</summary>
public sealed record RecordBatchStatistics
{
    /// <summary>Records that were audited.</summary>
    public required long Records { get; init; }

    /// <summary>Of these, without a gel ratio: on no chart.</summary>
    public required long WithoutRatio { get; init; }

    /// <summary>Numbers of the records.</summary>
    public required RecordNumberCounts Numbers { get; init; }

    /// <summary>By lot.</summary>
    public required IReadOnlyList<RecordGroupStatistics> Lots { get; init; }

    /// <summary>Records with a lot beyond those that are charted; 0 where all found room.</summary>
    public required long LotsBeyond { get; init; }

    /// <summary>By whoever mixed.</summary>
    public required IReadOnlyList<RecordGroupStatistics> Crews { get; init; }

    /// <summary>Records with a mixer beyond those that are charted; 0 where all found room.</summary>
    public required long CrewsBeyond { get; init; }

    internal static RecordBatchStatistics From(BatchStatistics statistics) => new()
    {
        Records = statistics.Records,
        WithoutRatio = statistics.WithoutRatio,
        Numbers = new()
        {
            Different = statistics.Numbers.Remembered,
            Missing = statistics.Numbers.Missing,
            Beyond = statistics.Numbers.Beyond,
            Repeated = statistics.Numbers.Repeated,
            First = [.. statistics.Numbers.First.Select(one => new RepeatedRecord { Number = one.Number, Line = one.Line })],
        },
        Lots = [.. statistics.Lots.Select(RecordGroupStatistics.From)],
        LotsBeyond = statistics.LotsBeyond,
        Crews = [.. statistics.Crews.Select(RecordGroupStatistics.From)],
        CrewsBeyond = statistics.CrewsBeyond,
    };
}

/// <summary>Numbers of records.</summary>
public sealed record RecordNumberCounts
{
    /// <summary>Different ones that are remembered.</summary>
    public required long Different { get; init; }

    /// <summary>Records without one.</summary>
    public required long Missing { get; init; }

    /// <summary>Records with a number for which there was no room any more: whether it comes again is not known.</summary>
    public required long Beyond { get; init; }

    /// <summary>Records whose number had been there in an earlier line.</summary>
    public required long Repeated { get; init; }

    /// <summary>The first of these.</summary>
    public required IReadOnlyList<RepeatedRecord> First { get; init; }
}

/// <summary>A record whose number had been there.</summary>
public sealed record RepeatedRecord
{
    /// <summary>The number.</summary>
    public required string Number { get; init; }

    /// <summary>Its line.</summary>
    public required long Line { get; init; }
}

/// <summary>
/// Records of one lot, or of one who mixed; numbers are gel ratios, 1 where it gelled as expected. Null where there are too few.
/// </summary>
public sealed record RecordGroupStatistics
{
    /// <summary>The lot, or the name.</summary>
    public required string Name { get; init; }

    /// <summary>Its records.</summary>
    public required long Records { get; init; }

    /// <summary>Of these, refused.</summary>
    public required long Refused { get; init; }

    /// <summary>With a gel ratio: mean and limits hold over these.</summary>
    public required long Charted { get; init; }

    /// <summary>The first of these, held against zone rules and moving average.</summary>
    public required long Tested { get; init; }

    /// <summary>Whether there are too few for more than a beginning.</summary>
    public required bool Provisional { get; init; }

    /// <summary>Whether its gels came so much sooner or later than the sheet's that it has to be doubted.</summary>
    public required bool OutOfFamily { get; init; }

    /// <summary>Mean.</summary>
    public required double? Mean { get; init; }

    /// <summary>Standard deviation from the moving range.</summary>
    public required double? Deviation { get; init; }

    /// <summary>Lower control limit.</summary>
    public required double? Lower { get; init; }

    /// <summary>Upper control limit.</summary>
    public required double? Upper { get; init; }

    /// <summary>Moving average.</summary>
    public required RecordAverage? Ewma { get; init; }

    /// <summary>One-sided tolerance limits.</summary>
    public required RecordTolerance? Tolerance { get; init; }

    /// <summary>Signals of the zone rules.</summary>
    public required long SignalCount { get; init; }

    /// <summary>The first of these.</summary>
    public required IReadOnlyList<RecordSignal> Signals { get; init; }

    internal static RecordGroupStatistics From(GroupStatistics group) => new()
    {
        Name = group.Name,
        Records = group.Records,
        Refused = group.Refused,
        Charted = group.Charted,
        Tested = group.Tested,
        Provisional = group.IsProvisional,
        OutOfFamily = group.IsOutOfFamily,
        Mean = Round(group.Mean),
        Deviation = Round(group.Deviation),
        Lower = Round(group.Lower),
        Upper = Round(group.Upper),
        Ewma = group.Ewma is { } average
            ? new() { Last = Round(average.Last), Lower = Round(average.Lower), Upper = Round(average.Upper), Outside = average.Outside }
            : null,
        Tolerance = group.Tolerance is { } limits
        ? new() { Factor = Round(limits.Factor), Lower = Round(limits.Lower), Upper = Round(limits.Upper) } : null,
        SignalCount = group.SignalCount,
        Signals = [.. group.Signals.Select(signal => new RecordSignal { Rule = signal.Rule, Line = signal.Line })],
    };

    private static double Round(double value) => Rounding.ToDigits(value, Rounding.AnswerDigits);

    private static double? Round(double? value) => value is { } known ? Round(known) : null;
}

/// <summary>An exponentially weighted moving average.</summary>
public sealed record RecordAverage
{
    /// <summary>After the last record tested.</summary>
    public required double Last { get; init; }

    /// <summary>Its lower limit.</summary>
    public required double Lower { get; init; }

    /// <summary>Its upper limit.</summary>
    public required double Upper { get; init; }

    /// <summary>How often it was outside.</summary>
    public required int Outside { get; init; }
}

/// <summary>One-sided tolerance limits.</summary>
public sealed record RecordTolerance
{
    /// <summary>Factor on the standard deviation.</summary>
    public required double Factor { get; init; }

    /// <summary>The share that the rules name lies above.</summary>
    public required double Lower { get; init; }

    /// <summary>The share that the rules name lies below.</summary>
    public required double Upper { get; init; }
}

/// <summary>A pattern that chance hardly makes.</summary>
public sealed record RecordSignal
{
    /// <summary>The rule.</summary>
    public required string Rule { get; init; }

    /// <summary>The line that completed it.</summary>
    public required long Line { get; init; }
}
