using CalcService.Api.Contract;
using CalcService.Api.Units;
using CalcService.Engine.Findings;
using CalcService.Engine.Matching;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;

namespace CalcService.Api.Capabilities.Matching;

/// <summary>A rope and a socket to match for a duty.</summary>
public sealed record TerminationMatchRequest : ICalculationRequest
{
    /// <summary>Your own reference, such as a job number; comes back as the id of a batch line.</summary>
    [Id]
    public string? Reference { get; init; }

    /// <summary>Edition of the rules, such as 2026-12; the current one if absent.</summary>
    [Id]
    public string? Rules { get; init; }

    /// <summary>Units of the answer: metric (if absent) or inch.</summary>
    [Undigested]
    public UnitSystem? Units { get; init; }

    /// <summary>The compound.</summary>
    public required Compound Compound { get; init; }

    /// <summary>The rope.</summary>
    public required Contract.Rope Rope { get; init; }

    /// <summary>The socket.</summary>
    public required SocketToMatch Socket { get; init; }

    /// <summary>What the end is for.</summary>
    public MatchedDuty? Duty { get; init; }

    /// <summary>What the end meets in service.</summary>
    public MatchedService? Service { get; init; }

    /// <summary>How the end is going to be prepared.</summary>
    public MatchedPreparation? Preparation { get; init; }

    /// <summary>What the load transfer in the cone is computed with.</summary>
    public MatchedCone? Cone { get; init; }
}

/// <summary>A socket by what its maker states and what was measured.</summary>
public sealed record SocketToMatch
{
    /// <summary>The conical basket.</summary>
    public required Basket Basket { get; init; }

    /// <summary>Outside diameter around the basket, where it is the same all along; else outerAtSmallEnd and outerAtMouth.</summary>
    [Kind(QuantityKind.Length, 1, 2000, "mm")]
    public Quantity? OuterDiameter { get; init; }

    /// <summary>Outside diameter at the small end.</summary>
    [Kind(QuantityKind.Length, 1, 2000, "mm")]
    public Quantity? OuterAtSmallEnd { get; init; }

    /// <summary>Outside diameter at the mouth.</summary>
    [Kind(QuantityKind.Length, 1, 2000, "mm")]
    public Quantity? OuterAtMouth { get; init; }

    /// <summary>Breaking force, from its maker.</summary>
    [Kind(QuantityKind.Force, .1, 100000, "kN")]
    public Quantity? BreakingForce { get; init; }

    /// <summary>Rated load, from its maker.</summary>
    [Kind(QuantityKind.Force, .1, 100000, "kN")]
    public Quantity? RatedLoad { get; init; }

    /// <summary>Highest proof load that its maker allows.</summary>
    [Kind(QuantityKind.Force, .1, 100000, "kN")]
    public Quantity? ProofRating { get; init; }

    /// <summary>What it is made of.</summary>
    public SocketMaterial? Material { get; init; }

    /// <summary>Rope diameters that its maker allows.</summary>
    public RopeDiameters? RopeRange { get; init; }

    /// <summary>The standard that it is made to.</summary>
    public string? Standard { get; init; }
}

/// <summary>What the end is for.</summary>
public sealed record MatchedDuty
{
    /// <summary>The use, which decides design factor and law.</summary>
    public DutyUse? Use { get; init; }

    /// <summary>Highest load in service; without it the cone is judged at the working load limit.</summary>
    [Kind(QuantityKind.Force, .001, 50000, "kN")]
    public Quantity? Load { get; init; }

    /// <summary>Breaking force over working load, from the code of the machine; a remembered one with a caution if absent.</summary>
    [Kind(QuantityKind.Count, 1, 50, "1")]
    public Quantity? DesignFactor { get; init; }

    /// <summary>Proof load; that of the use's rule if absent and there is one.</summary>
    [Kind(QuantityKind.Force, .001, 50000, "kN")]
    public Quantity? ProofLoad { get; init; }

    /// <summary>Strength of the end over that of the rope, as tested; 100 % if absent.</summary>
    [Kind(QuantityKind.Fraction, 1, 100, "%")]
    public Quantity? Efficiency { get; init; }

    /// <summary>Whether this rope, socket and compound were type tested together.</summary>
    public Fact? TypeTested { get; init; }

    /// <summary>Whether the socket is designed for resin. Mines ask for it.</summary>
    public Fact? ResinByDesign { get; init; }

    /// <summary>
    /// Type of a rotation resistant rope: typeI has at least fifteen outer strands, typeII at least ten, typeIII at most nine. Hoist ropes
    /// ask for it below a design factor of 5.
    /// </summary>
    public RotationResistance? RotationResistance { get; init; }

    /// <summary>Whether the makers of rope and machine both approve the design factor in writing.</summary>
    public Fact? MakersApproval { get; init; }

    /// <summary>Whether the work is duty cycle, or made of repeated lifts.</summary>
    public Fact? DutyCycle { get; init; }

    /// <summary>Whether persons hang from it.</summary>
    public Fact? LiftsPersons { get; init; }
}

/// <summary>What the end meets in service.</summary>
public sealed record MatchedService
{
    /// <summary>Coldest that the socket gets.</summary>
    [Kind(QuantityKind.Temperature, -100, 400, "degC")]
    public Quantity? Lowest { get; init; }

    /// <summary>Warmest that the socket gets.</summary>
    [Kind(QuantityKind.Temperature, -100, 400, "degC")]
    public Quantity? Highest { get; init; }

    /// <summary>Substances that it meets, as the compound's sheet names them; an empty list for none.</summary>
    [Items(100)]
    public IReadOnlyList<string>? Chemicals { get; init; }
}

/// <summary>How the end is going to be prepared. The answer says what it should be; this is checked against it.</summary>
public sealed record MatchedPreparation
{
    /// <summary>What happens to the core in the broom.</summary>
    public CoreTreatment? Core { get; init; }

    /// <summary>What the broom is cleaned with.</summary>
    public BroomCleaner? Cleaner { get; init; }

    /// <summary>Whether plastic filling or sheathing stays in the broom.</summary>
    public Fact? PlasticLeftIn { get; init; }
}

/// <summary>What the load transfer in the cone is computed with.</summary>
public sealed record MatchedCone
{
    /// <summary>Friction between cone and socket; 0.2 if absent.</summary>
    [Kind(QuantityKind.Count, 0, 1, "1")]
    public Quantity? Friction { get; init; }

    /// <summary>How far the cone cools from its peak to service; counts with the expansion of the sheet.</summary>
    [Kind(QuantityKind.TemperatureDifference, 0, 300, "K")]
    public Quantity? Cooling { get; init; }
}
