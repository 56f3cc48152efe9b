using CalcService.Api.Contract;
using CalcService.Api.Units;
using CalcService.Engine.Provenance;

namespace CalcService.Api.Capabilities.Curing;

/// <summary>A cure schedule.</summary>
public sealed record CureScheduleResult
{
    /// <summary>Doses in each kit that it was computed with.</summary>
    public required int? Doses { get; init; }

    /// <summary>Times of each kind of end, mixed at mixedAt. With a shop the tasks have the times of each end by itself.</summary>
    public required IReadOnlyList<CuredEnd> Ends { get; init; }

    /// <summary>Tasks of the shop, by their start; empty without a shop or without a schedule.</summary>
    public required IReadOnlyList<ScheduledTask> Tasks { get; init; }

    /// <summary>When the last task ends; null without a schedule.</summary>
    public required DateTimeOffset? FinishedAt { get; init; }

    /// <summary>
    /// How good the schedule is: optimal where none finishes sooner, proven, with pours at whole five minutes; null without a schedule.
    /// </summary>
    public required Optimality? Optimality { get; init; }
}

/// <summary>A task of one end.</summary>
public sealed record ScheduledTask
{
    /// <summary>Your name for these ends.</summary>
    public required string End { get; init; }

    /// <summary>1 for the first of them.</summary>
    public required int Unit { get; init; }

    /// <summary>prepare, position, pour, undisturbed, cure, proof or record.</summary>
    public required string Task { get; init; }

    /// <summary>Start.</summary>
    public required DateTimeOffset From { get; init; }

    /// <summary>End. That of undisturbed and cure is when it may be moved and loaded at the earliest.</summary>
    public required DateTimeOffset To { get; init; }

    /// <summary>Who and what it occupies, such as "crew 1, mixer 1"; null where it needs nobody.</summary>
    public required string? On { get; init; }
}

/// <summary>Times of one kind of end. Those from which on something is allowed are whole minutes, rounded up.</summary>
public sealed record CuredEnd
{
    /// <summary>Your name for these ends.</summary>
    public required string Id { get; init; }

    /// <summary>How many.</summary>
    public required int Quantity { get; init; }

    /// <summary>When the cone gels.</summary>
    public required GelMoments GelAt { get; init; }

    /// <summary>Until then nobody moves rope or socket.</summary>
    public required DateTimeOffset? UndisturbedUntil { get; init; }

    /// <summary>From then on the proof load is allowed.</summary>
    public required DateTimeOffset? ProofLoadFrom { get; init; }

    /// <summary>From then on the end may go to service, its proof load passed.</summary>
    public required DateTimeOffset? ServiceFrom { get; init; }

    /// <summary>What set each time.</summary>
    public required Governors GovernedBy { get; init; }

    /// <summary>What the sheet alone asks for, and what model, hold and cooling add; null where the readings aren't there.</summary>
    [Since("0.9")]
    public required ReleaseTimes? Release { get; init; }

    /// <summary>The hottest that the cone gets; null where the model doesn't know the cone's own heat.</summary>
    public required ConePeak? Peak { get; init; }

    /// <summary>The place that cures last; null in the uniform model, which has one place only.</summary>
    public required LeastCured? LeastCured { get; init; }

    /// <summary>Temperatures and degrees of cure over time.</summary>
    public required IReadOnlyList<CureCurvePoint> Curve { get; init; }

    /// <summary>
    /// Heat that the solver lost or made up, as a share of the heat released, to 10⁻⁹: what is less is rounding. Null in the uniform model.
    /// </summary>
    [Kind(QuantityKind.Fraction)]
    public required Quantity? EnergyBalanceError { get; init; }
}

/// <summary>When a cone gels; each null where it can't be known.</summary>
public sealed record GelMoments
{
    /// <summary>It doesn't gel before.</summary>
    public required DateTimeOffset? Earliest { get; init; }

    /// <summary>Expected.</summary>
    public required DateTimeOffset? Expected { get; init; }

    /// <summary>It has gelled by then.</summary>
    public required DateTimeOffset? Latest { get; init; }
}

/// <summary>
/// What each part of the law of release asks for. The latest of them sets proofLoadFrom; each is null where it asks for nothing, or isn't
/// known.
/// </summary>
public sealed record ReleaseTimes
{
    /// <summary>Gelled by then in the coldest case, or seen gelled later. An early gel moves nothing.</summary>
    public required DateTimeOffset? GelledBy { get; init; }

    /// <summary>The sheet's time after gel is over, counted along the coldest temperatures without the compound's own heat.</summary>
    public required DateTimeOffset? SheetFrom { get; init; }

    /// <summary>The least cured place of the modelled cone has its degree; null in the uniform model.</summary>
    public required DateTimeOffset? ModelFrom { get; init; }

    /// <summary>The sheet's hold after gel is over.</summary>
    public required DateTimeOffset? HoldFrom { get; init; }

    /// <summary>Cooled below the highest service temperature; null where nothing has to cool.</summary>
    public required DateTimeOffset? CooledFrom { get; init; }

    /// <summary>How many times longer everything takes than the sheet says, by gels that were seen; never below 1.</summary>
    [Kind(QuantityKind.Count)]
    public required Quantity Slower { get; init; }

    /// <summary>true where sheetFrom doesn't count, because every row of the sheet in use was held at its temperature.</summary>
    public required bool ByOwnHeat { get; init; }
}

/// <summary>
/// What set each time: air, steel, compound, observedGel, sheet, minimumHold, leastCuredPlace or cooling; null without a time.
/// </summary>
public sealed record Governors
{
    /// <summary>Of the latest gel.</summary>
    public required string? GelAt { get; init; }

    /// <summary>Of undisturbedUntil.</summary>
    public required string? UndisturbedUntil { get; init; }

    /// <summary>Of proofLoadFrom.</summary>
    public required string? ProofLoadFrom { get; init; }

    /// <summary>Of serviceFrom.</summary>
    public required string? ServiceFrom { get; init; }
}

/// <summary>The hottest that a cone gets.</summary>
public sealed record ConePeak
{
    /// <summary>The temperature.</summary>
    [Kind(QuantityKind.Temperature)]
    public required Quantity Temperature { get; init; }

    /// <summary>When.</summary>
    public required DateTimeOffset At { get; init; }
}

/// <summary>The place of a cone that cures last.</summary>
public sealed record LeastCured
{
    /// <summary>smallEnd, middle or mouth, each with Axis or Skin.</summary>
    public required string Where { get; init; }

    /// <summary>Its degree of cure when it counts as fully strong, or at the end of the temperatures given.</summary>
    [Kind(QuantityKind.Fraction)]
    public required Quantity DegreeOfCure { get; init; }
}

/// <summary>A moment of a cure.</summary>
public sealed record CureCurvePoint
{
    /// <summary>The moment.</summary>
    public required DateTimeOffset At { get; init; }

    /// <summary>The air.</summary>
    [Kind(QuantityKind.Temperature)]
    public required Quantity Air { get; init; }

    /// <summary>Temperature on the axis of the cone.</summary>
    [Kind(QuantityKind.Temperature)]
    public required Quantity Centre { get; init; }

    /// <summary>Temperature of the cone at the socket's wall.</summary>
    [Kind(QuantityKind.Temperature)]
    public required Quantity Skin { get; init; }

    /// <summary>Degree of cure on the axis.</summary>
    [Kind(QuantityKind.Fraction)]
    public required Quantity CureCentre { get; init; }

    /// <summary>Degree of cure at the wall.</summary>
    [Kind(QuantityKind.Fraction)]
    public required Quantity CureSkin { get; init; }

    /// <summary>Degree of cure by the earliest times; null where there is no band.</summary>
    [Kind(QuantityKind.Fraction)]
    public required Quantity? CureEarliest { get; init; }

    /// <summary>Degree of cure by the latest times, which releases go by; null where there is no band.</summary>
    [Kind(QuantityKind.Fraction)]
    public required Quantity? CureLatest { get; init; }

    /// <summary>
    /// The share of the sheet's time after gel that has passed: 0 until gel, 100 % when the sheet alone would release; null where it isn't
    /// known.
    /// </summary>
    [Kind(QuantityKind.Fraction)]
    [Since("0.9")]
    public required Quantity? SheetShare { get; init; }
}
