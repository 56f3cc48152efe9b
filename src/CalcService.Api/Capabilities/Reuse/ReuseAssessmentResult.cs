using CalcService.Api.Contract;
using CalcService.Api.Units;
using CalcService.Engine.Provenance;
using CalcService.Engine.Reuse;

namespace CalcService.Api.Capabilities.Reuse;

/// <summary>What becomes of a used socket.</summary>
public sealed record ReuseAssessmentResult
{
    /// <summary>
    /// What becomes of the socket, by the findings on the socket itself: none or notes → reuse, caution → reuseAfterWork, unknown →
    /// hold, stop → withdraw. The decision is by all findings: a sound socket too small for the rope is reuse with doNotProceed.
    /// </summary>
    public required Disposition Disposition { get; init; }

    /// <summary>Every check with its evidence, always in the same order.</summary>
    public required IReadOnlyList<CheckResult> Checks { get; init; }

    /// <summary>Wear as measured.</summary>
    public required WearNumbers Wear { get; init; }

    /// <summary>Loads that the strength is computed with.</summary>
    public required ReuseLoads Loads { get; init; }

    /// <summary>How far strength is used, as the socket was made and as it was measured.</summary>
    public required ReuseUtilisation Utilisation { get; init; }

    /// <summary>Work to do before the socket is used; empty on a socket that is withdrawn.</summary>
    public required IReadOnlyList<ReuseWork> Work { get; init; }
}

/// <summary>Wear as measured; null where it was not.</summary>
public sealed record WearNumbers
{
    /// <summary>Growth of the bore at the section worn most.</summary>
    [Kind(QuantityKind.Fraction)]
    public required Quantity? BoreGrowth { get; init; }

    /// <summary>Ovality of the section worn most.</summary>
    [Kind(QuantityKind.Fraction)]
    public required Quantity? Ovality { get; init; }

    /// <summary>Most of the taper lost between neighbouring sections; negative where it has become steeper.</summary>
    [Kind(QuantityKind.Fraction)]
    public required Quantity? TaperLoss { get; init; }

    /// <summary>Growth of the pin hole.</summary>
    [Kind(QuantityKind.Fraction)]
    public required Quantity? PinHoleGrowth { get; init; }

    /// <summary>How far the pin hole is stretched: its largest less its smallest diameter, over the drawing's.</summary>
    [Kind(QuantityKind.Fraction)]
    public required Quantity? PinHoleOvality { get; init; }

    /// <summary>Diameter lost by the pin.</summary>
    [Kind(QuantityKind.Fraction)]
    public required Quantity? PinWear { get; init; }

    /// <summary>Change of the gap between the ears.</summary>
    [Kind(QuantityKind.Fraction)]
    public required Quantity? EarSpread { get; init; }

    /// <summary>Thickness lost by the ears.</summary>
    [Kind(QuantityKind.Fraction)]
    public required Quantity? EarThicknessLoss { get; init; }

    /// <summary>Width lost by the ears.</summary>
    [Kind(QuantityKind.Fraction)]
    public required Quantity? EarWidthLoss { get; init; }

    /// <summary>Share lost of the distance from the hole's centre to the end of the ear.</summary>
    [Kind(QuantityKind.Fraction)]
    public required Quantity? EarEndDistanceLoss { get; init; }

    /// <summary>Diameter lost by the outside of the basket, at the end that lost more.</summary>
    [Kind(QuantityKind.Fraction)]
    public required Quantity? OutsideLoss { get; init; }

    /// <summary>Depth of the deepest pit.</summary>
    [Kind(QuantityKind.Length)]
    public required Quantity? PitDepth { get; init; }

    /// <summary>The sections of the bore, from the small end.</summary>
    public required IReadOnlyList<StationNumbers> Stations { get; init; }
}

/// <summary>A section of the bore against the drawing.</summary>
public sealed record StationNumbers
{
    /// <summary>From the small end.</summary>
    [Kind(QuantityKind.Length)]
    public required Quantity FromSmallEnd { get; init; }

    /// <summary>Bore of the drawing there.</summary>
    [Kind(QuantityKind.Length)]
    public required Quantity Nominal { get; init; }

    /// <summary>Smallest diameter found.</summary>
    [Kind(QuantityKind.Length)]
    public required Quantity Smallest { get; init; }

    /// <summary>Largest diameter found.</summary>
    [Kind(QuantityKind.Length)]
    public required Quantity Largest { get; init; }

    /// <summary>Growth of the largest over the drawing.</summary>
    [Kind(QuantityKind.Fraction)]
    public required Quantity Growth { get; init; }

    /// <summary>Ovality.</summary>
    [Kind(QuantityKind.Fraction)]
    public required Quantity Ovality { get; init; }
}

/// <summary>Loads that the strength is computed with; null where steel or load isn't known.</summary>
public sealed record ReuseLoads
{
    /// <summary>Rated load: the intended one, else the socket's, and never more than the socket's.</summary>
    [Kind(QuantityKind.Force)]
    public required Quantity? RatedLoad { get; init; }

    /// <summary>Proof load, given or by rule, and never more than the socket's proof rating.</summary>
    [Kind(QuantityKind.Force)]
    public required Quantity? ProofLoad { get; init; }

    /// <summary>Strength over stress at the rated load, given or by rule.</summary>
    [Kind(QuantityKind.Count)]
    public required Quantity? DesignFactor { get; init; }

    /// <summary>Breaking force with what is left of the socket; null where its maker's isn't given.</summary>
    [Kind(QuantityKind.Force)]
    public required Quantity? RemainingStrength { get; init; }
}

/// <summary>How far strength is used.</summary>
public sealed record ReuseUtilisation
{
    /// <summary>With the sizes of the drawing; null where a size, the steel or the load isn't known.</summary>
    public required PartsUtilisation? AsMade { get; init; }

    /// <summary>With the sizes as measured; null where one is missing.</summary>
    public required PartsUtilisation? AsMeasured { get; init; }
}

/// <summary>How far the parts of a socket are used.</summary>
public sealed record PartsUtilisation
{
    /// <summary>The part that is used most.</summary>
    public required string GovernedBy { get; init; }

    /// <summary>Its utilisation at the rated load, with the design factor.</summary>
    [Kind(QuantityKind.Fraction)]
    public required Quantity AtRatedLoad { get; init; }

    /// <summary>Its utilisation at the proof load, against yield.</summary>
    [Kind(QuantityKind.Fraction)]
    public required Quantity AtProofLoad { get; init; }

    /// <summary>Each part.</summary>
    public required IReadOnlyList<PartUtilisation> Parts { get; init; }
}

/// <summary>How far one part is used.</summary>
public sealed record PartUtilisation
{
    /// <summary>The part and how it is stressed.</summary>
    public required string Id { get; init; }

    /// <summary>Nominal stress at the rated load.</summary>
    [Kind(QuantityKind.Stress)]
    public required Quantity Stress { get; init; }

    /// <summary>At the rated load, with the design factor.</summary>
    [Kind(QuantityKind.Fraction)]
    public required Quantity AtRatedLoad { get; init; }

    /// <summary>At the proof load, against yield.</summary>
    [Kind(QuantityKind.Fraction)]
    public required Quantity AtProofLoad { get; init; }
}

/// <summary>Work to do before the socket is used.</summary>
public sealed record ReuseWork
{
    /// <summary>The finding that asks for it.</summary>
    public required string Code { get; init; }

    /// <summary>The member that it is about.</summary>
    public required string Pointer { get; init; }

    /// <summary>What to do.</summary>
    [Words]
    public required string Task { get; init; }
}
