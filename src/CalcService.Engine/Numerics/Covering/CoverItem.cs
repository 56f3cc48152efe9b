namespace CalcService.Engine.Numerics.Covering;

/// <summary>Something that can be taken whole to cover a demand.</summary>
/// <param name="Size">What one of it covers, in whole units.</param>
/// <param name="Cost">What one of it costs, first order.</param>
/// <param name="Value">What one of it is worth, compared where costs are equal.</param>
/// <param name="Limit">How many there are; null for as many as one likes.</param>
public sealed record CoverItem(int Size, long Cost, long Value, int? Limit);

/// <summary>What the best cover is.</summary>
public enum CoverObjective
{
    /// <summary>Least cost, then value, excess, number.</summary>
    Cost,

    /// <summary>Least excess, then cost, value, number.</summary>
    Excess,

    /// <summary>Least number, then excess, cost, value.</summary>
    Number,
}
