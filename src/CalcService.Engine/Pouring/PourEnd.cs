using CalcService.Engine.Ropes;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Pouring;

/// <summary>What the broom was cleaned with.</summary>
public enum Cleaner
{
    /// <summary>Somebody was asked and doesn't know.</summary>
    Unknown,

    /// <summary>Fresh solvent.</summary>
    Solvent,

    /// <summary>Detergent in water.</summary>
    Detergent,

    /// <summary>An acid.</summary>
    Acid,

    /// <summary>A soldering flux.</summary>
    Flux,
}

/// <summary>What became of a part of the rope that must not stay in the broom.</summary>
public enum BroomPart
{
    /// <summary>Somebody was asked and doesn't know.</summary>
    Unknown,

    /// <summary>The rope has none.</summary>
    None,

    /// <summary>Cut out down to the seizing.</summary>
    Removed,

    /// <summary>Still there.</summary>
    Left,
}

/// <summary>Equal rope ends in equal sockets.</summary>
public sealed record PourEnd(string Id, int Quantity, Rope Rope, Basket Basket, bool ToleranceStated, double? SocketBreakingForceN = null,
    double? PourTimeS = null)
{
    /// <summary>Where the sizes of the basket come from.</summary>
    public SizesFrom SizesFrom { get; init; }

    /// <summary>State of the bore; null where nobody said.</summary>
    public BoreState? Bore { get; init; }

    /// <summary>What the socket is made of; null where nobody said.</summary>
    public SocketMetal? Metal { get; init; }

    /// <summary>The ropes that the socket's maker allows, where somebody said.</summary>
    public RopeRange? RopeRange { get; init; }

    /// <summary>Temperature of this socket, where it was read by itself.</summary>
    public double? SocketTemperatureK { get; init; }

    /// <summary>When it was read.</summary>
    public DateTimeOffset? SocketReadAt { get; init; }

    public double? SocketMassKg { get; init; }

    /// <summary>Outer diameter around the basket; gives the mass of the wall where the mass isn't stated.</summary>
    public double? SocketOuterDiameterM { get; init; }

    /// <summary>How much of the serving stands inside the basket.</summary>
    public double? ServingInBasketM { get; init; }

    /// <summary>Diameter over the serving.</summary>
    public double? ServingDiameterM { get; init; }

    /// <summary>How far the ends of the wires stay below the mouth.</summary>
    public double? WireEndsBelowMouthM { get; init; }

    /// <summary>Rope and basket against the plumb line.</summary>
    public double? TiltRad { get; init; }

    /// <summary>Rope that hangs straight below the socket.</summary>
    public double? StraightBelowM { get; init; }

    /// <summary>Included angle to which the broom is opened for cleaning.</summary>
    public double? BroomAngleRad { get; init; }

    /// <summary>What became of the fibre core; null where nobody said.</summary>
    public BroomPart? FibreCore { get; init; }

    /// <summary>What became of plastic; null where nobody said.</summary>
    public BroomPart? Plastic { get; init; }

    /// <summary>What the broom was cleaned with; null where nobody said.</summary>
    public Cleaner? Cleaner { get; init; }

    public bool HasReleaseAgent { get; init; }

    /// <summary>When the cleaned broom is dry.</summary>
    public DateTimeOffset? DriedAt { get; init; }

    /// <summary>Basket length in which compound grips the wires: without serving, and up to the wire ends.</summary>
    public double GripLengthM => Basket.LengthM - (ServingInBasketM ?? 0) - (WireEndsBelowMouthM ?? 0);
}
