using CalcService.Engine.Compounds;
using CalcService.Engine.Cones;
using CalcService.Engine.Findings;
using CalcService.Engine.Releases;
using CalcService.Engine.Ropes;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Audits;

/// <summary>The record of one end to audit. Null and unknown mean that the record doesn't say.</summary>
public sealed record AuditInput
{
    public required DateOnly AuditedOn { get; init; }

    /// <summary>What the answer is for.</summary>
    public Purpose Purpose { get; init; }

    public required CompoundSheet Compound { get; init; }

    /// <summary>Number of the record.</summary>
    public string? Number { get; init; }

    /// <summary>Mark of the end.</summary>
    public string? End { get; init; }

    public Rope? Rope { get; init; }

    /// <summary>Number of the rope's certificate.</summary>
    public string? RopeCertificate { get; init; }

    public RecordedSocket Socket { get; init; } = new();

    public RecordedReadings Readings { get; init; } = new();

    public RecordedMix Mix { get; init; } = new();

    public RecordedTimes Times { get; init; } = new();

    public GelPlace GelSeenIn { get; init; }

    /// <summary>The model of the schedule that the work followed.</summary>
    public ThermalModel ThermalModel { get; init; } = ThermalModel.Uniform;

    public HardnessReading Hardness { get; init; } = new();

    public RecordedProof Proof { get; init; } = new();

    public IReadOnlyList<RecordedPerson> People { get; init; } = [];

    public RecordedLooks Looks { get; init; } = new();

    /// <summary>
    /// Whether a proof load is asked for, or was put on all the same: what the record tells of one is judged, asked for or not.
    /// </summary>
    public bool IsTested => Proof.IsAsked != false || Times.ProofAt is not null || Proof.TellsOfATest || Looks.AfterLoad == LookResult.Fail;
}

/// <summary>The socket as its papers have it.</summary>
public sealed record RecordedSocket
{
    public string? Id { get; init; }

    public string? Certificate { get; init; }

    public Basket? Basket { get; init; }

    /// <summary>Where its sizes come from.</summary>
    public SizesFrom SizesFrom { get; init; }

    public double? OuterAtSmallEndM { get; init; }

    public double? OuterAtMouthM { get; init; }

    /// <summary>What it is made of; null where the record doesn't say.</summary>
    public SocketMetal? Metal { get; init; }

    public double? BreakingForceN { get; init; }

    public double? ProofRatingN { get; init; }
}

/// <summary>What was read on the day.</summary>
public sealed record RecordedReadings
{
    /// <summary>The air, where one temperature is all there is.</summary>
    public double? ConstantAirK { get; init; }

    /// <summary>The air over time.</summary>
    public IReadOnlyList<AirPoint> AirSeries { get; init; } = [];

    public double? SteelK { get; init; }

    /// <summary>The steel as it was read after the mixing; rising times.</summary>
    public IReadOnlyList<AirPoint> SteelSeries { get; init; } = [];

    public double? CompoundK { get; init; }

    public double? RelativeHumidity { get; init; }

    /// <summary>Whether something near the pour could have lit the vapour.</summary>
    public Fact? IgnitionSource { get; init; }
}

/// <summary>What was mixed.</summary>
public sealed record RecordedMix
{
    /// <summary>Kits of the mix by lot; null where the record has none.</summary>
    public IReadOnlyList<StockLot>? Kits { get; init; }

    public int? DosesPerKit { get; init; }

    /// <summary>When the dose went in; null where the record doesn't say.</summary>
    public DoseMoment? DoseAdded { get; init; }

    /// <summary>Baskets like this one that the mix filled, this one among them.</summary>
    public int? Baskets { get; init; }

    /// <summary>Compound that went into this basket.</summary>
    public double? VolumeM3 { get; init; }
}

/// <summary>When things happened.</summary>
public sealed record RecordedTimes
{
    public DateTimeOffset? PreparedAt { get; init; }

    /// <summary>When air, steel and compound were read.</summary>
    public DateTimeOffset? ReadAt { get; init; }

    /// <summary>When resin and hardener met.</summary>
    public DateTimeOffset? MixedAt { get; init; }

    /// <summary>When the basket was full.</summary>
    public DateTimeOffset? PouredAt { get; init; }

    public DateTimeOffset? GelAt { get; init; }

    /// <summary>The last look at which it had not gelled.</summary>
    public DateTimeOffset? StillSoftAt { get; init; }

    /// <summary>When the end was first moved.</summary>
    public DateTimeOffset? MovedAt { get; init; }

    /// <summary>When it was released for loading.</summary>
    public DateTimeOffset? ReleasedAt { get; init; }

    public DateTimeOffset? ProofAt { get; init; }

    /// <summary>When it went to service; null where it hasn't.</summary>
    public DateTimeOffset? InServiceAt { get; init; }
}

/// <summary>The proof load.</summary>
public sealed record RecordedProof
{
    /// <summary>Whether this end has to be proof loaded.</summary>
    public bool? IsAsked { get; init; }

    /// <summary>What it had to be loaded to.</summary>
    public double? AskedN { get; init; }

    /// <summary>The rated load that it is for.</summary>
    public double? RatedN { get; init; }

    public double? LoadN { get; init; }

    public double? SeatingM { get; init; }

    public SeatingPlace SeatingReadAt { get; init; }

    public bool? ReadUnderLoad { get; init; }

    public bool? WireSlip { get; init; }

    public bool? Creep { get; init; }

    public bool? Cracks { get; init; }

    /// <summary>Whether the cone seated on one side.</summary>
    public bool? Asymmetry { get; init; }

    /// <summary>Whether something is recorded that only a test can show.</summary>
    public bool TellsOfATest => LoadN is not null || SeatingM is not null || WireSlip == true || Creep == true || Cracks == true
        || Asymmetry == true;
}

/// <summary>Somebody who worked on the end.</summary>
public sealed record RecordedPerson(WorkRole Role, string? Name, DateOnly? QualifiedUntil);

/// <summary>What the looks at the work came to.</summary>
public sealed record RecordedLooks
{
    public LookResult Bore { get; init; }

    public LookResult Broom { get; init; }

    public LookResult Core { get; init; }

    public LookResult Alignment { get; init; }

    public LookResult Seal { get; init; }

    public LookResult Fill { get; init; }

    public LookResult Surface { get; init; }

    public LookResult AfterLoad { get; init; }
}
