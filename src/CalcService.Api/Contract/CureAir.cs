using CalcService.Api.Units;
using CalcService.Engine.Provenance;

namespace CalcService.Api.Contract;

/// <summary>The air's temperature: exactly one of constant and series.</summary>
public sealed record CureAir
{
    /// <summary>It stays as it is.</summary>
    [Kind(QuantityKind.Temperature, -60, 60, "degC")]
    public Quantity? Constant { get; init; }

    /// <summary>
    /// Measured or forecast, in rising order of time at any intervals and offsets; straight in between. It has to reach from mixing until
    /// full strength.
    /// </summary>
    [Items(CureAirValidator.MostPoints)]
    public IReadOnlyList<AirPoint>? Series { get; init; }
}

/// <summary>The air's temperature at a time.</summary>
public sealed record AirPoint
{
    /// <summary>The time.</summary>
    public required DateTimeOffset At { get; init; }

    /// <summary>The temperature.</summary>
    [Kind(QuantityKind.Temperature, -60, 60, "degC")]
    public required Quantity Temperature { get; init; }
}
