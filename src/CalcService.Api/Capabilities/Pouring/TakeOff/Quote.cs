using CalcService.Api.Contract;
using CalcService.Api.Units;
using CalcService.Engine.Provenance;

namespace CalcService.Api.Capabilities.Pouring.TakeOff;

/// <summary>What the take-off reckons with. Amounts of money are plain, in the currency given here or else the sheet's.</summary>
public sealed record Quote
{
    /// <summary>Currency of all amounts, such as EUR; the sheet's if absent. Where the sheet has costs it must be the sheet's.</summary>
    public string? Currency { get; init; }

    /// <summary>Day on which the prices held.</summary>
    public DateOnly? PriceDate { get; init; }

    /// <summary>Prices besides those of the kits, which stand on the sheet.</summary>
    public QuotePrices? Prices { get; init; }

    /// <summary>Money for an hour of work, for every task without a rate of its own.</summary>
    public decimal? HourlyRate { get; init; }

    /// <summary>Rates of single tasks.</summary>
    public TaskRates? TaskRates { get; init; }

    /// <summary>Times of single tasks.</summary>
    public TaskTimes? TaskTimes { get; init; }

    /// <summary>How the rope is seized.</summary>
    public QuoteSeizing? Seizing { get; init; }

    /// <summary>Putty or other seal for one end; a collar half a rope diameter thick and one high if absent.</summary>
    [Kind(QuantityKind.Volume, 0, 10, "L")]
    public Quantity? SealPerEnd { get; init; }

    /// <summary>Cleaner for one end, fresh for each; twice the volume of the basket if absent.</summary>
    [Kind(QuantityKind.Volume, 0, 100, "L")]
    public Quantity? CleanerPerEnd { get; init; }

    /// <summary>Kits to have over; none if absent.</summary>
    public SpareKits? SpareKits { get; init; }

    /// <summary>From the order until what has to be bought is there.</summary>
    [Kind(QuantityKind.Days, 0, 730, "d")]
    public Quantity? LeadTime { get; init; }
}

/// <summary>How the rope is seized, for the wire that it takes.</summary>
public sealed record QuoteSeizing
{
    /// <summary>Diameter of the seizing wire; a twelfth of the rope's if absent.</summary>
    [Kind(QuantityKind.Length, .1, 20, "mm")]
    public Quantity? WireDiameter { get; init; }

    /// <summary>Seizings of one end; by the rule set if absent.</summary>
    [Within(0, 100)]
    public int? Count { get; init; }
}

/// <summary>
/// Kits to have over, of each size that the plan takes: exactly one of count and share. They come from the shelf as far as it reaches.
/// </summary>
public sealed record SpareKits
{
    /// <summary>So many of each size.</summary>
    [Within(0, 100000)]
    public int? Count { get; init; }

    /// <summary>So large a share of each size, rounded up to whole kits.</summary>
    [Kind(QuantityKind.Fraction, 0, 100, "%")]
    public Quantity? Share { get; init; }
}

/// <summary>Prices of what is used besides the kits.</summary>
public sealed record QuotePrices
{
    /// <summary>For one dose of accelerator.</summary>
    public decimal? Dose { get; init; }

    /// <summary>Of seizing wire.</summary>
    public LengthPrice? SeizingWire { get; init; }

    /// <summary>Of putty or other seal.</summary>
    public VolumePrice? Seal { get; init; }

    /// <summary>Of cleaner.</summary>
    public VolumePrice? Cleaner { get; init; }
}

/// <summary>A price by length.</summary>
public sealed record LengthPrice
{
    /// <summary>The money.</summary>
    public required decimal Amount { get; init; }

    /// <summary>For how much of it.</summary>
    [Kind(QuantityKind.Length, .01, 100000, "m")]
    public required Quantity Per { get; init; }
}

/// <summary>A price by volume.</summary>
public sealed record VolumePrice
{
    /// <summary>The money.</summary>
    public required decimal Amount { get; init; }

    /// <summary>For how much of it.</summary>
    [Kind(QuantityKind.Volume, .001, 10000, "L")]
    public required Quantity Per { get; init; }
}
