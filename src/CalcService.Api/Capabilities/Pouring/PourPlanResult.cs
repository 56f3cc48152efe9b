using CalcService.Api.Contract;
using CalcService.Api.Units;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Api.Capabilities.Pouring;

/// <summary>A pour plan.</summary>
public sealed record PourPlanResult
{
    /// <summary>Volumes and fit of each kind of end.</summary>
    public required IReadOnlyList<PlannedEnd> Ends { get; init; }

    /// <summary>Accelerator.</summary>
    public required PlannedDose? Dose { get; init; }

    /// <summary>The place and temperature that the dose went by.</summary>
    public required DoseBasis? DoseBasis { get; init; }

    /// <summary>Gel time of the compound in its vessel, from mixing.</summary>
    public required GelTimeBand? GelInVessel { get; init; }

    /// <summary>Gel time in the cone, from mixing: earliest as warm as the vessel, latest as cold as the coldest reading.</summary>
    public required GelTimeBand? GelInCone { get; init; }

    /// <summary>How long the mixed compound may be poured, from mixing.</summary>
    [Kind(QuantityKind.Duration)]
    public required Quantity? PotLife { get; init; }

    /// <summary>What is mixed together.</summary>
    public required IReadOnlyList<PlannedMix> Mixes { get; init; }

    /// <summary>Kits for the whole job, by size.</summary>
    public required IReadOnlyList<PlannedKits> Kits { get; init; }

    /// <summary>Sums over the job.</summary>
    public required PlanTotals Totals { get; init; }

    /// <summary>How good the set of kits is; null where none was found.</summary>
    public required Optimality? Optimality { get; init; }

    /// <summary>Temperature at which water settles on the steel.</summary>
    [Kind(QuantityKind.Temperature)]
    public required Quantity? DewPoint { get; init; }

    /// <summary>Temperature at which frost settles on the steel, where the dew point lies below freezing.</summary>
    [Kind(QuantityKind.Temperature)]
    public required Quantity? FrostPoint { get; init; }

    /// <summary>Vapour in the air of the room.</summary>
    public required Vapour? Vapour { get; init; }

    /// <summary>What the job takes, to quote from.</summary>
    public required TakeOff.PlannedTakeOff TakeOff { get; init; }

    /// <summary>When the readings have to be taken again; null without readings.</summary>
    public required DateTimeOffset? ReadingsValidUntil { get; init; }

    /// <summary>By then the last cone has gelled; null where that isn't known.</summary>
    public required DateTimeOffset? GelledAt { get; init; }

    /// <summary>The work from the rope as delivered to the set cone, in order.</summary>
    public required IReadOnlyList<SequenceStep> Sequence { get; init; }

    /// <summary>Where the work stands still until somebody has looked.</summary>
    public required IReadOnlyList<WorkHoldPoint> HoldPoints { get; init; }

    /// <summary>
    /// Which reading would change the decision, at which value, the others and the mixes as they are. Empty where something that no
    /// reading can change stops the pour.
    /// </summary>
    public required IReadOnlyList<FlipsWhen> FlipsWhen { get; init; }
}

/// <summary>A reading that would change the decision.</summary>
public sealed record FlipsWhen
{
    /// <summary>airTemperature, steelTemperature, compoundTemperature or relativeHumidity.</summary>
    public required string Reading { get; init; }

    /// <summary>above or below the value.</summary>
    public required string When { get; init; }

    /// <summary>The value, a temperature or a relative humidity.</summary>
    public required Quantity Value { get; init; }

    /// <summary>The decision beyond it.</summary>
    public required Decision To { get; init; }
}

/// <summary>One kind of end.</summary>
public sealed record PlannedEnd
{
    /// <summary>Your name for these ends.</summary>
    public required string Id { get; init; }

    /// <summary>How many.</summary>
    public required int Quantity { get; init; }

    /// <summary>The numbers of the rope.</summary>
    public required RopeNumbers Rope { get; init; }

    /// <summary>Gross volume of one basket.</summary>
    [Kind(QuantityKind.Volume)]
    public required Quantity BasketVolume { get; init; }

    /// <summary>Steel of the broom in it.</summary>
    [Kind(QuantityKind.Volume)]
    public required Quantity? SteelVolume { get; init; }

    /// <summary>Resin for one basket, before allowance.</summary>
    public required VolumeBand ResinVolume { get; init; }

    /// <summary>Where it is seized and cut.</summary>
    public required EndNumbers Preparation { get; init; }

    /// <summary>
    /// Where resin, wires and socket meet before the reaction gives heat; null where masses, readings or the sheet's heat are missing.
    /// </summary>
    [Kind(QuantityKind.Temperature)]
    public required Quantity? EvenedTemperature { get; init; }

    /// <summary>Included angle of the cone.</summary>
    [Kind(QuantityKind.Angle)]
    public required Quantity IncludedAngle { get; init; }

    /// <summary>Space around the wires at the small end, one third and the mouth.</summary>
    public required IReadOnlyList<WireSpace> WireSpacing { get; init; }
}

/// <summary>A volume with its band over the measuring tolerance.</summary>
public sealed record VolumeBand
{
    /// <summary>Least.</summary>
    [Kind(QuantityKind.Volume)]
    public required Quantity? Low { get; init; }

    /// <summary>At the sizes as given.</summary>
    [Kind(QuantityKind.Volume)]
    public required Quantity? Nominal { get; init; }

    /// <summary>Most; kits are planned on it. Null, as each of these, where the steel leaves no room.</summary>
    [Kind(QuantityKind.Volume)]
    public required Quantity? High { get; init; }
}

/// <summary>Accelerator.</summary>
public sealed record PlannedDose
{
    /// <summary>Doses for each kit.</summary>
    public required int PerKit { get; init; }

    /// <summary>Doses for all kits of the plan; null without kits.</summary>
    public required int? Total { get; init; }
}

/// <summary>What the dose went by.</summary>
public sealed record DoseBasis
{
    /// <summary>air or steel, whichever is colder.</summary>
    public required string Place { get; init; }

    /// <summary>Its temperature.</summary>
    [Kind(QuantityKind.Temperature)]
    public required Quantity Temperature { get; init; }
}

/// <summary>A gel time with its band.</summary>
public sealed record GelTimeBand
{
    /// <summary>Not before.</summary>
    [Kind(QuantityKind.Duration)]
    public required Quantity Earliest { get; init; }

    /// <summary>Expected.</summary>
    [Kind(QuantityKind.Duration)]
    public required Quantity Expected { get; init; }

    /// <summary>Gelled by then.</summary>
    [Kind(QuantityKind.Duration)]
    public required Quantity Latest { get; init; }
}

/// <summary>Compound mixed together.</summary>
public sealed record PlannedMix
{
    /// <summary>1 for the first mix.</summary>
    public required int Number { get; init; }

    /// <summary>Its kits, first expiry first.</summary>
    public required IReadOnlyList<MixKit> Kits { get; init; }

    /// <summary>The baskets that it fills.</summary>
    public required IReadOnlyList<MixFill> Fills { get; init; }

    /// <summary>What its baskets take, with allowance and what stays in the vessel.</summary>
    [Kind(QuantityKind.Volume)]
    public required Quantity Needed { get; init; }

    /// <summary>What its kits give.</summary>
    [Kind(QuantityKind.Volume)]
    public required Quantity Mixed { get; init; }

    /// <summary>What is left over.</summary>
    [Kind(QuantityKind.Volume)]
    public required Quantity Leftover { get; init; }

    /// <summary>When mixing starts, one mix after another; null where it isn't known how long the mixes before take.</summary>
    public required DateTimeOffset? StartsAt { get; init; }

    /// <summary>From the start of mixing until the last basket is full.</summary>
    [Kind(QuantityKind.Duration)]
    public required Quantity? UsedIn { get; init; }

    /// <summary>The end of the pot life: nothing of this mix is poured after.</summary>
    public required DateTimeOffset? StopPouringAt { get; init; }

    /// <summary>A cup kept of this mix, to see whether and when it sets.</summary>
    public required WitnessSample WitnessSample { get; init; }
}

/// <summary>Kits of one size and lot in a mix.</summary>
public sealed record MixKit
{
    /// <summary>Code of the kit.</summary>
    public required string Kit { get; init; }

    /// <summary>Lot on the shelf; null for kits to buy.</summary>
    public required string? Lot { get; init; }

    /// <summary>How many.</summary>
    public required int Count { get; init; }
}

/// <summary>Baskets filled from a mix.</summary>
public sealed record MixFill
{
    /// <summary>Your name for the ends.</summary>
    public required string End { get; init; }

    /// <summary>How many of them.</summary>
    public required int Count { get; init; }
}

/// <summary>Kits of one size for the job.</summary>
public sealed record PlannedKits
{
    /// <summary>Code of the kit.</summary>
    public required string Kit { get; init; }

    /// <summary>Taken from the shelf.</summary>
    public required int FromStock { get; init; }

    /// <summary>To buy.</summary>
    public required int ToBuy { get; init; }
}

/// <summary>Sums over the job.</summary>
public sealed record PlanTotals
{
    /// <summary>What the baskets take, with allowance and what stays in the vessel; null where a basket has no room for resin.</summary>
    [Kind(QuantityKind.Volume)]
    public required Quantity? Needed { get; init; }

    /// <summary>What the kits give; null where none were found.</summary>
    [Kind(QuantityKind.Volume)]
    public required Quantity? Mixed { get; init; }

    /// <summary>What is left over.</summary>
    [Kind(QuantityKind.Volume)]
    public required Quantity? Leftover { get; init; }

    /// <summary>Cost of the kits to buy, in the sheet's currency; null without costs.</summary>
    public required decimal? Cost { get; init; }

    /// <summary>Worth of the kits from stock at the sheet's costs; null without costs.</summary>
    public required decimal? StockValue { get; init; }

    /// <summary>Currency of both.</summary>
    public required string? Currency { get; init; }
}

/// <summary>Vapour in the air of a room.</summary>
public sealed record Vapour
{
    /// <summary>Highest mean of the room's air.</summary>
    [Kind(QuantityKind.AirFraction)]
    public required Quantity Peak { get; init; }

    /// <summary>Mean over eight hours from mixing.</summary>
    [Kind(QuantityKind.AirFraction)]
    public required Quantity TimeWeighted { get; init; }
}
