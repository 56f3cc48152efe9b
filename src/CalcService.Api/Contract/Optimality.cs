using CalcService.Api.Units;
using CalcService.Engine.Provenance;

namespace CalcService.Api.Contract;

/// <summary>How good an optimised plan is.</summary>
public sealed record Optimality
{
    /// <summary>optimal or feasible.</summary>
    public required string Status { get; init; }

    /// <summary>How far it may be from the best.</summary>
    [Kind(QuantityKind.Fraction)]
    public required Quantity Gap { get; init; }
}
