using CalcService.Api.Units;

namespace CalcService.Api.Contract;

/// <summary>What every request of a calculation may say.</summary>
public interface ICalculationRequest
{
    /// <summary>Your own reference for this request.</summary>
    string? Reference { get; }

    /// <summary>The edition of the rules.</summary>
    string? Rules { get; }

    /// <summary>The units of the answer.</summary>
    UnitSystem? Units { get; }

    /// <summary>The compound; null where the calculation needs none.</summary>
    Compound? Compound => null;
}
