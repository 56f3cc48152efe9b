using CalcService.Api.Contract;
using CalcService.Api.Units;
using CalcService.Engine.Findings;
using CalcService.Engine.Inspection;
using CalcService.Engine.Provenance;

namespace CalcService.Api.Capabilities.Inspection;

/// <summary>An end in service and what was found on it.</summary>
public sealed record ServiceInspectionRequest : ICalculationRequest
{
    /// <summary>Your own reference, such as the number of the end; comes back as the id of a batch line.</summary>
    [Id]
    public string? Reference { get; init; }

    /// <summary>Edition of the rules, such as 2026-12; the current one if absent.</summary>
    [Id]
    public string? Rules { get; init; }

    /// <summary>Units of the answer: metric (if absent) or inch.</summary>
    [Undigested]
    public UnitSystem? Units { get; init; }

    /// <summary>Day of the inspection.</summary>
    public required DateOnly AssessedOn { get; init; }

    /// <summary>
    /// Rule set that holds: construction-crane, mine-hoist, platform, naval or general; /v1/rule-sets tells their limits.
    /// </summary>
    [Id]
    public string? RuleSet { get; init; }

    /// <summary>The compound in the socket, where it is known.</summary>
    public Compound? Compound { get; init; }

    /// <summary>The rope; measuredDiameter is the smallest found.</summary>
    public required Contract.Rope Rope { get; init; }

    /// <summary>What was found.</summary>
    public InspectedEnd? Inspection { get; init; }

    /// <summary>Evidence that mines ask for.</summary>
    public InspectedAttachment? Attachment { get; init; }
}

/// <summary>What was found on an end. What nobody looked at is left out.</summary>
public sealed record InspectedEnd
{
    /// <summary>Wires found broken; an empty list where none are.</summary>
    [Items(100)]
    public IReadOnlyList<InspectedWires>? BrokenWires { get; init; }

    /// <summary>Whether the cone or a wire has moved since the end was proof loaded.</summary>
    public Fact? ConeMovement { get; init; }

    /// <summary>Whether rust bleeds from the end.</summary>
    public Fact? RustBleed { get; init; }

    /// <summary>Whether the rope is bent where it leaves the socket, or the end connection is.</summary>
    public Fact? BendAtMouth { get; init; }

    /// <summary>Whether socket or pin is cracked.</summary>
    public Fact? Cracks { get; init; }

    /// <summary>Whether the end was put together wrongly.</summary>
    public Fact? ImproperlyApplied { get; init; }

    /// <summary>Corrosion of the end.</summary>
    public Degree? Corrosion { get; init; }

    /// <summary>Wear of socket, pin and ears.</summary>
    public Degree? Wear { get; init; }

    /// <summary>The lubricant where the rope leaves the socket.</summary>
    public LubricantState? Lubricant { get; init; }

    /// <summary>Highest temperature that the end has seen.</summary>
    [Kind(QuantityKind.Temperature, -100, 1000, "degC")]
    public Quantity? HighestTemperature { get; init; }

    /// <summary>Substances that the end has met, as the compound's sheet names them; an empty list for none.</summary>
    [Items(100)]
    public IReadOnlyList<string>? Chemicals { get; init; }

    /// <summary>Day of socketing.</summary>
    public DateOnly? SocketedOn { get; init; }

    /// <summary>Whether it is the end at the drum; of a platform's hoisting ropes the other ends are socketed again after a time.</summary>
    public Fact? AtDrum { get; init; }

    /// <summary>Diameter of the rope when it was new and had taken load.</summary>
    [Kind(QuantityKind.Length, 1, 200, "mm")]
    public Quantity? BaselineDiameter { get; init; }

    /// <summary>Loss of strength by a nondestructive test.</summary>
    [Kind(QuantityKind.Fraction, 0, 100, "%")]
    public Quantity? StrengthLoss { get; init; }

    /// <summary>Rope that can be cut off before it is too short for its work.</summary>
    [Kind(QuantityKind.Length, 0, 10000, "m")]
    public Quantity? LengthLeft { get; init; }

    /// <summary>Full turns on the drum at the longest working length.</summary>
    [Kind(QuantityKind.Count, 0, 10000, "1")]
    public Quantity? DrumTurnsLeft { get; init; }

    /// <summary>Diameter of the drum, to the middle of the rope on it.</summary>
    [Kind(QuantityKind.Length, 10, 20000, "mm")]
    public Quantity? DrumDiameter { get; init; }
}

/// <summary>Wires found broken at one place, all within one rope lay.</summary>
public sealed record InspectedWires
{
    /// <summary>How many.</summary>
    [Within(1, 10000)]
    public required int Count { get; init; }

    /// <summary>
    /// Where: at the mouth (where the rope leaves the socket), on the crowns in a lay beyond it, in a valley, or in the core.
    /// </summary>
    public WirePlace? Place { get; init; }

    /// <summary>Distance from where the rope leaves the socket; none for wires at the mouth.</summary>
    [Kind(QuantityKind.Length, 0, 10000, "m")]
    public Quantity? FromMouth { get; init; }

    /// <summary>How many of them are in one strand.</summary>
    [Within(1, 10000)]
    public int? InOneStrand { get; init; }
}

/// <summary>Evidence that mines ask for.</summary>
public sealed record InspectedAttachment
{
    /// <summary>Strength of the end over that of the rope, as tested.</summary>
    [Kind(QuantityKind.Fraction, 1, 100, "%")]
    public Quantity? Efficiency { get; init; }

    /// <summary>Whether the socket is designed for resin.</summary>
    public Fact? ResinByDesign { get; init; }
}
