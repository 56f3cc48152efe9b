using CalcService.Api.Contract;
using CalcService.Api.Units;
using CalcService.Engine.Audits;
using CalcService.Engine.Compounds;
using CalcService.Engine.Cones;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Releases;

namespace CalcService.Api.Capabilities.Audits;

/// <summary>The record of one end to audit. What it doesn't hold is left out, and found missing.</summary>
public sealed record RecordAuditRequest : ICalculationRequest
{
    /// <summary>Your own reference; comes back as the id of a batch line.</summary>
    [Id]
    public string? Reference { get; init; }

    /// <summary>Edition of the rules, such as 2026-12; the current one if absent.</summary>
    [Id]
    public string? Rules { get; init; }

    /// <summary>Units of the answer: metric (if absent) or inch.</summary>
    [Undigested]
    public UnitSystem? Units { get; init; }

    /// <summary>Day of the audit. Nothing in the record may be later.</summary>
    public required DateOnly AuditedOn { get; init; }

    /// <summary>pour (if absent): the end was made. plan: what isn't done yet is left open. quote: nothing is asked for.</summary>
    public Purpose? Purpose { get; init; }

    /// <summary>The model of the cure schedule that the work followed; uniform if absent, which is never earlier.</summary>
    public ThermalModel? ThermalModel { get; init; }

    /// <summary>The compound that was poured.</summary>
    public required Compound Compound { get; init; }

    /// <summary>What tells this record from others.</summary>
    public RecordIdentity? Record { get; init; }

    /// <summary>The rope, with its certificate.</summary>
    public Rope? Rope { get; init; }

    /// <summary>The socket, with its papers.</summary>
    public RecordedSocket? Socket { get; init; }

    /// <summary>Readings of the day.</summary>
    public RecordedConditions? Conditions { get; init; }

    /// <summary>What was mixed.</summary>
    public RecordedMix? Mix { get; init; }

    /// <summary>When things happened.</summary>
    public RecordedTimes? Times { get; init; }

    /// <summary>Where the gel was seen.</summary>
    public GelPlace? GelSeenIn { get; init; }

    /// <summary>Hardness of the cured compound.</summary>
    public RecordedHardness? Hardness { get; init; }

    /// <summary>The proof load.</summary>
    public RecordedProof? Proof { get; init; }

    /// <summary>Who worked on the end.</summary>
    [Items(50)]
    public IReadOnlyList<RecordedPerson>? People { get; init; }

    /// <summary>What each look at the work came to.</summary>
    public RecordedLooks? Looks { get; init; }
}

/// <summary>What tells a record from others.</summary>
public sealed record RecordIdentity
{
    /// <summary>Number of the record. A batch counts numbers that come twice.</summary>
    [Id]
    public string? Number { get; init; }

    /// <summary>Mark of the end.</summary>
    [Id]
    public string? End { get; init; }
}

/// <summary>The socket as its papers have it.</summary>
public sealed record RecordedSocket
{
    /// <summary>Its mark.</summary>
    [Id]
    public string? Id { get; init; }

    /// <summary>Number of its certificate.</summary>
    [Id]
    public string? Certificate { get; init; }

    /// <summary>Heat number of its steel, kept with the record.</summary>
    [Kept]
    [Id]
    public string? HeatNumber { get; init; }

    /// <summary>The conical basket.</summary>
    public Basket? Basket { get; init; }

    /// <summary>Outside at the small end.</summary>
    [Kind(QuantityKind.Length, 1, 3000, "mm")]
    public Quantity? OuterAtSmallEnd { get; init; }

    /// <summary>Outside at the mouth.</summary>
    [Kind(QuantityKind.Length, 1, 3000, "mm")]
    public Quantity? OuterAtMouth { get; init; }

    /// <summary>What it is made of.</summary>
    public SocketMaterial? Material { get; init; }

    /// <summary>Breaking force, from its maker.</summary>
    [Kind(QuantityKind.Force, .1, 100000, "kN")]
    public Quantity? BreakingForce { get; init; }

    /// <summary>Highest proof load that its maker allows.</summary>
    [Kind(QuantityKind.Force, .001, 100000, "kN")]
    public Quantity? ProofRating { get; init; }
}

/// <summary>Readings of the day.</summary>
public sealed record RecordedConditions
{
    /// <summary>The air: one temperature, or its course from mixing until the end was loaded.</summary>
    public CureAir? Air { get; init; }

    /// <summary>Temperature of socket and wires at mixing.</summary>
    [Kind(QuantityKind.Temperature, -60, 150, "degC")]
    public Quantity? SteelTemperature { get; init; }

    /// <summary>The steel as it was read after the mixing, rising times; straight between two readings, the last one held.</summary>
    [Items(CureAirValidator.MostPoints)]
    public IReadOnlyList<SteelReading>? SteelSeries { get; init; }

    /// <summary>Temperature of the compound before it was mixed.</summary>
    [Kind(QuantityKind.Temperature, -30, 100, "degC")]
    public Quantity? CompoundTemperature { get; init; }

    /// <summary>Relative humidity of the air.</summary>
    [Kind(QuantityKind.Fraction, 1, 100, "%")]
    public Quantity? RelativeHumidity { get; init; }

    /// <summary>Whether a flame, spark, hot surface or running engine was near.</summary>
    public Fact? IgnitionSource { get; init; }
}

/// <summary>What was mixed.</summary>
public sealed record RecordedMix
{
    /// <summary>Kits of the mix, each with its lot.</summary>
    [Items(50)]
    public IReadOnlyList<Contract.StockLot>? Kits { get; init; }

    /// <summary>Doses of accelerator in each kit.</summary>
    [Within(0, 100)]
    public int? DosesPerKit { get; init; }

    /// <summary>When the dose went in, where one was given.</summary>
    public DoseMoment? DoseAdded { get; init; }

    /// <summary>Baskets like this one that the mix filled, this one among them.</summary>
    [Within(1, 1000)]
    public int? Baskets { get; init; }

    /// <summary>Compound that went into this basket.</summary>
    [Kind(QuantityKind.Volume, 0, 1000, "L")]
    public Quantity? Volume { get; init; }
}

/// <summary>When things happened.</summary>
public sealed record RecordedTimes
{
    /// <summary>The end stood ready: cleaned, drawn in and sealed.</summary>
    public DateTimeOffset? PreparedAt { get; init; }

    /// <summary>Air, steel, compound and humidity were read.</summary>
    public DateTimeOffset? ReadAt { get; init; }

    /// <summary>Resin and hardener met.</summary>
    public DateTimeOffset? MixedAt { get; init; }

    /// <summary>The basket was full.</summary>
    public DateTimeOffset? PouredAt { get; init; }

    /// <summary>The compound was seen gelled.</summary>
    public DateTimeOffset? GelAt { get; init; }

    /// <summary>The last look at which it was still soft.</summary>
    public DateTimeOffset? StillSoftAt { get; init; }

    /// <summary>The end was first moved.</summary>
    public DateTimeOffset? MovedAt { get; init; }

    /// <summary>It was released for loading.</summary>
    public DateTimeOffset? ReleasedAt { get; init; }

    /// <summary>It was proof loaded.</summary>
    public DateTimeOffset? ProofAt { get; init; }

    /// <summary>It went to service; left out where it hasn't yet.</summary>
    public DateTimeOffset? InServiceAt { get; init; }
}

/// <summary>Hardness of the cured compound.</summary>
public sealed record RecordedHardness
{
    /// <summary>How it was read, in the words of the sheet.</summary>
    public string? Method { get; init; }

    /// <summary>The number.</summary>
    [Kind(QuantityKind.Count, 0, 1000, "1")]
    public Quantity? Value { get; init; }

    /// <summary>Where it was read.</summary>
    public HardnessPlace? ReadAt { get; init; }
}

/// <summary>The proof load.</summary>
public sealed record RecordedProof
{
    /// <summary>Whether this end has to be proof loaded.</summary>
    public Fact? Asked { get; init; }

    /// <summary>What it had to be loaded to.</summary>
    [Kind(QuantityKind.Force, .001, 100000, "kN")]
    public Quantity? AskedLoad { get; init; }

    /// <summary>The rated load that the proof load is for.</summary>
    [Kind(QuantityKind.Force, .001, 100000, "kN")]
    public Quantity? RatedLoad { get; init; }

    /// <summary>What it was loaded to.</summary>
    [Kind(QuantityKind.Force, .001, 100000, "kN")]
    public Quantity? Load { get; init; }

    /// <summary>How far the cone had moved under that load.</summary>
    [Kind(QuantityKind.Length, -50, 500, "mm")]
    public Quantity? Seating { get; init; }

    /// <summary>Where the seating was read.</summary>
    public SeatingPlace? SeatingReadAt { get; init; }

    /// <summary>Whether it was read under load.</summary>
    public Fact? ReadUnderLoad { get; init; }

    /// <summary>Whether single wires slipped.</summary>
    public Fact? WireSlip { get; init; }

    /// <summary>Whether the cone went on moving under the held load.</summary>
    public Fact? CreepUnderHold { get; init; }

    /// <summary>Whether socket, pin or cone cracked.</summary>
    public Fact? Cracks { get; init; }

    /// <summary>Whether the cone seated on one side.</summary>
    public Fact? Asymmetry { get; init; }
}

/// <summary>Somebody who worked on the end.</summary>
public sealed record RecordedPerson
{
    /// <summary>What they did.</summary>
    public WorkRole? Role { get; init; }

    /// <summary>Who they are. A batch counts by the name of whoever mixed.</summary>
    public string? Name { get; init; }

    /// <summary>Last good day of their qualification.</summary>
    public DateOnly? QualifiedUntil { get; init; }
}

/// <summary>What each look at the work came to.</summary>
public sealed record RecordedLooks
{
    /// <summary>The bore: clean to bare metal.</summary>
    public LookResult? Bore { get; init; }

    /// <summary>The broom: clean, dry and evenly spread.</summary>
    public LookResult? Broom { get; init; }

    /// <summary>The core: fibre cut out, steel unlaid.</summary>
    public LookResult? Core { get; init; }

    /// <summary>Rope and basket in line.</summary>
    public LookResult? Alignment { get; init; }

    /// <summary>The seal at the small end: nothing ran out.</summary>
    public LookResult? Seal { get; init; }

    /// <summary>Full up to the mouth, no wire above it.</summary>
    public LookResult? Fill { get; init; }

    /// <summary>The surface of the cured cone: hard, no void, no crack.</summary>
    public LookResult? Surface { get; init; }

    /// <summary>The end after its proof load.</summary>
    public LookResult? AfterLoad { get; init; }
}
