using CalcService.Api.Contract;
using CalcService.Api.Units;
using CalcService.Engine.Provenance;

namespace CalcService.Api.Capabilities.Pouring;

/// <summary>Numbers that prepare one end.</summary>
public sealed record EndNumbers
{
    /// <summary>Seizings on the rope.</summary>
    public required int Seizings { get; init; }

    /// <summary>Least width of each.</summary>
    [Kind(QuantityKind.Length)]
    public required Quantity SeizingWidthLeast { get; init; }

    /// <summary>Largest width of each.</summary>
    [Kind(QuantityKind.Length)]
    public required Quantity SeizingWidthMost { get; init; }

    /// <summary>Distance between them.</summary>
    [Kind(QuantityKind.Length)]
    public required Quantity SeizingSpacing { get; init; }

    /// <summary>Basket length in which compound grips the wires.</summary>
    [Kind(QuantityKind.Length)]
    public required Quantity GripLength { get; init; }

    /// <summary>Wire from the top seizing to the cut.</summary>
    [Kind(QuantityKind.Length)]
    public required Quantity BroomLength { get; init; }
}

/// <summary>A step of the work.</summary>
public sealed record SequenceStep
{
    /// <summary>1 for the first.</summary>
    public required int Number { get; init; }

    /// <summary>
    /// measure, seize, cut, openBroom, core, plastic, degrease, clean, dry, drawIn, space, align, seal, vent, read, mix, witnessSample,
    /// fill or leave; more may come.
    /// </summary>
    public required string Task { get; init; }

    /// <summary>The ends that it is done on; null for a whole mix or job.</summary>
    public required string? End { get; init; }

    /// <summary>The mix that it belongs to; null before the mixes.</summary>
    public required int? Mix { get; init; }

    /// <summary>Its numbers, by name.</summary>
    public required IReadOnlyList<NamedQuantity> Values { get; init; }

    /// <summary>The step in words. May change.</summary>
    [Words]
    public required string Text { get; init; }

    /// <summary>Where this way of working comes from.</summary>
    [Undigested]
    public required AnswerSource Source { get; init; }
}

/// <summary>A number with its name.</summary>
public sealed record NamedQuantity
{
    /// <summary>What it is.</summary>
    public required string Name { get; init; }

    /// <summary>The number.</summary>
    public required Quantity Value { get; init; }
}

/// <summary>A point at which the work stands still until somebody has looked.</summary>
public sealed record WorkHoldPoint
{
    /// <summary>The task that waits, as in the sequence.</summary>
    public required string Task { get; init; }

    /// <summary>fit, broom, alignment, air, steel, compound, humidity, lots, stopPouring or gel; more may come.</summary>
    public required string What { get; init; }

    /// <summary>The ends that it is for; null for a whole mix or job.</summary>
    public required string? End { get; init; }

    /// <summary>The mix that it is for; null for an end or the job.</summary>
    public required int? Mix { get; init; }

    /// <summary>What the plan was made with.</summary>
    public required Quantity? Reading { get; init; }

    /// <summary>Least that is allowed.</summary>
    public required Quantity? Minimum { get; init; }

    /// <summary>Most that is allowed.</summary>
    public required Quantity? Maximum { get; init; }

    /// <summary>The time that it is about.</summary>
    public required DateTimeOffset? At { get; init; }

    /// <summary>What has to be so, in words. May change.</summary>
    [Words]
    public required string Text { get; init; }

    /// <summary>Who looks. May change.</summary>
    [Words]
    public required string By { get; init; }
}

/// <summary>A cup of compound that is kept beside the ends.</summary>
public sealed record WitnessSample
{
    /// <summary>What is written on it: reference and mix.</summary>
    [Words]
    public required string Label { get; init; }

    /// <summary>How much of the mix it takes; null where it comes out of what is left over.</summary>
    [Kind(QuantityKind.Volume)]
    public required Quantity? Volume { get; init; }
}
