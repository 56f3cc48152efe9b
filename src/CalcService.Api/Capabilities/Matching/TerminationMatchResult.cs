using CalcService.Api.Contract;
using CalcService.Api.Units;
using CalcService.Engine.Matching;
using CalcService.Engine.Provenance;

namespace CalcService.Api.Capabilities.Matching;

/// <summary>A match of rope and socket.</summary>
public sealed record TerminationMatchResult
{
    /// <summary>The numbers of the rope.</summary>
    public required RopeNumbers Rope { get; init; }

    /// <summary>Included angle of the cone.</summary>
    [Kind(QuantityKind.Angle)]
    public required Quantity IncludedAngle { get; init; }

    /// <summary>Length of the basket in rope diameters.</summary>
    [Kind(QuantityKind.Count)]
    public required Quantity LengthInDiameters { get; init; }

    /// <summary>Space around the wires at the small end, one third and the mouth.</summary>
    public required IReadOnlyList<WireSpace> WireSpacing { get; init; }

    /// <summary>Breaking force of the socket over that of the rope.</summary>
    [Kind(QuantityKind.Fraction)]
    public required Quantity? StrengthRatio { get; init; }

    /// <summary>What the end may carry.</summary>
    public required MatchedLoads Loads { get; init; }

    /// <summary>What is done with the core in the broom; unknown where the core isn't given.</summary>
    public required CoreTreatment Core { get; init; }

    /// <summary>
    /// Even bond along a wire that would hold it to its breaking stress over the length of the basket, without the grip of the wedge.
    /// </summary>
    [Kind(QuantityKind.Stress)]
    public required Quantity? BondNeeded { get; init; }

    /// <summary>How the cone hands its load to the socket; null where it could not be computed.</summary>
    public required LoadTransfer? LoadTransfer { get; init; }
}

/// <summary>What the end may carry.</summary>
public sealed record MatchedLoads
{
    /// <summary>Breaking force over working load.</summary>
    [Kind(QuantityKind.Count)]
    public required Quantity? DesignFactor { get; init; }

    /// <summary>request or ruleSet; null without a design factor.</summary>
    public required string? DesignFactorFrom { get; init; }

    /// <summary>Strength of the end over that of the rope.</summary>
    [Kind(QuantityKind.Fraction)]
    public required Quantity Efficiency { get; init; }

    /// <summary>Breaking force times efficiency over design factor.</summary>
    [Kind(QuantityKind.Force)]
    public required Quantity? WorkingLoadLimit { get; init; }

    /// <summary>Load of the duty over that limit.</summary>
    [Kind(QuantityKind.Fraction)]
    public required Quantity? Utilisation { get; init; }

    /// <summary>Proof load, as given or by the rule of the use.</summary>
    [Kind(QuantityKind.Force)]
    public required Quantity? ProofLoad { get; init; }
}

/// <summary>How the cone hands its load to the socket, by a model that was held against other models, not against pull tests.</summary>
public sealed record LoadTransfer
{
    /// <summary>Friction between cone and socket.</summary>
    [Kind(QuantityKind.Count)]
    public required Quantity Friction { get; init; }

    /// <summary>Linear shrinkage of the set cone.</summary>
    [Kind(QuantityKind.Fraction)]
    public required Quantity Shrinkage { get; init; }

    /// <summary>From this load on the cone bears along its whole length.</summary>
    [Kind(QuantityKind.Force)]
    public required Quantity FullContactLoad { get; init; }

    /// <summary>The cone at the working load, at the proof load and at the rope's breaking force, as far as they are known.</summary>
    public required IReadOnlyList<LoadedCone> Cases { get; init; }

    /// <summary>The cone at the first of these loads with friction, shrinkage and taper low and high.</summary>
    public required IReadOnlyList<TransferSensitivity> Sensitivity { get; init; }
}

/// <summary>The cone under a load.</summary>
public sealed record LoadedCone
{
    /// <summary>workingLoad, proofLoad or breakingForce.</summary>
    public required string Case { get; init; }

    /// <summary>The load.</summary>
    [Kind(QuantityKind.Force)]
    public required Quantity Load { get; init; }

    /// <summary>Share of the load that each third of the wall takes, from the small end.</summary>
    public required LoadShares Shares { get; init; }

    /// <summary>How far the cone has moved at the small end, under load.</summary>
    [Kind(QuantityKind.Length)]
    public required Quantity SeatingAtSmallEnd { get; init; }

    /// <summary>How far it has moved at the mouth, under load: there it can be measured.</summary>
    [Kind(QuantityKind.Length)]
    public required Quantity SeatingAtMouth { get; init; }

    /// <summary>The cone bears from the small end to here.</summary>
    [Kind(QuantityKind.Length)]
    public required Quantity ContactTo { get; init; }

    /// <summary>Load over the wall, as if it bore evenly all along.</summary>
    [Kind(QuantityKind.Stress)]
    public required Quantity MeanPressure { get; init; }

    /// <summary>Mean pressure over the first 5 mm, with the factor by which finite elements exceed this model there.</summary>
    [Kind(QuantityKind.Stress)]
    public required Quantity LipPressure { get; init; }

    /// <summary>That pressure over the compound's compressive strength; null where the sheet gives none.</summary>
    [Kind(QuantityKind.Fraction)]
    public required Quantity? CompoundUtilisation { get; init; }

    /// <summary>Highest hoop stress of the socket at its bore; null where its outside isn't given.</summary>
    [Kind(QuantityKind.Stress)]
    public required Quantity? HoopStress { get; init; }

    /// <summary>Places along the cone from the small end to the mouth.</summary>
    public required IReadOnlyList<ConePlace> Profile { get; init; }
}

/// <summary>Shares of the load by thirds of the wall.</summary>
public sealed record LoadShares
{
    /// <summary>The third at the small end.</summary>
    [Kind(QuantityKind.Fraction)]
    public required Quantity Lower { get; init; }

    /// <summary>The third in the middle.</summary>
    [Kind(QuantityKind.Fraction)]
    public required Quantity Middle { get; init; }

    /// <summary>The third at the mouth.</summary>
    [Kind(QuantityKind.Fraction)]
    public required Quantity Upper { get; init; }
}

/// <summary>One place along the loaded cone.</summary>
public sealed record ConePlace
{
    /// <summary>Distance from the small end.</summary>
    [Kind(QuantityKind.Length)]
    public required Quantity FromSmallEnd { get; init; }

    /// <summary>Pressure between cone and wall.</summary>
    [Kind(QuantityKind.Stress)]
    public required Quantity Pressure { get; init; }

    /// <summary>Force still in the wires and the compound there.</summary>
    [Kind(QuantityKind.Force)]
    public required Quantity ForceLeft { get; init; }

    /// <summary>How far the cone has moved there.</summary>
    [Kind(QuantityKind.Length)]
    public required Quantity Seating { get; init; }
}

/// <summary>What an uncertain number changes.</summary>
public sealed record TransferSensitivity
{
    /// <summary>friction, shrinkage or taper (tan of the half-angle).</summary>
    public required string Of { get; init; }

    /// <summary>With its low value.</summary>
    public required SensitivityRun Low { get; init; }

    /// <summary>With its high value.</summary>
    public required SensitivityRun High { get; init; }
}

/// <summary>The cone with one number changed.</summary>
public sealed record SensitivityRun
{
    /// <summary>The number.</summary>
    [Kind(QuantityKind.Count)]
    public required Quantity Value { get; init; }

    /// <summary>Share of the lower third.</summary>
    [Kind(QuantityKind.Fraction)]
    public required Quantity LowerThird { get; init; }

    /// <summary>Pressure at the edge of the small end.</summary>
    [Kind(QuantityKind.Stress)]
    public required Quantity EdgePressure { get; init; }

    /// <summary>Movement at the mouth.</summary>
    [Kind(QuantityKind.Length)]
    public required Quantity SeatingAtMouth { get; init; }
}
