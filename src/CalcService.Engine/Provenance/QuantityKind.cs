namespace CalcService.Engine.Provenance;

/// <summary>What a number measures. The engine holds each kind in the SI unit given here.</summary>
public enum QuantityKind
{
    /// <summary>m.</summary>
    Length,

    /// <summary>m².</summary>
    Area,

    /// <summary>m³.</summary>
    Volume,

    /// <summary>kg/m.</summary>
    LinearDensity,

    /// <summary>kg/m³.</summary>
    Density,

    /// <summary>N.</summary>
    Force,

    /// <summary>Pa.</summary>
    Stress,

    /// <summary>K, a point on the temperature scale.</summary>
    Temperature,

    /// <summary>K, a difference of temperatures.</summary>
    TemperatureDifference,

    /// <summary>s, up to a few days.</summary>
    Duration,

    /// <summary>s, told in days.</summary>
    Days,

    /// <summary>Calendar months: shelf lives and intervals, which have no fixed number of seconds.</summary>
    CalendarMonths,

    /// <summary>1, a ratio.</summary>
    Fraction,

    /// <summary>1, a count.</summary>
    Count,

    /// <summary>1, parts of vapour per part of air by volume.</summary>
    AirFraction,

    /// <summary>kg/m³ of vapour in air.</summary>
    MassConcentration,

    /// <summary>rad.</summary>
    Angle,

    /// <summary>W/(m·K).</summary>
    ThermalConductivity,

    /// <summary>W/(m²·K).</summary>
    HeatTransferCoefficient,

    /// <summary>J/(kg·K).</summary>
    SpecificHeat,

    /// <summary>J/kg.</summary>
    SpecificEnergy,

    /// <summary>J/mol.</summary>
    MolarEnergy,

    /// <summary>1/s.</summary>
    Rate,

    /// <summary>kg/s.</summary>
    MassFlow,

    /// <summary>m/s.</summary>
    Speed,

    /// <summary>kg.</summary>
    Mass,

    /// <summary>1/K, thermal expansion.</summary>
    Expansion,
}
