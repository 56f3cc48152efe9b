using System.Collections.Frozen;

namespace CalcService.Engine.Pouring.TakeOff;

/// <summary>Money for an amount of something.</summary>
/// <param name="Amount">The money.</param>
/// <param name="PerSi">For how much, in the SI unit of what is bought.</param>
public sealed record Price(decimal Amount, double PerSi);

/// <summary>Kits to have over, of each size that the plan takes: one of a number and a share.</summary>
public sealed record SpareKits(int? Count, double? Share);

/// <summary>
/// What the caller says for a quote. What is null is assumed where it is an amount or a time, and missing where it is money.
/// </summary>
public sealed record Quote
{
    public string? Currency { get; init; }

    public DateOnly? PriceDate { get; init; }

    /// <summary>From the order until what has to be bought is there.</summary>
    public double? LeadTimeS { get; init; }

    public SpareKits? SpareKits { get; init; }

    public decimal? DosePrice { get; init; }

    public Price? SeizingWirePrice { get; init; }

    public Price? SealPrice { get; init; }

    public Price? CleanerPrice { get; init; }

    public double? SeizingWireDiameterM { get; init; }

    /// <summary>Seizings of one end.</summary>
    public int? SeizingCount { get; init; }

    public double? SealPerEndM3 { get; init; }

    public double? CleanerPerEndM3 { get; init; }

    /// <summary>Money for an hour of work at a task without a rate of its own.</summary>
    public decimal? HourlyRate { get; init; }

    /// <summary>Money for an hour, by <see cref="LabourTask.Name"/>.</summary>
    public IReadOnlyDictionary<string, decimal> TaskRates { get; init; } = FrozenDictionary<string, decimal>.Empty;

    /// <summary>Time for one end or for the job, by <see cref="LabourTask.Name"/>.</summary>
    public IReadOnlyDictionary<string, double> TaskTimesS { get; init; } = FrozenDictionary<string, double>.Empty;
}
