using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Pouring.Preparation;

/// <summary>A task of the sequence as it can be told.</summary>
/// <param name="Task">Stable name of the task.</param>
/// <param name="Text">Template of the words to work by.</param>
/// <param name="Source">Where the way of working comes from.</param>
public sealed record StepDefinition(string Task, string Text, Source Source);

/// <summary>A number of a step.</summary>
public readonly record struct StepValue(string Name, Measure Value);

/// <summary>One step of the work, in order.</summary>
/// <param name="Definition">What is done.</param>
/// <param name="End">The kind of end that it is done on, or null for a whole mix or the whole job.</param>
/// <param name="Mix">The mix that it belongs to, or null.</param>
public sealed record PlannedStep(StepDefinition Definition, string? End, int? Mix)
{
    /// <summary>The numbers to work by.</summary>
    public IReadOnlyList<StepValue> Values { get; init; } = [];

    /// <summary>Further words of the text.</summary>
    public IReadOnlyList<FindingWord> Words { get; init; } = [];
}

/// <summary>A point at which the work stands still until somebody has looked.</summary>
/// <param name="Task">The task that waits.</param>
/// <param name="What">Stable name of what is looked at.</param>
/// <param name="Text">What has to be so, in words.</param>
/// <param name="By">Who looks.</param>
public sealed record HoldPoint(string Task, string What, string Text, string By)
{
    public string? End { get; init; }

    public int? Mix { get; init; }

    /// <summary>What was read for the plan.</summary>
    public Measure? Reading { get; init; }

    public Measure? Minimum { get; init; }

    public Measure? Maximum { get; init; }

    /// <summary>Not later than this, or, before anything is moved, not earlier.</summary>
    public DateTimeOffset? At { get; init; }
}

/// <summary>The numbers that prepare one end.</summary>
/// <param name="Seizings">How many.</param>
/// <param name="SeizingWidthLeastM">Least width of each.</param>
/// <param name="SeizingWidthMostM">Largest width of each.</param>
/// <param name="SeizingSpacingM">Distance between them.</param>
/// <param name="GripLengthM">Basket length in which compound grips the wires.</param>
/// <param name="BroomLengthM">Wire from the top seizing to the cut.</param>
public sealed record EndPreparation(
    int Seizings, double SeizingWidthLeastM, double SeizingWidthMostM, double SeizingSpacingM, double GripLengthM, double BroomLengthM);
