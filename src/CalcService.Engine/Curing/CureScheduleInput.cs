using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Releases;
using CalcService.Engine.Ropes;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Curing;

/// <summary>The temperatures that the cure goes by. Null where nobody read it.</summary>
public sealed record CureConditions
{
    /// <summary>The air, where it stays as it is.</summary>
    public double? ConstantAirK { get; init; }

    /// <summary>The air over time, measured or forecast; rising times, straight in between.</summary>
    public IReadOnlyList<AirPoint> AirSeries { get; init; } = [];

    /// <summary>Steel at mixing.</summary>
    public double? SteelK { get; init; }

    /// <summary>Steel as it was read after that; rising times.</summary>
    public IReadOnlyList<AirPoint> SteelSeries { get; init; } = [];

    public double? CompoundK { get; init; }
}

/// <summary>Equal rope ends in equal sockets.</summary>
public sealed record CureEnd(string Id, int Quantity, Rope Rope, Basket Basket)
{
    /// <summary>Temperature of the socket, where it was read by itself.</summary>
    public double? SocketK { get; init; }

    /// <summary>State of the bore; null where nobody said.</summary>
    public BoreState? Bore { get; init; }

    /// <summary>Outside of the socket at its small end.</summary>
    public double? OuterAtSmallEndM { get; init; }

    /// <summary>Outside of the socket at its mouth.</summary>
    public double? OuterAtMouthM { get; init; }

    /// <summary>Strength of the socket, where it is known.</summary>
    public double? SocketBreakingForceN { get; init; }

    /// <summary>What the socket is made of; null where nobody said.</summary>
    public SocketMetal? Metal { get; init; }

    /// <summary>The ropes that the socket's maker allows, where somebody said.</summary>
    public RopeRange? RopeRange { get; init; }
}

/// <summary>A gel that somebody saw.</summary>
public sealed record GelObservation(string End, DateTimeOffset GelAt, GelPlace SeenIn, DateTimeOffset? StillSoftAt = null);

/// <summary>A cure to schedule.</summary>
public sealed record CureScheduleInput
{
    public required CompoundSheet Compound { get; init; }

    /// <summary>What the answer is for.</summary>
    public Purpose Purpose { get; init; }

    /// <summary>Doses in each kit; null where nobody said.</summary>
    public int? Doses { get; init; }

    public required DateTimeOffset MixedAt { get; init; }

    public required ThermalModel ThermalModel { get; init; }

    public required CureConditions Conditions { get; init; }

    public required IReadOnlyList<CureEnd> Ends { get; init; }

    public IReadOnlyList<GelObservation> Observations { get; init; } = [];

    /// <summary>From mixing until the last basket is full.</summary>
    public double? PourTimeS { get; init; }

    /// <summary>The shop whose tasks are to be scheduled; the mixing is then the earliest one. Null without.</summary>
    public ShopInput? Shop { get; init; }
}
