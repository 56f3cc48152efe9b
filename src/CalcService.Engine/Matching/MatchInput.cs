using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Ropes;
using CalcService.Engine.Rules;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Matching;

/// <summary>A socket by what its maker states and what was measured.</summary>
public sealed record MatchSocket
{
    public required Basket Basket { get; init; }

    /// <summary>Whether the request says how far the sizes may be off.</summary>
    public bool ToleranceStated { get; init; }

    /// <summary>Where the sizes of the basket come from.</summary>
    public SizesFrom SizesFrom { get; init; }

    /// <summary>What it is made of; null where nobody said.</summary>
    public SocketMetal? Metal { get; init; }

    public double? OuterAtSmallEndM { get; init; }

    public double? OuterAtMouthM { get; init; }

    public double? BreakingForceN { get; init; }

    public double? RatedLoadN { get; init; }

    /// <summary>Highest proof load that the maker allows.</summary>
    public double? ProofRatingN { get; init; }

    public RopeRange? RopeRange { get; init; }

    /// <summary>The standard that it is made to.</summary>
    public string? Standard { get; init; }
}

/// <summary>Types of rotation resistant rope by 29 CFR 1926.1414(e)(1).</summary>
public enum RotationResistance
{
    /// <summary>Somebody was asked and doesn't know.</summary>
    Unknown,

    /// <summary>Fifteen outer strands or more, three layers or more.</summary>
    TypeI,

    /// <summary>Ten outer strands or more, two layers or more.</summary>
    TypeII,

    /// <summary>Nine outer strands at most, two layers.</summary>
    TypeIII,
}

/// <summary>What the end is for. Null where nobody said.</summary>
public sealed record MatchDuty
{
    public DutyUse Use { get; init; }

    public double? LoadN { get; init; }

    public double? DesignFactor { get; init; }

    public double? ProofLoadN { get; init; }

    /// <summary>Strength of the end over that of the rope, as tested.</summary>
    public double? Efficiency { get; init; }

    /// <summary>Whether this rope, socket and compound were type tested together.</summary>
    public bool? TypeTested { get; init; }

    /// <summary>Whether the socket is designed for resin.</summary>
    public bool? ResinByDesign { get; init; }

    /// <summary>The type of a rotation resistant rope; null where nobody said, or the rope isn't one.</summary>
    public RotationResistance? RotationResistance { get; init; }

    /// <summary>Whether the makers of rope and machine both approve the design factor in writing.</summary>
    public bool? MakersApproval { get; init; }

    /// <summary>Whether the work is duty cycle or made of repeated lifts.</summary>
    public bool? DutyCycle { get; init; }

    /// <summary>Whether it lifts persons.</summary>
    public Fact? LiftsPersons { get; init; }
}

/// <summary>What the end meets in service. Null where nobody said.</summary>
public sealed record MatchService
{
    public double? LowestK { get; init; }

    public double? HighestK { get; init; }

    public IReadOnlyList<string>? Chemicals { get; init; }
}

/// <summary>What happens to the core in the broom.</summary>
public enum CoreTreatment
{
    /// <summary>Not said.</summary>
    Unknown,

    /// <summary>Cut out to the seizing.</summary>
    CutOut,

    /// <summary>Unlaid into the broom.</summary>
    Unlaid,

    /// <summary>Left as it is.</summary>
    LeftIn,
}

/// <summary>What the broom is cleaned with.</summary>
public enum BroomCleaner
{
    /// <summary>Not said.</summary>
    Unknown,

    /// <summary>Fresh solvent.</summary>
    Solvent,

    /// <summary>Acid, as for zinc.</summary>
    Acid,

    /// <summary>Flux, as for zinc.</summary>
    Flux,
}

/// <summary>How the end is going to be prepared.</summary>
public sealed record MatchPreparation(CoreTreatment Core, BroomCleaner Cleaner, bool? PlasticLeftIn);

/// <summary>A rope and a socket to match.</summary>
public sealed record MatchInput
{
    public required CompoundSheet Compound { get; init; }

    public required Rope Rope { get; init; }

    public required MatchSocket Socket { get; init; }

    public MatchDuty Duty { get; init; } = new();

    /// <summary>Whether this end was type tested, told with the duty or with the basket: a no beats a yes.</summary>
    public bool? IsTypeTested => Duty.TypeTested == false || Socket.Basket.IsTypeTested == false ? false
        : Duty.TypeTested ?? Socket.Basket.IsTypeTested;

    public MatchService Service { get; init; } = new();

    public MatchPreparation? Preparation { get; init; }

    /// <summary>μ between cone and socket.</summary>
    public double? Friction { get; init; }

    /// <summary>How far the cone cools from its peak to service.</summary>
    public double? CoolingK { get; init; }
}
