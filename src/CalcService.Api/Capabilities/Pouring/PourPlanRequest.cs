using CalcService.Api.Contract;
using CalcService.Api.Units;
using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Pouring;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;

namespace CalcService.Api.Capabilities.Pouring;

/// <summary>A pour to plan.</summary>
public sealed record PourPlanRequest : ICalculationRequest
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

    /// <summary>
    /// What the plan is for. pour (if absent): it is done now, and every fact behind a stop has to be stated. plan: it lies ahead, and what
    /// the work itself makes is a hold point. quote: no fact and no reading is asked for.
    /// </summary>
    public Purpose? Purpose { get; init; }

    /// <summary>When mixing starts. Expiry dates are judged at its offset.</summary>
    public required DateTimeOffset PourAt { get; init; }

    /// <summary>The compound.</summary>
    public required Compound Compound { get; init; }

    /// <summary>The readings of the day. A reading that is missing is never taken from another. A quote needs none.</summary>
    public PourConditions? Conditions { get; init; }

    /// <summary>The rope ends to socket.</summary>
    [Items(1, ItemsAttribute.Usual)]
    public required IReadOnlyList<PourEnd> Ends { get; init; }

    /// <summary>Kits on the shelf. Absent for a quote.</summary>
    public IReadOnlyList<Contract.StockLot>? Stock { get; init; }

    /// <summary>Who pours.</summary>
    public Crew? Crew { get; init; }

    /// <summary>Allowance on the resin; 10 % if absent.</summary>
    [Kind(QuantityKind.Fraction, 0, 200, "%")]
    public Quantity? Allowance { get; init; }

    /// <summary>Compound that stays in the mixing vessel, for each mix; none if absent.</summary>
    [Kind(QuantityKind.Volume, 0, 10, "L")]
    public Quantity? VesselResidue { get; init; }

    /// <summary>
    /// Compound kept from each mix as its witness sample; comes on top of what the baskets take. Taken from what is left over if absent.
    /// </summary>
    [Kind(QuantityKind.Volume, 0, 2, "L")]
    public Quantity? WitnessSample { get; init; }

    /// <summary>The dose that the crew means to give. The plan computes its own; this is held against it.</summary>
    public IntendedDose? Dose { get; init; }

    /// <summary>
    /// What the best set of kits is: leastCost, leastWaste or fewestKits. If absent, leastCost where all kits have costs, else leastWaste.
    /// </summary>
    public PourObjective? Objective { get; init; }

    /// <summary>
    /// Prices, rates and amounts for the take-off. Without it the take-off lists materials and times, without money besides the kits'.
    /// </summary>
    public TakeOff.Quote? Quote { get; init; }
}

/// <summary>The readings of the day.</summary>
public sealed record PourConditions
{
    /// <summary>Temperature of the air where the pour is.</summary>
    [Kind(QuantityKind.Temperature, -45, 60, "degC")]
    public Quantity? AirTemperature { get; init; }

    /// <summary>Temperature of socket and wires, measured on the steel.</summary>
    [Kind(QuantityKind.Temperature, -60, 150, "degC")]
    public Quantity? SteelTemperature { get; init; }

    /// <summary>Temperature of the compound before it is mixed.</summary>
    [Kind(QuantityKind.Temperature, -30, 100, "degC")]
    public Quantity? CompoundTemperature { get; init; }

    /// <summary>Relative humidity of the air.</summary>
    [Kind(QuantityKind.Fraction, 1, 100, "%")]
    public Quantity? RelativeHumidity { get; init; }

    /// <summary>How far each temperature reading may be off, either way.</summary>
    [Kind(QuantityKind.TemperatureDifference, 0, 20, "K")]
    public Quantity? Uncertainty { get; init; }

    /// <summary>Whether a flame, spark, hot surface or running engine is near the work.</summary>
    public Fact? IgnitionSource { get; init; }

    /// <summary>
    /// The kind of workplace, by which laws set limits for the air. Where nobody says, those of general industry hold, with a caution where
    /// a stricter one is passed.
    /// </summary>
    public Workplace? Workplace { get; init; }

    /// <summary>
    /// Code of the jurisdiction whose limits for the air hold: US or US-CA; US if absent, with a caution where a stricter one is passed.
    /// </summary>
    [Id]
    public string? Jurisdiction { get; init; }

    /// <summary>Where the pour is. Outdoors no vapour is computed; elsewhere the room is needed.</summary>
    public PourPlace? Place { get; init; }

    /// <summary>The room, for the vapour in its air.</summary>
    public Room? Room { get; init; }

    /// <summary>Air speed over the open compound; a default of the rules if absent.</summary>
    [Kind(QuantityKind.Speed, 0, 20, "m/s")]
    public Quantity? AirSpeed { get; init; }

    /// <summary>
    /// How many times less the air is exchanged near the work than in the room as a whole; a default of the rules if absent.
    /// </summary>
    [Kind(QuantityKind.Count, 1, 100, "1")]
    public Quantity? MixingFactor { get; init; }

    /// <summary>When the readings were taken; at the pour if absent.</summary>
    public DateTimeOffset? ReadAt { get; init; }

    /// <summary>How long a reading holds before it is taken again; a default of the rules if absent.</summary>
    [Kind(QuantityKind.Duration, 1, 1440, "min")]
    public Quantity? ValidFor { get; init; }

    /// <summary>Limits of your own for the vapour, stricter than the law's.</summary>
    public AirLimits? AirLimits { get; init; }
}

/// <summary>Limits of the employer or the site for the vapour.</summary>
public sealed record AirLimits
{
    /// <summary>Never to be exceeded.</summary>
    [Kind(QuantityKind.AirFraction, .001, 10000, "ppm")]
    public Quantity? ShortTerm { get; init; }

    /// <summary>Mean over eight hours.</summary>
    [Kind(QuantityKind.AirFraction, .001, 10000, "ppm")]
    public Quantity? TimeWeighted { get; init; }

    /// <summary>Where they come from.</summary>
    public string? Source { get; init; }
}

/// <summary>A dose that the crew means to give.</summary>
public sealed record IntendedDose
{
    /// <summary>Doses for each kit.</summary>
    [Within(0, 100)]
    public int? PerKit { get; init; }

    /// <summary>When it goes in.</summary>
    public DoseMoment? Added { get; init; }
}

/// <summary>A room and its ventilation.</summary>
public sealed record Room
{
    /// <summary>Volume of air.</summary>
    [Kind(QuantityKind.Volume, .5, 1000000, "m3")]
    public required Quantity Volume { get; init; }

    /// <summary>Air changes.</summary>
    [Kind(QuantityKind.Rate, 0, 1000, "1/h")]
    public required Quantity AirChanges { get; init; }
}

/// <summary>Equal rope ends in equal sockets.</summary>
public sealed record PourEnd
{
    /// <summary>Your name for these ends, different for each entry.</summary>
    [Id]
    public required string Id { get; init; }

    /// <summary>How many.</summary>
    [Within(1, PourPlanValidator.MostBaskets)]
    public required int Quantity { get; init; }

    /// <summary>The rope.</summary>
    public required Contract.Rope Rope { get; init; }

    /// <summary>The socket.</summary>
    public required Socket Socket { get; init; }

    /// <summary>Time to fill one of these baskets, where it differs from the crew's.</summary>
    [Kind(QuantityKind.Duration, 1, 28800, "s")]
    public Quantity? PourTime { get; init; }

    /// <summary>How much of the serving stands inside the basket. It takes that much of the grip.</summary>
    [Kind(QuantityKind.Length, 0, 3000, "mm")]
    public Quantity? ServingInBasket { get; init; }

    /// <summary>Diameter over the serving.</summary>
    [Kind(QuantityKind.Length, 1, 400, "mm")]
    public Quantity? ServingDiameter { get; init; }

    /// <summary>How far the ends of the wires stay below the mouth.</summary>
    [Kind(QuantityKind.Length, 0, 300, "mm")]
    public Quantity? WireEndsBelowMouth { get; init; }

    /// <summary>Lean of rope and basket against the plumb line.</summary>
    [Kind(QuantityKind.Angle, 0, 30, "deg")]
    public Quantity? Tilt { get; init; }

    /// <summary>Rope that hangs straight below the socket.</summary>
    [Kind(QuantityKind.Length, 0, 1000, "m")]
    public Quantity? StraightBelow { get; init; }

    /// <summary>Included angle to which the broom is opened for cleaning.</summary>
    [Kind(QuantityKind.Angle, 0, 180, "deg")]
    public Quantity? BroomAngle { get; init; }

    /// <summary>What became of the fibre core in the broom.</summary>
    public BroomPart? FibreCore { get; init; }

    /// <summary>What became of plastic in the broom.</summary>
    public BroomPart? Plastic { get; init; }

    /// <summary>What the broom was cleaned with.</summary>
    public Cleaner? Cleaner { get; init; }

    /// <summary>Whether the basket is coated with a release agent.</summary>
    public Fact? ReleaseAgent { get; init; }

    /// <summary>When the cleaned broom is dry.</summary>
    public DateTimeOffset? DriedAt { get; init; }
}

/// <summary>Who pours.</summary>
public sealed record Crew
{
    /// <summary>People or machines that mix side by side; one if absent.</summary>
    [Within(1, 100)]
    public int? Mixers { get; init; }

    /// <summary>Time to fill one basket.</summary>
    [Kind(QuantityKind.Duration, 1, 28800, "s")]
    public Quantity? PourTime { get; init; }
}
