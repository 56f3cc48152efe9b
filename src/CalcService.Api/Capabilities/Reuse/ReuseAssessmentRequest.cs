using CalcService.Api.Contract;
using CalcService.Api.Units;
using CalcService.Engine.Provenance;
using CalcService.Engine.Reuse;

namespace CalcService.Api.Capabilities.Reuse;

/// <summary>A used socket to assess after its old cone is out.</summary>
public sealed record ReuseAssessmentRequest : ICalculationRequest
{
    /// <summary>Your own reference, such as the socket's number; comes back as the id of a batch line.</summary>
    [Id]
    public string? Reference { get; init; }

    /// <summary>Edition of the rules, such as 2026-12; the current one if absent.</summary>
    [Id]
    public string? Rules { get; init; }

    /// <summary>Units of the answer: metric (if absent) or inch.</summary>
    [Undigested]
    public UnitSystem? Units { get; init; }

    /// <summary>Day of the assessment.</summary>
    public required DateOnly AssessedOn { get; init; }

    /// <summary>Rule set: general, also if absent. The limits of wear come with the request.</summary>
    [Kept]
    [Id]
    public string? RuleSet { get; init; }

    /// <summary>The socket.</summary>
    public required SocketToReuse Socket { get; init; }

    /// <summary>
    /// How much wear the maker or the operator allows. Where a part has changed by more than drawing and reading leave and its limit
    /// is not here, the socket is held.
    /// </summary>
    public ReuseLimits? Limits { get; init; }

    /// <summary>How the old cone came out.</summary>
    public ReuseConeRemoval? ConeRemoval { get; init; }

    /// <summary>The inspection after the cone was out.</summary>
    public ReuseInspection? Inspection { get; init; }

    /// <summary>What the socket is going to be used for.</summary>
    public ReuseIntended? Intended { get; init; }
}

/// <summary>How the old cone came out.</summary>
public sealed record ReuseConeRemoval
{
    /// <summary>The method.</summary>
    public RemovalMethod? Method { get; init; }

    /// <summary>Highest temperature that the socket reached.</summary>
    [Kind(QuantityKind.Temperature, -60, 1500, "degC")]
    public Quantity? MaximumTemperature { get; init; }
}

/// <summary>How much wear the maker or the operator allows.</summary>
public sealed record ReuseLimits
{
    /// <summary>Growth of the bore over the drawing, at the section worn most.</summary>
    [Kind(QuantityKind.Fraction, 0, 50, "%")]
    public Quantity? BoreGrowth { get; init; }

    /// <summary>Largest less smallest diameter of a section over the drawing's; of the bore and of the pin hole.</summary>
    [Kind(QuantityKind.Fraction, 0, 50, "%")]
    public Quantity? Ovality { get; init; }

    /// <summary>Growth of the pin hole over the drawing.</summary>
    [Kind(QuantityKind.Fraction, 0, 50, "%")]
    public Quantity? PinHoleGrowth { get; init; }

    /// <summary>Change of the gap between the ears, wider or closer, over the drawing.</summary>
    [Kind(QuantityKind.Fraction, 0, 50, "%")]
    public Quantity? EarSpread { get; init; }

    /// <summary>Depth of the deepest pit.</summary>
    [Kind(QuantityKind.Length, 0, 50, "mm")]
    public Quantity? PitDepth { get; init; }

    /// <summary>
    /// Share of the taper lost between neighbouring sections. Without it the bore has at least to widen toward the mouth.
    /// </summary>
    [Kind(QuantityKind.Fraction, 0, 99, "%")]
    public Quantity? TaperLoss { get; init; }

    /// <summary>Diameter lost by the pin.</summary>
    [Kind(QuantityKind.Fraction, 0, 50, "%")]
    public Quantity? PinWear { get; init; }

    /// <summary>Thickness lost by the ears.</summary>
    [Kind(QuantityKind.Fraction, 0, 50, "%")]
    public Quantity? EarThicknessLoss { get; init; }

    /// <summary>Width lost by the ears.</summary>
    [Kind(QuantityKind.Fraction, 0, 50, "%")]
    public Quantity? EarWidthLoss { get; init; }

    /// <summary>Share lost of the distance from the hole's centre to the end of the ear.</summary>
    [Kind(QuantityKind.Fraction, 0, 50, "%")]
    public Quantity? EarEndDistanceLoss { get; init; }

    /// <summary>Diameter lost by the outside of the basket.</summary>
    [Kind(QuantityKind.Fraction, 0, 50, "%")]
    public Quantity? OutsideLoss { get; init; }

    /// <summary>Highest temperature that the maker allows while the cone comes out.</summary>
    [Kind(QuantityKind.Temperature, 0, 1000, "degC")]
    public Quantity? RemovalTemperature { get; init; }

    /// <summary>Strength over stress at the rated load; a remembered one if absent.</summary>
    [Kind(QuantityKind.Count, 1, 50, "1")]
    public Quantity? DesignFactor { get; init; }

    /// <summary>Where these limits stand, such as the operator's rule. Limits without it hold the socket.</summary>
    public string? Source { get; init; }
}

/// <summary>What the socket is going to be used for.</summary>
public sealed record ReuseIntended
{
    /// <summary>The rope that is going to be socketed. Its breaking force is compared with the socket's where that is given.</summary>
    public Contract.Rope? Rope { get; init; }

    /// <summary>Rated load of the new end; that of the socket if absent.</summary>
    [Kind(QuantityKind.Force, .001, 50000, "kN")]
    public Quantity? RatedLoad { get; init; }

    /// <summary>Proof load of the new end; twice the rated load, as for slings, if absent.</summary>
    [Kind(QuantityKind.Force, .001, 100000, "kN")]
    public Quantity? ProofLoad { get; init; }
}
