using CalcService.Engine.Provenance;

namespace CalcService.Engine.Reuse;

/// <summary>Nominal stresses of two ears and their pin, from the force F on the whole socket.</summary>
public static class StrengthFormulas
{
    private const string Textbook = "Shigley, Mechanical Engineering Design: bolted and pinned joints in shear";
    private const string PinnedPlates = "ASME BTH-1, pinned connections";

    /// <summary>σ_b = F/(2·d·t), pin of diameter d (m) on two ears of thickness t (m); in Pa.</summary>
    [Formula("ear-bearing", Textbook, "bearing", Basis.FromMemory, Symbol = "σ_b", Name = "bearing of the pin on the ears",
        Expression = "F/(2·d·t)", Kind = QuantityKind.Stress, Range = "both ears loaded alike, projected area")]
    public static double BearingPa(double loadN, double pinM, double thicknessM, Trace trace) =>
        trace.Step("ear-bearing", loadN / (2 * pinM * thicknessM),
            new("F", Measure.Force(loadN)), new("d", Measure.Length(pinM)), new("t", Measure.Length(thicknessM)));

    /// <summary>σ_n = F/(2·t·(w − D)), ears of width w (m) with a hole D (m); in Pa.</summary>
    [Formula("ear-net-section", Textbook, "tension of the net section", Basis.FromMemory, Symbol = "σ_n",
        Name = "tension of the ears beside the hole",
        Expression = "F/(2·t·(w − D))", Kind = QuantityKind.Stress, Range = "mean stress; both ears loaded alike")]
    public static double NetSectionPa(double loadN, double thicknessM, double widthM, double holeM, Trace trace) =>
        trace.Step("ear-net-section", loadN / (2 * thicknessM * (widthM - holeM)),
            new("F", Measure.Force(loadN)), new("t", Measure.Length(thicknessM)), new("w", Measure.Length(widthM)),
            new("D", Measure.Length(holeM)));

    /// <summary>τ_e = F/(4·t·(e − D/2)): two planes in each ear from the hole to its end, e from the hole's centre (m); in Pa.</summary>
    [Formula("ear-shear-out", Textbook, "edge shearing on two planes", Basis.FromMemory, Symbol = "τ_e",
        Name = "shear of the ears behind the hole, two planes",
        Expression = "F/(4·t·(e − D/2))", Kind = QuantityKind.Stress, Range = "shortest planes; both ears loaded alike")]
    public static double ShearOutPa(double loadN, double thicknessM, double endDistanceM, double holeM, Trace trace) =>
        trace.Step("ear-shear-out", loadN / (4 * thicknessM * (endDistanceM - (holeM / 2))),
            new("F", Measure.Force(loadN)), new("t", Measure.Length(thicknessM)), new("e", Measure.Length(endDistanceM)),
            new("D", Measure.Length(holeM)));

    /// <summary>
    /// σ_s = F/(2·t·(1.13·(e − D/2) + 0.92·b/(1 + b/D))), b = (w − D)/2: the block behind the hole split along the load; in Pa.
    /// </summary>
    [Formula("ear-block", PinnedPlates, "single plane fracture beyond the hole", Basis.FromMemory, Symbol = "σ_s",
        Name = "splitting of the block behind the hole",
        Expression = "F/(2·t·(1.13·(e − D/2) + 0.92·b/(1 + b/D)))", Kind = QuantityKind.Stress,
        Range = "pinned plates; both ears loaded alike")]
    public static double BlockPa(double loadN, double thicknessM, double endDistanceM, double holeM, double besideM, Trace trace) =>
        trace.Step("ear-block",
        loadN / (2 * thicknessM * ((1.13 * (endDistanceM - (holeM / 2))) + (.92 * besideM / (1 + (besideM / holeM))))),
            new("F", Measure.Force(loadN)), new("t", Measure.Length(thicknessM)), new("e", Measure.Length(endDistanceM)),
            new("D", Measure.Length(holeM)), new("b", Measure.Length(besideM)));

    /// <summary>τ_p = 2·F/(π·d²): two sections of the pin; in Pa.</summary>
    [Formula("pin-shear", Textbook, "shear of the pin, two sections", Basis.FromMemory, Symbol = "τ_p", Name = "shear of the pin",
        Expression = "2·F/(π·d²)", Kind = QuantityKind.Stress, Range = "mean stress of a solid round pin")]
    public static double PinShearPa(double loadN, double pinM, Trace trace) =>
        trace.Step("pin-shear", 2 * loadN / (Math.PI * pinM * pinM), new("F", Measure.Force(loadN)), new("d", Measure.Length(pinM)));

    /// <summary>σ_p = 16·F·(t/2 + g/4)/(π·d³): load spread over the gap g (m) and over both ears t (m); in Pa.</summary>
    [Formula("pin-bending", Textbook, "bending of the pin as a beam", Basis.FromMemory, Symbol = "σ_p", Name = "bending of the pin",
        Expression = "16·F·(t/2 + g/4)/(π·d³)", Kind = QuantityKind.Stress,
            Range = "solid round pin, load spread evenly over the gap and each ear")]
    public static double PinBendingPa(double loadN, double thicknessM, double gapM, double pinM, Trace trace) =>
        trace.Step("pin-bending", 16 * loadN * ((thicknessM / 2) + (gapM / 4)) / (Math.PI * pinM * pinM * pinM),
            new("F", Measure.Force(loadN)), new("t", Measure.Length(thicknessM)), new("g", Measure.Length(gapM)),
            new("d", Measure.Length(pinM)));

    /// <summary>f = min(R_e, R_m/1.2): yield, or rupture with its larger factor; in Pa.</summary>
    [Formula("governing-strength", "ASME BTH-1, design factors", "yield over N, rupture over 1.2·N", Basis.FromMemory, Symbol = "f",
        Name = "strength that governs",
        Expression = "min(R_e, R_m/1.2)", Kind = QuantityKind.Stress, Range = "ductile steel")]
    public static double GoverningStrengthPa(double yieldPa, double tensilePa, Trace trace) =>
        trace.Step("governing-strength", Math.Min(yieldPa, tensilePa / 1.2), new("R_e", Measure.Stress(yieldPa)),
        new("R_m", Measure.Stress(tensilePa)));

    /// <summary>u = σ·N/(k·f): stress with its design factor over k times the strength f; 1.</summary>
    [Formula("part-utilisation", "definition of utilisation", "/docs/reuse-assessments", Basis.Derived, Symbol = "u",
        Name = "utilisation of a part",
        Expression = "σ·N/(k·f)", Kind = QuantityKind.Fraction,
        Range = "k 1 for tension, 1/√3 for shear (von Mises), 1.25 for bearing (ASME BTH-1, from memory)")]
    public static double UtilisationOf(double stressPa, double designFactor, double share, double strengthPa, Trace trace) =>
        trace.Step("part-utilisation", stressPa * designFactor / (share * strengthPa),
            new("σ", Measure.Stress(stressPa)), new("N", Measure.Count(designFactor)), new("k", Measure.Count(share)),
            new("f", Measure.Stress(strengthPa)));

    /// <summary>F_r = F_B·min(1, u_0/u): the maker's breaking force in proportion to what the part most weakened has left; in N.</summary>
    [Formula("remaining-strength", "strength in proportion to stress", "/docs/reuse-assessments", Basis.Derived, Symbol = "F_r",
        Name = "breaking force with what is left",
        Expression = "F_B·min(1, u_0/u)", Kind = QuantityKind.Force, Range = "least u_0/u of all parts: as if each of them broke first")]
    public static double RemainingStrengthN(double breakingForceN, double asMade, double asMeasured, Trace trace) =>
        trace.Step("remaining-strength", breakingForceN * Math.Min(1, asMade / asMeasured),
            new("F_B", Measure.Force(breakingForceN)), new("u_0", Measure.Fraction(asMade)), new("u", Measure.Fraction(asMeasured)));
}
