using CalcService.Engine.Provenance;

namespace CalcService.Engine.Cones.Heat;

/// <summary>A section of the cone, wires and compound taken as one material.</summary>
public static class ConeMixture
{
    private const string Page = "/docs/cone-heat";

    /// <summary>φ = A/(π·r²), the share of a section of radius r (m) that the wires of area A (m²) fill.</summary>
    [Formula("wire-fraction", "metallic area over the section of the bore", Page, Basis.Derived, Symbol = "φ",
        Name = "share of the section that is wire",
        Expression = "A/(π·r²)", Kind = QuantityKind.Fraction, Range = "wires spread evenly over the section")]
    public static double WireFraction(double metallicAreaM2, double radiusM, Trace trace) =>
        trace.Step("wire-fraction", metallicAreaM2 / (Math.PI * radiusM * radiusM), new("A", Measure.Area(metallicAreaM2)),
        new("r", Measure.Length(radiusM)));

    /// <summary>ρ = φ·ρ_s + (1 − φ)·ρ_m; in kg/m³.</summary>
    [Formula("cone-density", "masses add", Page, Basis.Derived, Symbol = "ρ", Name = "density of wires and compound",
        Expression = "φ·ρ_s + (1 − φ)·ρ_m", Kind = QuantityKind.Density, Range = "φ from 0 to 1")]
    public static double DensityKgPerM3(double fraction, ConeMaterials materials, Trace trace) =>
        trace.Step("cone-density", (fraction * materials.SteelDensityKgPerM3) + ((1 - fraction) * materials.CompoundDensityKgPerM3),
            new("φ", Measure.Fraction(fraction)), Density("ρ_s", materials.SteelDensityKgPerM3),
            Density("ρ_m", materials.CompoundDensityKgPerM3));

    /// <summary>c = (φ·ρ_s·c_s + (1 − φ)·ρ_m·c_m)/ρ; in J/(kg·K).</summary>
    [Formula("cone-specific-heat", "heat capacities add", Page, Basis.Derived, Symbol = "c", Name = "specific heat of wires and compound",
        Expression = "(φ·ρ_s·c_s + (1 − φ)·ρ_m·c_m)/ρ", Kind = QuantityKind.SpecificHeat,
            Range = "wire and compound at one temperature in each place")]
    public static double SpecificHeatJPerKgK(double fraction, double densityKgPerM3, ConeMaterials materials, Trace trace)
    {
        var steel = fraction * materials.SteelDensityKgPerM3 * materials.SteelSpecificHeatJPerKgK;
        var compound = (1 - fraction) * materials.CompoundDensityKgPerM3 * materials.CompoundSpecificHeatJPerKgK;
        return trace.Step("cone-specific-heat", (steel + compound) / densityKgPerM3,
            new("φ", Measure.Fraction(fraction)), Density("ρ_s", materials.SteelDensityKgPerM3),
            Density("ρ_m", materials.CompoundDensityKgPerM3),
            new("c_s", new(materials.SteelSpecificHeatJPerKgK, QuantityKind.SpecificHeat)),
            new("c_m", new(materials.CompoundSpecificHeatJPerKgK, QuantityKind.SpecificHeat)), Density("ρ", densityKgPerM3));
    }

    /// <summary>k_z = φ·k_s + (1 − φ)·k_m, wires and compound side by side; in W/(m·K).</summary>
    [Formula("cone-axial-conductivity", "paths side by side", Page, Basis.Derived, Symbol = "k_z", Name = "conductivity along the wires",
        Expression = "φ·k_s + (1 − φ)·k_m", Kind = QuantityKind.ThermalConductivity, Range = "wires that run through")]
    public static double AxialConductivityWPerMK(double fraction, double steel, double compound, Trace trace) =>
        trace.Step("cone-axial-conductivity", (fraction * steel) + ((1 - fraction) * compound),
            new("φ", Measure.Fraction(fraction)), Conductivity("k_s", steel), Conductivity("k_m", compound));

    /// <summary>
    /// k_r = k_m·(k_s·(1 + φ) + k_m·(1 − φ))/(k_s·(1 − φ) + k_m·(1 + φ)), across round wires that don't touch; in W/(m·K).
    /// </summary>
    [Formula("cone-radial-conductivity", "Lord Rayleigh, Philosophical Magazine 34 (1892)", "circular cylinders, leading term",
        Basis.FromMemory, Symbol = "k_r",
        Name = "conductivity across the wires", Expression = "k_m·(k_s·(1 + φ) + k_m·(1 − φ))/(k_s·(1 − φ) + k_m·(1 + φ))",
        Kind = QuantityKind.ThermalConductivity, Range = "φ to about 0.5; wires that touch conduct better")]
    public static double RadialConductivityWPerMK(double fraction, double steel, double compound, Trace trace) =>
        trace.Step("cone-radial-conductivity",
            compound * ((steel * (1 + fraction)) + (compound * (1 - fraction))) / ((steel * (1 - fraction)) + (compound * (1 + fraction))),
            new("φ", Measure.Fraction(fraction)), Conductivity("k_s", steel), Conductivity("k_m", compound));

    /// <summary>q = (1 − φ)·w·ρ_m·H/ρ, heat of a full cure for each kg of wires and compound; in J/kg.</summary>
    [Formula("cone-reaction-heat", "only the resin between the wires reacts", Page, Basis.Derived, Symbol = "q",
        Name = "heat of cure of wires and compound",
        Expression = "(1 − φ)·w·ρ_m·H/ρ", Kind = QuantityKind.SpecificEnergy, Range = "φ from 0 to 1")]
    public static double ReactionHeatJPerKg(double fraction, double densityKgPerM3, ConeMaterials materials, Trace trace) =>
        trace.Step("cone-reaction-heat",
            (1 - fraction) * materials.ResinFraction * materials.CompoundDensityKgPerM3 * materials.ReactionHeatJPerKg / densityKgPerM3,
            new("φ", Measure.Fraction(fraction)), new("w", Measure.Fraction(materials.ResinFraction)),
            Density("ρ_m", materials.CompoundDensityKgPerM3),
            new("H", new(materials.ReactionHeatJPerKg, QuantityKind.SpecificEnergy)), Density("ρ", densityKgPerM3));

    /// <summary>T₀ = (φ·ρ_s·c_s·T_s + (1 − φ)·ρ_m·c_m·T_m)/(ρ·c), where wires and compound meet; in K.</summary>
    [Formula("cone-start-temperature", "heat is kept when wires and compound meet", Page, Basis.Derived, Symbol = "T_0",
        Name = "temperature right after the pour",
        Expression = "(φ·ρ_s·c_s·T_s + (1 − φ)·ρ_m·c_m·T_m)/(φ·ρ_s·c_s + (1 − φ)·ρ_m·c_m)", Kind = QuantityKind.Temperature,
        Range = "thin wires: they take the compound's temperature in seconds")]
    public static double StartK(double fraction, double steelK, double compoundK, ConeMaterials materials, Trace trace)
    {
        var steel = fraction * materials.SteelDensityKgPerM3 * materials.SteelSpecificHeatJPerKgK;
        var compound = (1 - fraction) * materials.CompoundDensityKgPerM3 * materials.CompoundSpecificHeatJPerKgK;
        return trace.Step("cone-start-temperature", ((steel * steelK) + (compound * compoundK)) / (steel + compound),
            new("φ", Measure.Fraction(fraction)), Density("ρ_s", materials.SteelDensityKgPerM3),
            Density("ρ_m", materials.CompoundDensityKgPerM3),
            new("c_s", new(materials.SteelSpecificHeatJPerKgK, QuantityKind.SpecificHeat)),
            new("c_m", new(materials.CompoundSpecificHeatJPerKgK, QuantityKind.SpecificHeat)),
            new("T_s", Measure.Kelvins(steelK)), new("T_m", Measure.Kelvins(compoundK)));
    }

    private static Substitution Density(string symbol, double kgPerM3) => new(symbol, new(kgPerM3, QuantityKind.Density));

    private static Substitution Conductivity(string symbol, double wPerMK) => new(symbol, new(wPerMK, QuantityKind.ThermalConductivity));
}
