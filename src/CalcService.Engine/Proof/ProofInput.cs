using CalcService.Engine.Compounds;
using CalcService.Engine.Cones;
using CalcService.Engine.Findings;
using CalcService.Engine.Ropes;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Proof;

/// <summary>One step of the test as it was read.</summary>
/// <param name="LoadN">The load.</param>
/// <param name="SeatingM">How far the cone had moved, where it was read.</param>
public sealed record MeasuredStep(double LoadN, double? SeatingM);

/// <summary>What was seen during and after the test. Null where nobody said, which is not the same as unknown.</summary>
public sealed record ProofObservations
{
    public Fact? WireSlip { get; init; }

    public Fact? Cracks { get; init; }

    /// <summary>Whether the cone came out of line or seated on one side.</summary>
    public Fact? Asymmetry { get; init; }

    /// <summary>Whether the cone went on moving under the held load.</summary>
    public Fact? CreepUnderHold { get; init; }
}

/// <summary>An end that is to be proof loaded, or was.</summary>
public sealed record ProofInput
{
    public required DateTimeOffset TestedAt { get; init; }

    /// <summary>What the answer is for.</summary>
    public Purpose Purpose { get; init; }

    /// <summary>The rule set that sets the proof load; null where nobody said.</summary>
    public string? RuleSet { get; init; }

    public required CompoundSheet Compound { get; init; }

    public required Rope Rope { get; init; }

    public required Basket Basket { get; init; }

    public double? OuterAtSmallEndM { get; init; }

    public double? OuterAtMouthM { get; init; }

    /// <summary>Highest proof load that the socket's maker allows.</summary>
    public double? ProofRatingN { get; init; }

    /// <summary>Rated load of the end, pulled straight.</summary>
    public double? RatedLoadN { get; init; }

    /// <summary>Proof load that the request asks for.</summary>
    public double? ProofLoadN { get; init; }

    /// <summary>From when on the cure allows it.</summary>
    public DateTimeOffset? ProofLoadFrom { get; init; }

    /// <summary>Whether people are kept away from the test.</summary>
    public Fact? ExclusionZone { get; init; }

    /// <summary>Hardness of the cured compound, as it was read before the load.</summary>
    public HardnessReading Hardness { get; init; } = new();

    public double? Friction { get; init; }

    public SeatingPlace ReadAt { get; init; }

    /// <summary>Whether the seating was read under load.</summary>
    public bool? ReadUnderLoad { get; init; }

    /// <summary>Null before the test.</summary>
    public IReadOnlyList<MeasuredStep>? Measured { get; init; }

    public ProofObservations Observations { get; init; } = new();
}
