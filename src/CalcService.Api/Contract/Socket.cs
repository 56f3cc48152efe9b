using CalcService.Api.Units;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Sockets;

namespace CalcService.Api.Contract;

/// <summary>A socket, as far as the pour needs it.</summary>
public sealed record Socket
{
    /// <summary>The conical basket.</summary>
    public required Basket Basket { get; init; }

    /// <summary>
    /// Outside of the socket around the basket, where it is the same all along. Read by the cure of a cone, and by the evened temperature
    /// of a pour.
    /// </summary>
    [Kind(QuantityKind.Length, 1, 3000, "mm")]
    public Quantity? OuterDiameter { get; init; }

    /// <summary>Outside at the small end of the basket, where it differs. Read by the cure of a cone.</summary>
    [Kind(QuantityKind.Length, 1, 3000, "mm")]
    public Quantity? OuterAtSmallEnd { get; init; }

    /// <summary>Outside at the mouth, where it differs. Read by the cure of a cone.</summary>
    [Kind(QuantityKind.Length, 1, 3000, "mm")]
    public Quantity? OuterAtMouth { get; init; }

    /// <summary>Breaking force of the socket, from its maker. Without it socket and rope are not compared.</summary>
    [Kind(QuantityKind.Force, .1, 100000, "kN")]
    public Quantity? BreakingForce { get; init; }

    /// <summary>What the socket is made of.</summary>
    public SocketMaterial? Material { get; init; }

    /// <summary>Rope diameters that its maker allows.</summary>
    public RopeDiameters? RopeRange { get; init; }

    /// <summary>Temperature of this socket, where it was read by itself. Else it counts as the steel.</summary>
    public TemperatureReading? Temperature { get; init; }

    /// <summary>Mass of the socket.</summary>
    [Kind(QuantityKind.Mass, .01, 20000, "kg")]
    public Quantity? Mass { get; init; }

    /// <summary>What the bore looks like.</summary>
    public BoreState? Bore { get; init; }
}

/// <summary>What a socket is made of.</summary>
public sealed record SocketMaterial
{
    /// <summary>
    /// The metal: castSteel, forgedSteel (machined from the solid too), stainlessSteel, greyIron, ductileIron (malleable too) or other.
    /// </summary>
    public SocketMetal? Kind { get; init; }
}

/// <summary>A range of rope diameters, both ends allowed.</summary>
public sealed record RopeDiameters
{
    /// <summary>Thinnest rope.</summary>
    [Kind(QuantityKind.Length, 1, 200, "mm")]
    public required Quantity Minimum { get; init; }

    /// <summary>Thickest rope.</summary>
    [Kind(QuantityKind.Length, 1, 200, "mm")]
    public required Quantity Maximum { get; init; }
}

/// <summary>A temperature with the time at which it was read.</summary>
public sealed record TemperatureReading
{
    /// <summary>The temperature.</summary>
    [Kind(QuantityKind.Temperature, -60, 150, "degC")]
    public required Quantity Value { get; init; }

    /// <summary>When it was read.</summary>
    public DateTimeOffset? ReadAt { get; init; }
}

/// <summary>The conical basket of a socket. The rope comes in through the small end; the mouth is the large end.</summary>
public sealed record Basket
{
    /// <summary>Bore at the small end.</summary>
    [Kind(QuantityKind.Length, 1, 400, "mm")]
    public required Quantity SmallEndDiameter { get; init; }

    /// <summary>Bore at the mouth.</summary>
    [Kind(QuantityKind.Length, 1, 1000, "mm")]
    public required Quantity LargeEndDiameter { get; init; }

    /// <summary>Length along the axis.</summary>
    [Kind(QuantityKind.Length, 1, 3000, "mm")]
    public required Quantity Length { get; init; }

    /// <summary>How far each size may be off, either way. Without it the sizes are taken as exact.</summary>
    [Kind(QuantityKind.Length, 0, 50, "mm")]
    public Quantity? Tolerance { get; init; }

    /// <summary>Where the sizes come from: measured on this socket, its maker's drawing, or memory.</summary>
    public SizesFrom? SizesFrom { get; init; }

    /// <summary>
    /// Whether an end of this rope, basket and compound was type tested. A basket of less than four rope diameters asks for it.
    /// </summary>
    public Fact? TypeTested { get; init; }
}
