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
}

/// <summary>A fact that may not be known.</summary>
public enum Fact
{
    /// <summary>Nobody said.</summary>
    Unknown,

    /// <summary>It is not so.</summary>
    No,

    /// <summary>It is so.</summary>
    Yes,
}
