using CalcService.Engine.Provenance;

namespace CalcService.Engine.Pouring.TakeOff;

/// <summary>Kits of one size.</summary>
/// <param name="Kit">Code of the kit.</param>
/// <param name="PartNumber">As the sheet gives it.</param>
/// <param name="Needed">Mixed by the plan.</param>
/// <param name="Spare">To have over.</param>
/// <param name="FromStock">Of both, from the shelf.</param>
/// <param name="ToBuy">Of both, to buy.</param>
/// <param name="Price">For one.</param>
/// <param name="Cost">What has to be bought; null without a price.</param>
public sealed record KitLine(string Kit, string? PartNumber, long Needed, long Spare, long FromStock, long ToBuy, decimal? Price,
    decimal? Cost);

/// <summary>Doses for all kits, spare ones too.</summary>
public sealed record DoseLine(int PerKit, long Needed, long FromStock, long ToBuy, decimal? Price, decimal? Cost);

/// <summary>Something used up besides the compound.</summary>
/// <param name="Material">seizingWire, seal or cleaner.</param>
/// <param name="Amount">For the whole job.</param>
/// <param name="From">request or estimate.</param>
/// <param name="Price">Its price, for the same kind of amount.</param>
/// <param name="Cost">Null without a price.</param>
public sealed record MaterialLine(string Material, Measure Amount, string From, Price? Price, decimal? Cost);

/// <summary>Work at one task.</summary>
/// <param name="Task">Name of the task.</param>
/// <param name="Per">end or job.</param>
/// <param name="Times">How often it is done.</param>
/// <param name="EachS">Time for once; null where it isn't known.</param>
/// <param name="TotalS">Time in all.</param>
/// <param name="From">request, default, or plan; where the time comes from.</param>
/// <param name="Rate">Money for an hour.</param>
/// <param name="Cost">Null without a time or rate.</param>
public sealed record LabourLine(string Task, string Per, long Times, double? EachS, double? TotalS, string From, decimal? Rate,
    decimal? Cost);

/// <summary>Compound that is mixed and not poured.</summary>
public sealed record Waste(double NeededM3, double MixedM3)
{
    public double LeftoverM3 => MixedM3 - NeededM3;

    /// <summary>Share of what is mixed.</summary>
    public double Share => LeftoverM3 / MixedM3;
}

/// <summary>What a job takes, besides the sockets and the rope: to quote from.</summary>
public sealed record TakeOffResult
{
    public string? Currency { get; init; }

    public DateOnly? PriceDate { get; init; }

    /// <summary>Sizes that the plan takes, in the order of the sheet; empty where there is no plan.</summary>
    public required IReadOnlyList<KitLine> Kits { get; init; }

    /// <summary>Null where dose or kits aren't known.</summary>
    public DoseLine? Doses { get; init; }

    public required IReadOnlyList<MaterialLine> Materials { get; init; }

    public required IReadOnlyList<LabourLine> Labour { get; init; }

    /// <summary>Null where there is no plan.</summary>
    public Waste? Waste { get; init; }

    /// <summary>Null where nobody said or nothing has to be bought.</summary>
    public double? LeadTimeS { get; init; }

    public string? DangerousGoods { get; init; }

    /// <summary>Kits, doses and materials; null where a part of it is.</summary>
    public decimal? MaterialsCost { get; init; }

    /// <summary>Null where a part of it is.</summary>
    public decimal? LabourCost { get; init; }

    public decimal? TotalCost => MaterialsCost + LabourCost;

    /// <summary>Members of the request that the totals lack, each once.</summary>
    public required IReadOnlyList<string> Missing { get; init; }
}
