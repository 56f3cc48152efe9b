using CalcService.Api.Units;
using CalcService.Engine.Provenance;
using CalcService.Engine.Sockets;

namespace CalcService.Api.Contract;

/// <summary>Space around the wires at one section.</summary>
public sealed record WireSpace
{
    /// <summary>smallEnd, oneThird or mouth.</summary>
    public required string Place { get; init; }

    /// <summary>Bore there.</summary>
    [Kind(QuantityKind.Length)]
    public required Quantity BasketDiameter { get; init; }

    /// <summary>Distance between wire centres when spread evenly.</summary>
    [Kind(QuantityKind.Length)]
    public required Quantity Centres { get; init; }

    /// <summary>Clear gap between two wires; negative where they can't fit.</summary>
    [Kind(QuantityKind.Length)]
    public required Quantity Clear { get; init; }

    public static WireSpace From(WireSpacing wires, UnitSystem units) => new()
    {
        Place = wires.Place,
        BasketDiameter = Quantity.From(Measure.Length(wires.BasketDiameterM), units),
        Centres = Quantity.From(Measure.Length(wires.CentresM), units),
        Clear = Quantity.From(Measure.Length(wires.ClearM), units),
    };
}
