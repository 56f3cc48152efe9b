using CalcService.Engine.Compounds;
using CalcService.Engine.Pouring.Preparation;
using CalcService.Engine.Ropes;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Pouring;

/// <summary>One kind of end with what it takes.</summary>
public sealed record PlannedEnd(
    string Id, int Quantity, RopeFacts Rope, BasketFill Fill, double IncludedAngleRad, IReadOnlyList<WireSpacing> Wires)
{
    /// <summary>Where it is seized and cut.</summary>
    public required EndPreparation Preparation { get; init; }

    /// <summary>Where resin, wires and socket meet before the reaction gives heat; null where a fact is missing.</summary>
    public double? EvenedTemperatureK { get; init; }
}

/// <summary>Doses with the place whose temperature decided.</summary>
public sealed record DosePlan(int PerKit, string Place, double TemperatureK);

/// <summary>When the compound gels in the vessel, in the cone, and how long it may be used.</summary>
public sealed record GelPlan(GelBand InVessel, GelBand InCone, double? PotLifeS);

/// <summary>Kits of one size and lot in a mix; the lot is null where they have to be bought.</summary>
public sealed record MixKit(string Kit, string? Lot, int Count);

/// <summary>Baskets of one kind of end that a mix fills.</summary>
public sealed record MixFill(string End, int Count);

/// <summary>Compound mixed at one time.</summary>
/// <param name="Number">1 for the first.</param>
/// <param name="Kits">Its kits.</param>
/// <param name="Fills">The baskets that it fills.</param>
/// <param name="NeededM3">What they take, with allowance and what stays in the vessel.</param>
/// <param name="MixedM3">What the kits give.</param>
/// <param name="StartsAt">When mixing starts; null where it isn't known how long the mixes before take.</param>
/// <param name="UsedInS">From then until the last basket is full.</param>
/// <param name="StopPouringAt">Nothing of it is poured after; null where the pot life isn't known or ends beyond the calendar.</param>
public sealed record Mix(
    int Number, IReadOnlyList<MixKit> Kits, IReadOnlyList<MixFill> Fills, double NeededM3, double MixedM3, DateTimeOffset? StartsAt,
    double? UsedInS,
    DateTimeOffset? StopPouringAt)
{
    /// <summary>What is written on the cup of its witness sample.</summary>
    public required string WitnessLabel { get; init; }
}

/// <summary>Kits of one size for the whole job.</summary>
public sealed record KitCount(string Kit, int FromStock, int ToBuy);

/// <summary>What the vapour reaches in the room, parts by volume.</summary>
public sealed record VapourResult(double Peak, double TimeWeighted);

/// <summary>A plan. Whatever could not be computed is null and has its finding.</summary>
public sealed record PourPlanResult
{
    public required IReadOnlyList<PlannedEnd> Ends { get; init; }

    public DosePlan? Dose { get; init; }

    public GelPlan? Gel { get; init; }

    /// <summary>The mixes, one after another; empty where no kits could be found.</summary>
    public required IReadOnlyList<Mix> Mixes { get; init; }

    /// <summary>Whether no better mixes exist, proven, and how far they may be from the best; null without mixes.</summary>
    public (bool IsOptimal, double Gap)? Optimality { get; init; }

    public required IReadOnlyList<KitCount> Kits { get; init; }

    public required double? NeededM3 { get; init; }

    /// <summary>Cost of the kits to buy; null without costs or kits.</summary>
    public decimal? Cost { get; init; }

    /// <summary>Worth of the kits taken from stock at the sheet's costs.</summary>
    public decimal? StockValue { get; init; }

    public double? DewPointK { get; init; }

    /// <summary>Set where the dew point lies below 0 °C: frost forms at this temperature.</summary>
    public double? FrostPointK { get; init; }

    public VapourResult? Vapour { get; init; }

    /// <summary>When the readings have to be taken again; null where there are none.</summary>
    public DateTimeOffset? ReadingsValidUntil { get; init; }

    /// <summary>Kept from each mix where it was stated.</summary>
    public double? WitnessSampleM3 { get; init; }

    /// <summary>The last cone has gelled by then; null where that isn't known.</summary>
    public DateTimeOffset? GelledAt { get; init; }

    /// <summary>The work from the rope as delivered to the set cone, in order.</summary>
    public IReadOnlyList<PlannedStep> Sequence { get; init; } = [];

    /// <summary>Where the work stands still until somebody has looked.</summary>
    public IReadOnlyList<HoldPoint> HoldPoints { get; init; } = [];

    /// <summary>What would change the decision; empty where something that no reading can change stops the pour.</summary>
    public required IReadOnlyList<Flip> Flips { get; init; }

    public required TakeOff.TakeOffResult TakeOff { get; init; }
}
