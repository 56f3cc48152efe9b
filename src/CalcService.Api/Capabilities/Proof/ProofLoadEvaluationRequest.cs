using CalcService.Api.Contract;
using CalcService.Api.Units;
using CalcService.Engine.Compounds;
using CalcService.Engine.Cones;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Api.Capabilities.Proof;

/// <summary>An end that is to be proof loaded, or was.</summary>
public sealed record ProofLoadEvaluationRequest : ICalculationRequest
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

    /// <summary>
    /// What the answer is for: pour (if absent) for an end that exists, where every fact behind a stop rule has to be stated; plan for
    /// one that is still ahead; quote asks for no facts.
    /// </summary>
    public Purpose? Purpose { get; init; }

    /// <summary>When the load is, or was, brought up.</summary>
    public required DateTimeOffset TestedAt { get; init; }

    /// <summary>
    /// Rule set of the duty: sling, pendant, hoist-rope, mine-hoist, lift, mooring or general. Only sling sets a proof load of its own;
    /// with the others give test.proofLoad.
    /// </summary>
    [Id]
    public string? RuleSet { get; init; }

    /// <summary>The compound.</summary>
    public required Compound Compound { get; init; }

    /// <summary>The rope.</summary>
    public required Contract.Rope Rope { get; init; }

    /// <summary>The socket.</summary>
    public required ProofedSocket Socket { get; init; }

    /// <summary>The test as it is meant.</summary>
    public ProofTest? Test { get; init; }

    /// <summary>What the test showed; absent before it.</summary>
    public ProofMeasured? Measured { get; init; }
}

/// <summary>A socket under a test load.</summary>
public sealed record ProofedSocket
{
    /// <summary>The conical basket.</summary>
    public required Basket Basket { get; init; }

    /// <summary>Outside diameter at the small end.</summary>
    [Kind(QuantityKind.Length, 1, 2000, "mm")]
    public Quantity? OuterAtSmallEnd { get; init; }

    /// <summary>Outside diameter at the mouth.</summary>
    [Kind(QuantityKind.Length, 1, 2000, "mm")]
    public Quantity? OuterAtMouth { get; init; }

    /// <summary>Highest proof load that its maker allows.</summary>
    [Kind(QuantityKind.Force, .1, 100000, "kN")]
    public Quantity? ProofRating { get; init; }
}

/// <summary>A test as it is meant.</summary>
public sealed record ProofTest
{
    /// <summary>Rated load of the end, pulled straight.</summary>
    [Kind(QuantityKind.Force, .001, 50000, "kN")]
    public Quantity? RatedLoad { get; init; }

    /// <summary>Proof load; that of the rule set if absent and it has one.</summary>
    [Kind(QuantityKind.Force, .001, 100000, "kN")]
    public Quantity? ProofLoad { get; init; }

    /// <summary>From when on the cure allows the load, as a cure schedule gives it.</summary>
    public DateTimeOffset? ProofLoadFrom { get; init; }

    /// <summary>Whether people are kept away from the test.</summary>
    public Fact? ExclusionZone { get; init; }

    /// <summary>Hardness of the cured compound, read before the load; asked for where the sheet asks for one.</summary>
    public ProofHardness? Hardness { get; init; }

    /// <summary>Where the seating is read; the band is given for the mouth if absent.</summary>
    public SeatingPlace? SeatingReadAt { get; init; }

    /// <summary>Whether it is read while the load is on.</summary>
    public Fact? ReadUnderLoad { get; init; }

    /// <summary>Friction between cone and socket; a band of 0.1 to 0.3 if absent.</summary>
    [Kind(QuantityKind.Count, .01, 1, "1")]
    public Quantity? Friction { get; init; }
}

/// <summary>Hardness of the cured compound as it was read before the load.</summary>
public sealed record ProofHardness
{
    /// <summary>How it was read, in the words of the sheet.</summary>
    public string? Method { get; init; }

    /// <summary>The number.</summary>
    [Kind(QuantityKind.Count, 0, 1000, "1")]
    public Quantity? Value { get; init; }

    /// <summary>Where it was read; the lip, the small end, cures last.</summary>
    public HardnessPlace? ReadAt { get; init; }
}

/// <summary>What a test showed.</summary>
public sealed record ProofMeasured
{
    /// <summary>The loads that were held, in order.</summary>
    [Items(1, 12)]
    public IReadOnlyList<ProofReading>? Steps { get; init; }

    /// <summary>Whether single wires moved against the cone.</summary>
    public Fact? WireSlip { get; init; }

    /// <summary>Whether socket, pin or cone cracked.</summary>
    public Fact? Cracks { get; init; }

    /// <summary>Whether the cone seated on one side.</summary>
    public Fact? Asymmetry { get; init; }

    /// <summary>Whether the cone went on moving while the load was held.</summary>
    public Fact? CreepUnderHold { get; init; }
}

/// <summary>One load that was held.</summary>
public sealed record ProofReading
{
    /// <summary>The load.</summary>
    [Kind(QuantityKind.Force, .001, 100000, "kN")]
    public required Quantity Load { get; init; }

    /// <summary>How far the cone had moved.</summary>
    [Kind(QuantityKind.Length, -50, 500, "mm")]
    public Quantity? Seating { get; init; }
}
