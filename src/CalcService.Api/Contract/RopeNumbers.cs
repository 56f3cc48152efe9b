using CalcService.Api.Units;
using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;

namespace CalcService.Api.Contract;

/// <summary>Numbers of a rope.</summary>
public sealed record RopeNumbers
{
    /// <summary>Minimum breaking force.</summary>
    [Kind(QuantityKind.Force)]
    public required Quantity? BreakingForce { get; init; }

    /// <summary>certificate or estimate; null without a breaking force.</summary>
    public required string? BreakingForceFrom { get; init; }

    /// <summary>Metallic area.</summary>
    [Kind(QuantityKind.Area)]
    public required Quantity? MetallicArea { get; init; }

    /// <summary>Mass per length.</summary>
    [Kind(QuantityKind.LinearDensity)]
    public required Quantity? Mass { get; init; }

    /// <summary>Wires in the broom.</summary>
    public required int? WireCount { get; init; }

    /// <summary>Diameter of the wires.</summary>
    [Kind(QuantityKind.Length)]
    public required Quantity? WireDiameter { get; init; }

    public static RopeNumbers From(RopeFacts rope, UnitSystem units) => new()
    {
        BreakingForce = Quantity.From(rope.BreakingForceN, QuantityKind.Force, units),
        BreakingForceFrom = rope.BreakingForceN is null ? null : rope.BreakingForceCertified ? "certificate" : "estimate",
        MetallicArea = Quantity.From(rope.MetallicAreaM2, QuantityKind.Area, units),
        Mass = Quantity.From(rope.MassKgPerM, QuantityKind.LinearDensity, units),
        WireCount = rope.WireCount,
        WireDiameter = Quantity.From(rope.WireDiameterM, QuantityKind.Length, units),
    };
}
