using CalcService.Engine.Provenance;

namespace CalcService.Engine.Cones;

/// <summary>The laws of a cone at one place, and the limits that a whole cone can be held against.</summary>
public static class ConeFormulas
{
    private const string Document = "/docs/termination-matches";

    /// <summary>
    /// k = 1/((1 − ν)/E_r + ((R² + 1)/(R² − 1) + ν_s)/E_s): pressure for each unit of radial squeeze, a plug in a thick tube (Lamé); in Pa.
    /// </summary>
    [Formula("cone-radial-stiffness", "plane plug in a thick-walled tube, Lamé", Document, Basis.Derived, Symbol = "k",
        Name = "pressure for a radial squeeze of 1",
        Expression = "1/((1 − ν)/E_r + ((R² + 1)/(R² − 1) + ν_s)/E_s)", Kind = QuantityKind.Stress, Range = "elastic, slender cone")]
    public static double RadialStiffnessPa(double radialModulusPa, double poisson, double wallRatio, double socketModulusPa,
        double socketPoisson, Trace trace) =>
        trace.Step("cone-radial-stiffness",
            1 / (((1 - poisson) / radialModulusPa) + ((LameFactor(wallRatio) + socketPoisson) / socketModulusPa)),
            new("ν", Measure.Count(poisson)), new("E_r", Measure.Stress(radialModulusPa)), new("R", Measure.Count(wallRatio)),
            new("ν_s", Measure.Count(socketPoisson)), new("E_s", Measure.Stress(socketModulusPa)));

    /// <summary>E_zA = E_w·A_w + E_m·(A − A_w), wires and compound side by side; in N.</summary>
    [Formula("cone-axial-stiffness", "wires and compound strained alike", Document, Basis.Derived, Symbol = "E_zA",
        Name = "axial stiffness of the cone",
        Expression = "E_w·A_w + E_m·(A − A_w)", Kind = QuantityKind.Force, Range = "wires held over their whole length")]
    public static double AxialStiffnessN(double wireModulusPa, double wireAreaM2, double compoundModulusPa, double areaM2, Trace trace) =>
        trace.Step("cone-axial-stiffness", (wireModulusPa * wireAreaM2) + (compoundModulusPa * (areaM2 - wireAreaM2)),
            new("E_w", Measure.Stress(wireModulusPa)), new("A_w", Measure.Area(wireAreaM2)), new("E_m", Measure.Stress(compoundModulusPa)),
            new("A", Measure.Area(areaM2)));

    /// <summary>ε_z = ε·E_m·(A − A_w)/E_zA: the wires hold the shrinkage back along the axis; 1.</summary>
    [Formula("cone-axial-shrinkage", "wires and compound strained alike", Document, Basis.Derived, Symbol = "ε_z",
        Name = "axial shrinkage of the cone",
        Expression = "ε·E_m·(A − A_w)/E_zA", Kind = QuantityKind.Fraction, Range = "wires held over their whole length")]
    public static double AxialShrinkage(double shrinkage, double compoundModulusPa, double areaM2, double wireAreaM2,
        double axialStiffnessN, Trace trace) =>
        trace.Step("cone-axial-shrinkage", shrinkage * compoundModulusPa * (areaM2 - wireAreaM2) / axialStiffnessN,
            new("ε", Measure.Fraction(shrinkage)), new("E_m", Measure.Stress(compoundModulusPa)), new("A", Measure.Area(areaM2)),
            new("A_w", Measure.Area(wireAreaM2)), new("E_zA", Measure.Force(axialStiffnessN)));

    /// <summary>
    /// p = k·(s·t/r − ε − ν·N/E_zA − ν_s·N/E_sA_s): how far the seating s (m) squeezes the cone of radius r (m) beyond its
    /// shrinkage and the thinning by the force N (N), E_sA_s being the socket's axial stiffness (N); 0 where it is no squeeze; in Pa.
    /// </summary>
    [Formula("cone-pressure", "gap between plug and tube closed by pressure", Document, Basis.Derived, Symbol = "p",
        Name = "pressure on the wall at the small end",
        Expression = "k·max(0, s·t/r − ε − ν·N/E_zA − ν_s·N/E_sA_s)", Kind = QuantityKind.Stress,
        Range = "elastic; s and N from the solution along the cone")]
    public static double PressurePa(double radialStiffnessPa, double seatM, double taper, double radiusM, double shrinkage, double poisson,
        double forceN, double axialStiffnessN, double socketPoisson, double socketStiffnessN, Trace trace) =>
        trace.Step("cone-pressure",
            radialStiffnessPa * Math.Max(0,
            (seatM * taper / radiusM) - shrinkage - (poisson * forceN / axialStiffnessN) - (socketPoisson * forceN / socketStiffnessN)),
            new("k", Measure.Stress(radialStiffnessPa)), new("s", Measure.Length(seatM)), new("t", Measure.Count(taper)),
            new("r", Measure.Length(radiusM)),
            new("ε", Measure.Fraction(shrinkage)), new("ν", Measure.Count(poisson)), new("N", Measure.Force(forceN)),
            new("E_zA", Measure.Force(axialStiffnessN)),
            new("ν_s", Measure.Count(socketPoisson)), new("E_sA_s", Measure.Force(socketStiffnessN)));

    /// <summary>σ_θ = p·(R² + 1)/(R² − 1), hoop stress at the bore of a tube under pressure p (Pa); in Pa.</summary>
    [Formula("cone-hoop-stress", "Lamé, thick-walled tube under inner pressure", "Timoshenko, Strength of Materials, part II",
        Basis.FromMemory,
        Symbol = "σ_θ", Name = "hoop stress at the bore", Expression = "p·(R² + 1)/(R² − 1)", Kind = QuantityKind.Stress,
        Range = "elastic; R above 1")]
    public static double HoopStressPa(double pressurePa, double wallRatio, Trace trace) =>
        trace.Step("cone-hoop-stress", pressurePa * LameFactor(wallRatio), new("p", Measure.Stress(pressurePa)),
        new("R", Measure.Count(wallRatio)));

    /// <summary>p_m = F·t/(π·(r_L² − r_0²)·(t + μ)), t = tan α: the pressure that carries F if it is the same all along; in Pa.</summary>
    [Formula("cone-mean-pressure", "balance of forces along the axis", Document, Basis.Derived, Symbol = "p_m",
        Name = "mean pressure on the wall",
        Expression = "F·t/(π·(r_L² − r_0²)·(t + μ))", Kind = QuantityKind.Stress, Range = "cone that slides while it seats")]
    public static double MeanPressurePa(double loadN, double taper, double friction, double smallRadiusM, double largeRadiusM,
        Trace trace) =>
        trace.Step("cone-mean-pressure",
        loadN * taper / (Math.PI * ((largeRadiusM * largeRadiusM) - (smallRadiusM * smallRadiusM)) * (taper + friction)),
            new("F", Measure.Force(loadN)), new("t", Measure.Count(taper)), new("μ", Measure.Count(friction)),
            new("r_0", Measure.Length(smallRadiusM)), new("r_L", Measure.Length(largeRadiusM)));

    /// <summary>
    /// s_r = ε·(r_0 + r_L)/(2·t) + F/(2π·t·(t + μ)·k·L): seating of a cone that bears all along and does not stretch; in m.
    /// </summary>
    [Formula("cone-rigid-seat", "pressure k·(s·t/r − ε) summed over the wall", Document, Basis.Derived, Symbol = "s_r",
        Name = "seating of a cone that does not stretch",
        Expression = "ε·(r_0 + r_L)/(2·t) + F/(2·π·t·(t + μ)·k·L)", Kind = QuantityKind.Length,
        Range = "contact all along; a first estimate")]
    public static double RigidSeatM(
        double loadN, double shrinkage, double taper, double friction, double smallRadiusM, double largeRadiusM, double lengthM,
        double radialStiffnessPa, Trace trace) =>
        trace.Step("cone-rigid-seat",
            (shrinkage * (smallRadiusM + largeRadiusM) / (2 * taper))
            + (loadN / (2 * Math.PI * taper * (taper + friction) * radialStiffnessPa * lengthM)),
            new("ε", Measure.Fraction(shrinkage)), new("r_0", Measure.Length(smallRadiusM)), new("r_L", Measure.Length(largeRadiusM)),
            new("t", Measure.Count(taper)),
            new("F", Measure.Force(loadN)), new("μ", Measure.Count(friction)), new("k", Measure.Stress(radialStiffnessPa)),
            new("L", Measure.Length(lengthM)));

    /// <summary>ε = ε_g + α·ΔT, with ε_g linear shrinkage after gel, α expansion (1/K), ΔT cooling from the peak (K); 1.</summary>
    [Formula("cone-shrinkage", "linear shrinkage after gel and cooling", Document, Basis.Derived, Symbol = "ε",
        Name = "linear shrinkage of the set cone",
        Expression = "ε_g + α·ΔT", Kind = QuantityKind.Fraction, Range = "small strains")]
    public static double Shrinkage(double afterGel, double expansionPerK, double coolingK, Trace trace) =>
        trace.Step("cone-shrinkage", afterGel + (expansionPerK * coolingK),
            new("ε_g", Measure.Fraction(afterGel)), Substitution.In("α", expansionPerK, "1/K"),
            new("ΔT", Measure.TemperatureDifference(coolingK)));

    /// <summary>(R² + 1)/(R² − 1) of a thick tube.</summary>
    internal static double LameFactor(double wallRatio) => ((wallRatio * wallRatio) + 1) / ((wallRatio * wallRatio) - 1);
}
