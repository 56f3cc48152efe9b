using CalcService.Engine.Ropes;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Reuse;

/// <summary>A used socket to assess. Null and unknown mean that nobody said.</summary>
public sealed record ReuseInput
{
    public required DateOnly AssessedOn { get; init; }

    public required UsedSocket Socket { get; init; }

    public WearLimits Limits { get; init; } = new();

    public ConeRemoval Removal { get; init; } = new();

    public CrackInspection Inspection { get; init; } = new();

    public IntendedUse Intended { get; init; } = new();
}

/// <summary>A socket as its maker made it and as it was found.</summary>
public sealed record UsedSocket
{
    public string? Id { get; init; }

    public SocketType Type { get; init; }

    /// <summary>Whether the steel is known from marks and certificate.</summary>
    public bool? SteelKnown { get; init; }

    /// <summary>What it is made of, where somebody said.</summary>
    public SocketMetal? Metal { get; init; }

    public double? YieldStrengthPa { get; init; }

    public double? TensileStrengthPa { get; init; }

    public double? PinYieldStrengthPa { get; init; }

    public double? RatedLoadN { get; init; }

    public double? ProofRatingN { get; init; }

    public double? BreakingForceN { get; init; }

    public required NominalSizes Nominal { get; init; }

    public MeasuredSizes Measured { get; init; } = new();

    public SocketHistory History { get; init; } = new();
}

/// <summary>Sizes from the maker's drawing.</summary>
public sealed record NominalSizes
{
    public required Basket Basket { get; init; }

    public double? OuterAtSmallEndM { get; init; }

    public double? OuterAtMouthM { get; init; }

    public double? PinDiameterM { get; init; }

    public double? PinHoleDiameterM { get; init; }

    public double? EarThicknessM { get; init; }

    public double? EarWidthM { get; init; }

    /// <summary>From the centre of the hole to the end of the ear.</summary>
    public double? EarEndDistanceM { get; init; }

    public double? EarGapM { get; init; }

    /// <summary>How far any size but the basket's may be off, either way; null where the drawing doesn't say.</summary>
    public double? ToleranceM { get; init; }
}

/// <summary>Bores measured across one section of the basket.</summary>
public sealed record BoreStation(double FromSmallEndM, IReadOnlyList<double> DiametersM);

/// <summary>Sizes as found.</summary>
public sealed record MeasuredSizes
{
    public IReadOnlyList<BoreStation> Stations { get; init; } = [];

    public double? OuterAtSmallEndM { get; init; }

    public double? OuterAtMouthM { get; init; }

    public double? PinDiameterM { get; init; }

    public IReadOnlyList<double> PinHoleDiametersM { get; init; } = [];

    public double? EarThicknessM { get; init; }

    public double? EarWidthM { get; init; }

    public double? EarEndDistanceM { get; init; }

    public double? EarGapM { get; init; }

    public double? PitDepthM { get; init; }

    /// <summary>How far a reading may be off, either way.</summary>
    public double UncertaintyM { get; init; }
}

/// <summary>What the socket went through.</summary>
public sealed record SocketHistory
{
    public int? Pours { get; init; }

    public SocketMedium LastMedium { get; init; }

    public bool? Overloaded { get; init; }

    public bool? Welded { get; init; }

    public bool? Straightened { get; init; }

    public bool? ArcStruck { get; init; }
}

/// <summary>What the maker or the operator allows, with where it stands.</summary>
public sealed record WearLimits
{
    public double? BoreGrowth { get; init; }

    public double? Ovality { get; init; }

    public double? PinHoleGrowth { get; init; }

    public double? EarSpread { get; init; }

    public double? PitDepthM { get; init; }

    public double? TaperLoss { get; init; }

    public double? PinWear { get; init; }

    public double? EarThicknessLoss { get; init; }

    public double? EarWidthLoss { get; init; }

    public double? EarEndDistanceLoss { get; init; }

    public double? OutsideLoss { get; init; }

    public double? RemovalTemperatureK { get; init; }

    public double? DesignFactor { get; init; }

    public string? Source { get; init; }
}

/// <summary>How the old cone came out and how warm the socket got.</summary>
public sealed record ConeRemoval(RemovalMethod Method = RemovalMethod.Unknown, double? MaximumTemperatureK = null);

/// <summary>What the search for cracks showed at one place.</summary>
public sealed record Indication(SocketPlace Place, IndicationKind Kind, double? LengthM);

/// <summary>The search for cracks and the look by eye.</summary>
public sealed record CrackInspection
{
    public DateOnly? InspectedOn { get; init; }

    public SurfaceMethod Method { get; init; }

    /// <summary>Parts that were searched; null where nobody says.</summary>
    public IReadOnlyList<SocketPlace>? Places { get; init; }

    /// <summary>What was found; null where nobody reported.</summary>
    public IReadOnlyList<Indication>? Indications { get; init; }

    public bool? VisibleCracks { get; init; }

    public CorrosionState Corrosion { get; init; }

    public SurfaceState Surface { get; init; }
}

/// <summary>What the socket is going to be used for.</summary>
public sealed record IntendedUse
{
    public Rope? Rope { get; init; }

    public double? RatedLoadN { get; init; }

    public double? ProofLoadN { get; init; }
}
