namespace CalcService.Engine.Ropes;

/// <summary>Steel of wires and sockets: common handbook values, from memory.</summary>
public static class Steel
{
    /// <summary>Density, kg/m³.</summary>
    public const double DensityKgPerM3 = 7850;

    /// <summary>Specific heat, J/(kg·K).</summary>
    public const double SpecificHeatJPerKgK = 460;
}
