using CalcService.Api.Contract;
using CalcService.Api.Units;
using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Releases;

namespace CalcService.Api.Capabilities.Curing;

/// <summary>A cure to schedule.</summary>
public sealed record CureScheduleRequest : ICalculationRequest
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

    /// <summary>
    /// Doses of accelerator in each kit; if absent, the sheet's at the colder of air and steel. A dose that the sheet's bands contradict is
    /// a stop.
    /// </summary>
    [Within(0, 100)]
    public int? Doses { get; init; }

    /// <summary>When resin and hardener were or will be mixed. The times of the answer have its offset.</summary>
    public required DateTimeOffset MixedAt { get; init; }

    /// <summary>pour (if absent): it is being done or was. plan: it lies ahead. quote: nobody has to have measured.</summary>
    public Purpose? Purpose { get; init; }

    /// <summary>
    /// coupled (if absent): heat and cure in cone, wires and socket together. uniform: the compound follows the air, as a table on the wall
    /// has it.
    /// </summary>
    public ThermalModel? ThermalModel { get; init; }

    /// <summary>The temperatures.</summary>
    public required CureConditions Conditions { get; init; }

    /// <summary>The rope ends that were poured.</summary>
    [Items(1, ItemsAttribute.Usual)]
    public required IReadOnlyList<CureEnd> Ends { get; init; }

    /// <summary>Gels that somebody saw: they re-fit the times that are left.</summary>
    public IReadOnlyList<GelObservation>? Observations { get; init; }

    /// <summary>From mixing until the last basket is full.</summary>
    [Kind(QuantityKind.Duration, 1, 28800, "s")]
    public Quantity? PourTime { get; init; }

    /// <summary>
    /// The shop whose tasks are to be scheduled. mixedAt is then the earliest mix, and the schedule sets the others; each end is mixed by
    /// itself.
    /// </summary>
    public Shop? Shop { get; init; }
}

/// <summary>Who and what the ends go through.</summary>
public sealed record Shop
{
    /// <summary>People; one if absent. Every task but undisturbed and cure takes one.</summary>
    [Within(1, 100)]
    public int? Crew { get; init; }

    /// <summary>Stands that hold an end from positioning until it may be moved; one if absent.</summary>
    [Within(1, 1000)]
    public int? Stands { get; init; }

    /// <summary>Mixing stations; one if absent.</summary>
    [Within(1, 100)]
    public int? Mixers { get; init; }

    /// <summary>Test beds; one if absent.</summary>
    [Within(1, 100)]
    public int? TestBeds { get; init; }

    /// <summary>
    /// When people are there, in rising order. A task is finished in the shift that began it; gel and cure go on through the night.
    /// </summary>
    [Items(1, ShopValidator.MostShifts)]
    public required IReadOnlyList<Shift> Shifts { get; init; }

    /// <summary>How long the tasks of one end take.</summary>
    public required ShopTaskTimes TaskTimes { get; init; }
}

/// <summary>People are there.</summary>
public sealed record Shift
{
    /// <summary>From.</summary>
    public required DateTimeOffset From { get; init; }

    /// <summary>Until.</summary>
    public required DateTimeOffset To { get; init; }
}

/// <summary>How long the tasks of one end take.</summary>
public sealed record ShopTaskTimes
{
    /// <summary>Cut, broom, clean and dry.</summary>
    [Kind(QuantityKind.Duration, 0, 1440, "min")]
    public required Quantity Prepare { get; init; }

    /// <summary>Position in the stand and seal.</summary>
    [Kind(QuantityKind.Duration, 0, 1440, "min")]
    public required Quantity Position { get; init; }

    /// <summary>Proof load on a test bed.</summary>
    [Kind(QuantityKind.Duration, 0, 1440, "min")]
    public required Quantity Proof { get; init; }

    /// <summary>Write the record.</summary>
    [Kind(QuantityKind.Duration, 0, 1440, "min")]
    public required Quantity Record { get; init; }
}

/// <summary>The temperatures that a cure goes by. A reading that is missing is never taken from another.</summary>
public sealed record CureConditions
{
    /// <summary>The air around the work.</summary>
    public required CureAir Air { get; init; }

    /// <summary>Temperature of socket and wires at mixing, measured on the steel.</summary>
    [Kind(QuantityKind.Temperature, -60, 150, "degC")]
    public Quantity? SteelTemperature { get; init; }

    /// <summary>The steel as it was read after that, rising times; straight between two readings, the last one held.</summary>
    [Items(CureAirValidator.MostPoints)]
    public IReadOnlyList<SteelReading>? SteelSeries { get; init; }

    /// <summary>Temperature of the compound before it is mixed.</summary>
    [Kind(QuantityKind.Temperature, -30, 100, "degC")]
    public Quantity? CompoundTemperature { get; init; }
}

/// <summary>Equal rope ends in equal sockets.</summary>
public sealed record CureEnd
{
    /// <summary>Your name for these ends, different for each entry.</summary>
    [Id]
    public required string Id { get; init; }

    /// <summary>How many.</summary>
    [Within(1, CureScheduleValidator.MostBaskets)]
    public required int Quantity { get; init; }

    /// <summary>The rope.</summary>
    public required Rope Rope { get; init; }

    /// <summary>The socket. The coupled model needs its outside diameter.</summary>
    public required Socket Socket { get; init; }
}

/// <summary>A gel that somebody saw.</summary>
public sealed record GelObservation
{
    /// <summary>Id of the end.</summary>
    [Id]
    public required string End { get; init; }

    /// <summary>When it had gelled.</summary>
    public required DateTimeOffset GelAt { get; init; }

    /// <summary>The last look at which it was still soft. Without it a late gel may only have been seen late.</summary>
    public DateTimeOffset? StillSoftAt { get; init; }

    /// <summary>
    /// Where it was seen. A cup or the vessel warms itself and re-fits no cone; if unknown, the times can only become later.
    /// </summary>
    public GelPlace? SeenIn { get; init; }
}
