namespace CalcService.Engine.Releases;

/// <summary>What the cone's temperature is computed from.</summary>
public enum ThermalModel
{
    /// <summary>Heat and cure in cone, wires and socket together.</summary>
    Coupled,

    /// <summary>The compound follows the air, as a table on the wall has it.</summary>
    Uniform,
}
