using CalcService.Api.Contract;
using CalcService.Api.Units;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Reuse;
using CalcService.Engine.Sockets;

namespace CalcService.Api.Capabilities.Reuse;

/// <summary>A used socket.</summary>
public sealed record SocketToReuse
{
    /// <summary>The mark that tells it from others.</summary>
    [Id]
    public string? Id { get; init; }

    /// <summary>Open, with ears and pin, or closed, with a bail.</summary>
    public SocketType? Type { get; init; }

    /// <summary>Its steel.</summary>
    public SocketSteel? Material { get; init; }

    /// <summary>The pin of an open socket.</summary>
    public SocketPin? Pin { get; init; }

    /// <summary>Rated load, from its maker.</summary>
    [Kind(QuantityKind.Force, .001, 50000, "kN")]
    public Quantity? RatedLoad { get; init; }

    /// <summary>Highest proof load that its maker allows.</summary>
    [Kind(QuantityKind.Force, .001, 100000, "kN")]
    public Quantity? ProofRating { get; init; }

    /// <summary>Breaking force, from its maker. It is compared with the rope that is going to be socketed.</summary>
    [Kind(QuantityKind.Force, .1, 100000, "kN")]
    public Quantity? BreakingForce { get; init; }

    /// <summary>Sizes from its maker's drawing.</summary>
    public required SocketDrawing Nominal { get; init; }

    /// <summary>Sizes as found.</summary>
    public SocketMeasurement? Measured { get; init; }

    /// <summary>What it went through.</summary>
    public SocketPast? History { get; init; }
}

/// <summary>Steel of a socket.</summary>
public sealed record SocketSteel
{
    /// <summary>
    /// The metal: castSteel, forgedSteel (machined from the solid too), stainlessSteel, greyIron, ductileIron (malleable too) or other.
    /// </summary>
    public SocketMetal? Kind { get; init; }

    /// <summary>Whether the steel is known by marks and certificate.</summary>
    public Fact? Known { get; init; }

    /// <summary>Yield strength.</summary>
    [Kind(QuantityKind.Stress, 50, 3000, "MPa")]
    public Quantity? YieldStrength { get; init; }

    /// <summary>Tensile strength.</summary>
    [Kind(QuantityKind.Stress, 50, 3000, "MPa")]
    public Quantity? TensileStrength { get; init; }
}

/// <summary>Pin of an open socket.</summary>
public sealed record SocketPin
{
    /// <summary>Yield strength of its steel; taken from the socket's steel, with a note, if absent.</summary>
    [Kind(QuantityKind.Stress, 50, 3000, "MPa")]
    public Quantity? YieldStrength { get; init; }
}

/// <summary>Sizes of a socket from its maker's drawing.</summary>
public sealed record SocketDrawing
{
    /// <summary>The conical basket.</summary>
    public required Contract.Basket Basket { get; init; }

    /// <summary>Outside around the basket, where it is the same all along; else outerAtSmallEnd and outerAtMouth.</summary>
    [Kind(QuantityKind.Length, 1, 2000, "mm")]
    public Quantity? OuterDiameter { get; init; }

    /// <summary>Outside at the small end.</summary>
    [Kind(QuantityKind.Length, 1, 2000, "mm")]
    public Quantity? OuterAtSmallEnd { get; init; }

    /// <summary>Outside at the mouth.</summary>
    [Kind(QuantityKind.Length, 1, 2000, "mm")]
    public Quantity? OuterAtMouth { get; init; }

    /// <summary>Diameter of the pin.</summary>
    [Kind(QuantityKind.Length, 1, 1000, "mm")]
    public Quantity? PinDiameter { get; init; }

    /// <summary>Diameter of the hole for the pin.</summary>
    [Kind(QuantityKind.Length, 1, 1000, "mm")]
    public Quantity? PinHoleDiameter { get; init; }

    /// <summary>Thickness of one ear.</summary>
    [Kind(QuantityKind.Length, 1, 1000, "mm")]
    public Quantity? EarThickness { get; init; }

    /// <summary>Width of an ear through the centre of the hole.</summary>
    [Kind(QuantityKind.Length, 1, 3000, "mm")]
    public Quantity? EarWidth { get; init; }

    /// <summary>From the centre of the hole to the end of the ear.</summary>
    [Kind(QuantityKind.Length, 1, 3000, "mm")]
    public Quantity? EarEndDistance { get; init; }

    /// <summary>Clear gap between the ears.</summary>
    [Kind(QuantityKind.Length, 1, 3000, "mm")]
    public Quantity? EarGap { get; init; }

    /// <summary>
    /// How far any of these sizes but the basket's may be off, either way. If absent, nothing is granted to holes and gap, and the
    /// general tolerance of machined sizes to the rest.
    /// </summary>
    [Kind(QuantityKind.Length, 0, 5, "mm")]
    public Quantity? Tolerance { get; init; }
}

/// <summary>Sizes of a socket as found.</summary>
public sealed record SocketMeasurement
{
    /// <summary>Sections of the bore: at least one in each third of the basket.</summary>
    [Items(50)]
    public IReadOnlyList<BasketStation>? Stations { get; init; }

    /// <summary>Smallest outside around the basket, where it is the same all along; else outerAtSmallEnd and outerAtMouth.</summary>
    [Kind(QuantityKind.Length, .1, 2000, "mm")]
    public Quantity? OuterDiameter { get; init; }

    /// <summary>Smallest outside at the small end.</summary>
    [Kind(QuantityKind.Length, .1, 2000, "mm")]
    public Quantity? OuterAtSmallEnd { get; init; }

    /// <summary>Smallest outside at the mouth.</summary>
    [Kind(QuantityKind.Length, .1, 2000, "mm")]
    public Quantity? OuterAtMouth { get; init; }

    /// <summary>Diameter of the pin where it is worn most.</summary>
    [Kind(QuantityKind.Length, .1, 1000, "mm")]
    public Quantity? PinDiameter { get; init; }

    /// <summary>Diameters of the pin holes: along the load and across it, best in both ears.</summary>
    [Kind(QuantityKind.Length, .1, 1000, "mm")]
    [Items(50)]
    public IReadOnlyList<Quantity>? PinHoleDiameters { get; init; }

    /// <summary>Thickness of the ears where they are worn most.</summary>
    [Kind(QuantityKind.Length, .1, 1000, "mm")]
    public Quantity? EarThickness { get; init; }

    /// <summary>Width of the ears through the centre of the hole; the drawing's if absent.</summary>
    [Kind(QuantityKind.Length, .1, 3000, "mm")]
    public Quantity? EarWidth { get; init; }

    /// <summary>From the centre of the hole as drawn to the end of the ear; the drawing's if absent.</summary>
    [Kind(QuantityKind.Length, .1, 3000, "mm")]
    public Quantity? EarEndDistance { get; init; }

    /// <summary>Clear gap between the ears, at their ends.</summary>
    [Kind(QuantityKind.Length, .1, 3000, "mm")]
    public Quantity? EarGap { get; init; }

    /// <summary>Depth of the deepest pit anywhere; 0 where there is none.</summary>
    [Kind(QuantityKind.Length, 0, 100, "mm")]
    public Quantity? PitDepth { get; init; }

    /// <summary>How far each of these readings may be off, either way; taken as exact if absent.</summary>
    [Kind(QuantityKind.Length, 0, 5, "mm")]
    public Quantity? Uncertainty { get; init; }
}

/// <summary>One section of the bore.</summary>
public sealed record BasketStation
{
    /// <summary>Distance from the small end, along the axis.</summary>
    [Kind(QuantityKind.Length, 0, 3000, "mm")]
    public required Quantity FromSmallEnd { get; init; }

    /// <summary>Diameters across the section; at least two.</summary>
    [Kind(QuantityKind.Length, .1, 1000, "mm")]
    [Items(50)]
    public required IReadOnlyList<Quantity> Diameters { get; init; }
}

/// <summary>What a socket went through.</summary>
public sealed record SocketPast
{
    /// <summary>How often it was poured.</summary>
    [Within(0, 1000)]
    public int? Pours { get; init; }

    /// <summary>What it was last poured with.</summary>
    public SocketMedium? LastMedium { get; init; }

    /// <summary>Whether it was ever overloaded.</summary>
    public Fact? Overloaded { get; init; }

    /// <summary>Whether it was ever welded.</summary>
    public Fact? Welded { get; init; }

    /// <summary>Whether it was ever straightened.</summary>
    public Fact? Straightened { get; init; }

    /// <summary>Whether an arc ever struck it.</summary>
    public Fact? ArcStruck { get; init; }
}
