namespace CalcService.Engine.Numerics.Conduction;

/// <summary>What a ring is made of.</summary>
/// <param name="HeatCapacityJPerM3K">ρ·c.</param>
/// <param name="RadialWPerMK">Conductivity across the axis.</param>
/// <param name="AxialWPerMK">Conductivity along the axis.</param>
/// <param name="ReactionHeatJPerM3">Heat set free when the reaction has gone all the way; null where nothing reacts.</param>
public readonly record struct RingMaterial(double HeatCapacityJPerM3K, double RadialWPerMK, double AxialWPerMK,
    double? ReactionHeatJPerM3 = null);
