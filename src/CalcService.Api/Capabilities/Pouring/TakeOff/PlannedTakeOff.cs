using CalcService.Api.Contract;
using CalcService.Api.Units;
using CalcService.Engine.Provenance;

namespace CalcService.Api.Capabilities.Pouring.TakeOff;

/// <summary>What the job takes besides ropes and sockets, to quote from. Money is null where a price is missing, never 0.</summary>
public sealed record PlannedTakeOff
{
    /// <summary>Currency of all amounts; null where nobody says.</summary>
    public required string? Currency { get; init; }

    /// <summary>Day on which the prices held, as sent.</summary>
    public required DateOnly? PriceDate { get; init; }

    /// <summary>Kits of the sizes that the plan takes; empty where there is no plan.</summary>
    public required IReadOnlyList<TakeOffKits> Kits { get; init; }

    /// <summary>Doses of accelerator; null where the dose or the kits aren't known.</summary>
    public required TakeOffDoses? Doses { get; init; }

    /// <summary>Seizing wire, seal and cleaner.</summary>
    public required IReadOnlyList<TakeOffMaterial> Materials { get; init; }

    /// <summary>Work, in the order in which it is done.</summary>
    public required IReadOnlyList<TakeOffLabour> Labour { get; init; }

    /// <summary>Compound that is mixed and not poured; null where there is no plan.</summary>
    public required TakeOffWaste? Waste { get; init; }

    /// <summary>From the order until everything is there, as sent; null where nothing has to be bought.</summary>
    [Kind(QuantityKind.Days)]
    public required Quantity? LeadTime { get; init; }

    /// <summary>How the kits are declared for transport, as the sheet words it.</summary>
    public required string? DangerousGoods { get; init; }

    /// <summary>Sums.</summary>
    public required TakeOffTotals Totals { get; init; }

    /// <summary>Pointers to what the sums lack: prices, rates, times or facts to send.</summary>
    public required IReadOnlyList<string> Missing { get; init; }
}

/// <summary>Kits of one size to take along.</summary>
public sealed record TakeOffKits
{
    /// <summary>Code of the kit.</summary>
    public required string Kit { get; init; }

    /// <summary>Part number on the sheet.</summary>
    public required string? PartNumber { get; init; }

    /// <summary>Mixed by the plan.</summary>
    public required long Needed { get; init; }

    /// <summary>To have over.</summary>
    public required long Spare { get; init; }

    /// <summary>Of needed and spare, from the shelf.</summary>
    public required long FromStock { get; init; }

    /// <summary>Of needed and spare, to buy.</summary>
    public required long ToBuy { get; init; }

    /// <summary>Cost of one on the sheet.</summary>
    public required decimal? Price { get; init; }

    /// <summary>Cost of those to buy.</summary>
    public required decimal? Cost { get; init; }
}

/// <summary>Doses of accelerator for all kits, spare ones too.</summary>
public sealed record TakeOffDoses
{
    /// <summary>Doses for each kit.</summary>
    public required int PerKit { get; init; }

    /// <summary>For all kits.</summary>
    public required long Needed { get; init; }

    /// <summary>Of these, from the shelf.</summary>
    public required long FromStock { get; init; }

    /// <summary>Of these, to buy.</summary>
    public required long ToBuy { get; init; }

    /// <summary>Price of one.</summary>
    public required decimal? Price { get; init; }

    /// <summary>Cost of those to buy.</summary>
    public required decimal? Cost { get; init; }
}

/// <summary>Something used up besides the compound.</summary>
public sealed record TakeOffMaterial
{
    /// <summary>seizingWire, seal or cleaner.</summary>
    public required string Material { get; init; }

    /// <summary>For all ends: a length of wire, else a volume.</summary>
    public required Quantity Amount { get; init; }

    /// <summary>request where the amount for one end, or the wire's diameter, was sent, else estimate.</summary>
    public required string From { get; init; }

    /// <summary>Its price.</summary>
    public required TakeOffPrice? Price { get; init; }

    /// <summary>Its cost.</summary>
    public required decimal? Cost { get; init; }
}

/// <summary>Money for an amount.</summary>
public sealed record TakeOffPrice
{
    /// <summary>The money.</summary>
    public required decimal Amount { get; init; }

    /// <summary>For how much.</summary>
    public required Quantity Per { get; init; }
}

/// <summary>Work at one task.</summary>
public sealed record TakeOffLabour
{
    /// <summary>The task, named as in the request's taskTimes.</summary>
    public required string Task { get; init; }

    /// <summary>end or job.</summary>
    public required string Per { get; init; }

    /// <summary>How often it is done.</summary>
    public required long Times { get; init; }

    /// <summary>Time of one person for once; null where it isn't known.</summary>
    [Kind(QuantityKind.Duration)]
    public required Quantity? Each { get; init; }

    /// <summary>Time of one person in all.</summary>
    [Kind(QuantityKind.Duration)]
    public required Quantity? Minutes { get; init; }

    /// <summary>Where the time comes from: request, plan or default.</summary>
    public required string From { get; init; }

    /// <summary>Money for an hour.</summary>
    public required decimal? Rate { get; init; }

    /// <summary>Cost of the time.</summary>
    public required decimal? Cost { get; init; }
}

/// <summary>Compound that is mixed and not poured.</summary>
public sealed record TakeOffWaste
{
    /// <summary>What the baskets take, with allowance and what stays in the vessels.</summary>
    [Kind(QuantityKind.Volume)]
    public required Quantity Needed { get; init; }

    /// <summary>What the kits give.</summary>
    [Kind(QuantityKind.Volume)]
    public required Quantity Mixed { get; init; }

    /// <summary>What is left over.</summary>
    [Kind(QuantityKind.Volume)]
    public required Quantity Leftover { get; init; }

    /// <summary>Its share of what is mixed.</summary>
    [Kind(QuantityKind.Fraction)]
    public required Quantity Share { get; init; }
}

/// <summary>Sums of a take-off.</summary>
public sealed record TakeOffTotals
{
    /// <summary>What has to be bought: kits, doses, seizing wire, seal and cleaner.</summary>
    public required decimal? Materials { get; init; }

    /// <summary>All work.</summary>
    public required decimal? Labour { get; init; }

    /// <summary>Both.</summary>
    public required decimal? Total { get; init; }
}
