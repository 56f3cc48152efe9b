using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Pouring;

/// <summary>A room by its volume (m³) and its air changes (1/s).</summary>
public sealed record Room(double VolumeM3, double AirChangesPerS);

/// <summary>Where the pour is.</summary>
public enum PourPlace
{
    /// <summary>Somebody was asked and doesn't know.</summary>
    Unknown,

    /// <summary>In a room.</summary>
    Indoors,

    /// <summary>In the open.</summary>
    Outdoors,

    /// <summary>In a confined space.</summary>
    Confined,
}

/// <summary>The readings of the day. Null where nobody read it; nothing is taken from another reading.</summary>
public sealed record PourConditions
{
    public double? AirK { get; init; }

    public double? SteelK { get; init; }

    public double? CompoundK { get; init; }

    /// <summary>Relative humidity, 0 to 1.</summary>
    public double? RelativeHumidity { get; init; }

    /// <summary>How far a temperature reading may be off, either way.</summary>
    public double? UncertaintyK { get; init; }

    /// <summary>Whether something near the work can light the vapour; null where nobody said.</summary>
    public Fact? IgnitionSource { get; init; }

    /// <summary>Null where nobody said.</summary>
    public PourPlace? Place { get; init; }

    /// <summary>The kind of workplace, by which laws set limits for the air.</summary>
    public Workplace Workplace { get; init; }

    /// <summary>Code of the jurisdiction whose limits for the air hold; null where nobody said.</summary>
    public string? Jurisdiction { get; init; }

    public Room? Room { get; init; }

    /// <summary>Air speed over the open compound.</summary>
    public double? AirSpeedMPerS { get; init; }

    /// <summary>How many times less the air is exchanged near the work than in the room as a whole.</summary>
    public double? MixingFactor { get; init; }

    /// <summary>When the readings were taken.</summary>
    public DateTimeOffset? ReadAt { get; init; }

    /// <summary>How long a reading holds before it is taken again.</summary>
    public double? ValidForS { get; init; }

    /// <summary>Limits of the employer or the site for the vapour, on top of the law's.</summary>
    public OwnAirLimits? AirLimits { get; init; }
}

/// <summary>Limits for the vapour that the request brings along, parts by volume.</summary>
public sealed record OwnAirLimits(double? ShortTerm, double? TimeWeighted, string? From);

/// <summary>The dose that the crew means to give.</summary>
public sealed record IntendedDose(int? PerKit, DoseMoment? Added);

/// <summary>What the best set of kits is.</summary>
public enum PourObjective
{
    /// <summary>Least money for the kits to buy, then least value from the shelf.</summary>
    LeastCost,

    /// <summary>Least compound left over.</summary>
    LeastWaste,

    /// <summary>Fewest kits to open.</summary>
    FewestKits,
}

/// <summary>A pour to plan.</summary>
public sealed record PourPlanInput
{
    /// <summary>Reference of the job. Lots that are kept for it are its own.</summary>
    public string? Reference { get; init; }

    /// <summary>What the plan is for; it decides which facts have to be stated.</summary>
    public Purpose Purpose { get; init; }

    public required DateTimeOffset PourAt { get; init; }

    public required CompoundSheet Compound { get; init; }

    public required PourConditions Conditions { get; init; }

    public required IReadOnlyList<PourEnd> Ends { get; init; }

    /// <summary>Null for a quote, which draws on no shelf.</summary>
    public IReadOnlyList<StockLot>? Stock { get; init; }

    public int? Mixers { get; init; }

    /// <summary>Time to fill one basket, where the end gives no time of its own.</summary>
    public double? PourTimeS { get; init; }

    public double? Allowance { get; init; }

    /// <summary>Compound that stays in the mixing vessel, for each mix.</summary>
    public double? VesselResidueM3 { get; init; }

    /// <summary>Compound kept from each mix as its witness sample, where it is stated.</summary>
    public double? WitnessSampleM3 { get; init; }

    public PourObjective? Objective { get; init; }

    /// <summary>What the crew means to give; the sheet decides whether that is right.</summary>
    public IntendedDose? IntendedDose { get; init; }

    /// <summary>Null where nobody asks for money: amounts and times are listed all the same.</summary>
    public TakeOff.Quote? Quote { get; init; }
}
