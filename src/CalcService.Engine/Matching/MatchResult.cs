using CalcService.Engine.Cones;
using CalcService.Engine.Ropes;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Matching;

/// <summary>What the end may carry.</summary>
/// <param name="DesignFactor">Breaking force over working load.</param>
/// <param name="FactorFrom">request or ruleSet.</param>
/// <param name="Efficiency">Strength of the end over that of the rope.</param>
/// <param name="LimitN">Working load limit of rope and end.</param>
/// <param name="LoadN">The load of the duty.</param>
/// <param name="ProofLoadN">The proof load, given or by the rule of the duty.</param>
public sealed record WorkingLoad(double? DesignFactor, string? FactorFrom, double Efficiency, double? LimitN, double? LoadN,
    double? ProofLoadN)
{
    /// <summary>The load that the cone is judged at: that of the duty, else the limit.</summary>
    public double? JudgedN => LoadN ?? LimitN;
}

/// <summary>The cone under one of its loads.</summary>
/// <param name="Name">workingLoad, proofLoad or breakingForce.</param>
/// <param name="State">The cone.</param>
/// <param name="LipPressurePa">Mean pressure over the first millimetres, with the factor that the model lacks there.</param>
/// <param name="Utilisation">That pressure over the compressive strength; null where the sheet gives none.</param>
/// <param name="HoopPa">Highest hoop stress of the socket; null where its outside isn't known.</param>
public sealed record ConeCase(string Name, ConeState State, double LipPressurePa, double? Utilisation, double? HoopPa);

/// <summary>What one assumption changes, at the working load.</summary>
/// <param name="What">friction, shrinkage or taper.</param>
/// <param name="Low">Its low value.</param>
/// <param name="High">Its high value.</param>
/// <param name="AtLow">The cone with the low value.</param>
/// <param name="AtHigh">The cone with the high value.</param>
public sealed record ConeSensitivity(string What, double Low, double High, ConeState AtLow, ConeState AtHigh);

/// <summary>How the cone hands its load to the socket.</summary>
/// <param name="Cone">What was computed with.</param>
/// <param name="FullContactN">From this load on it bears along its whole length.</param>
/// <param name="Cases">The loads, smallest first as named.</param>
/// <param name="Sensitivity">What the assumptions change.</param>
public sealed record ConeTransfer(Cone Cone, double FullContactN, IReadOnlyList<ConeCase> Cases,
    IReadOnlyList<ConeSensitivity> Sensitivity);

/// <summary>A match. Whatever could not be computed is null and has its finding.</summary>
public sealed record MatchResult
{
    public required RopeFacts Rope { get; init; }

    public required double IncludedAngleRad { get; init; }

    /// <summary>Basket length over rope diameter.</summary>
    public required double LengthInDiameters { get; init; }

    public required IReadOnlyList<WireSpacing> Wires { get; init; }

    /// <summary>Breaking force of the socket over the rope's.</summary>
    public double? StrengthRatio { get; init; }

    public required WorkingLoad Working { get; init; }

    /// <summary>What is done with the core: cutOut or unlaid; unknown where the core isn't.</summary>
    public required CoreTreatment Core { get; init; }

    /// <summary>Bond that holds a wire to its breaking stress over the length of the basket.</summary>
    public double? BondNeededPa { get; init; }

    public ConeTransfer? Transfer { get; init; }
}
