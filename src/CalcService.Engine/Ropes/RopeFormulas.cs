using CalcService.Engine.Provenance;

namespace CalcService.Engine.Ropes;

/// <summary>The factor formulas of EN 12385 for breaking force, metallic area and mass, and the mean wire.</summary>
public static class RopeFormulas
{
    private const string Document = "EN 12385, as tabulated in K. Feyrer, Wire Ropes";

    /// <summary>F_min = d²·R_r·K with d nominal diameter (m), R_r rope grade (Pa), K breaking force factor (1); in N.</summary>
    [Formula("rope-breaking-force", Document, "Table 1.9", Basis.Published, Symbol = "F_min", Name = "minimum breaking force",
        Expression = "d²·R_r·K", Kind = QuantityKind.Force,
            Range = "classes of the table; metric grades; not compacted, spiral or locked coil ropes")]
    public static double BreakingForceN(double diameterM, double gradePa, double factor, Trace trace) =>
        trace.Step("rope-breaking-force", diameterM * diameterM * gradePa * factor,
            new("d", Measure.Length(diameterM)), new("R_r", Measure.Stress(gradePa)), new("K", Measure.Count(factor)));

    /// <summary>A = C·d² with C metallic area factor (1), d nominal diameter (m); in m².</summary>
    [Formula("rope-metallic-area", Document, "Table 1.9", Basis.Published, Symbol = "A", Name = "metallic area",
        Expression = "C·d²", Kind = QuantityKind.Area, Range = "classes of the table")]
    public static double MetallicAreaM2(double diameterM, double factor, Trace trace) =>
        trace.Step("rope-metallic-area", factor * diameterM * diameterM,
            new("C", Measure.Count(factor)), new("d", Measure.Length(diameterM)));

    /// <summary>m = W·d² with W mass factor (kg/(100 m·mm²), that is 10⁴ kg/m³), d nominal diameter (m); in kg/m.</summary>
    [Formula("rope-mass", Document, "Table 1.9", Basis.Published, Symbol = "m", Name = "mass per length",
        Expression = "W·d²", Kind = QuantityKind.LinearDensity, Range = "classes of the table; lubricated rope")]
    public static double MassKgPerM(double diameterM, double factor, Trace trace) =>
        trace.Step("rope-mass", factor * 1e4 * diameterM * diameterM,
            new("W", new Measure(factor * 1e4, QuantityKind.Density)), new("d", Measure.Length(diameterM)));

    /// <summary>δ = √(4A/(π·n)), the wire whose n copies make up the metallic area A (m²); in m.</summary>
    [Formula("mean-wire-diameter", "area of n equal circles", "", Basis.Derived, Symbol = "δ", Name = "mean wire diameter",
        Expression = "√(4·A/(π·n))", Kind = QuantityKind.Length, Range = "wires of about one size; a coarse outer wire is thicker")]
    public static double MeanWireDiameterM(double metallicAreaM2, int wires, Trace trace) =>
        trace.Step("mean-wire-diameter", Math.Sqrt(4 * metallicAreaM2 / (Math.PI * wires)),
            new("A", Measure.Area(metallicAreaM2)), new("n", Measure.Count(wires)));
}
