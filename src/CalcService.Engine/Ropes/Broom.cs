using CalcService.Engine.Numerics;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Ropes;

/// <summary>Geometry of the broom: the wires of a rope end opened into a cone.</summary>
public static class Broom
{
    /// <summary>Below this the closed form loses digits to cancellation and its series is exact to rounding.</summary>
    private const double SeriesBelow = 1e-2;

    /// <summary>
    /// s = 2/(3t²)·((1 + t²)^{3/2} − 1), the mean length of a wire for each length of axis when the wires spread evenly
    /// over a cone with t = tan θ of its half-angle. Mean of √(1 + t²u²) over the section, u from 0 to 1.
    /// </summary>
    [Formula("wire-obliquity", "mean of the wire slope over an evenly filled cone", "/docs/pour-plans", Basis.Derived, Symbol = "s",
        Name = "mean obliquity of the wires",
        Expression = "2/(3·t²)·((1 + t²)^(3/2) − 1)", Kind = QuantityKind.Count, Range = "t from 0 to 1 (half-angle to 45°)")]
    public static double Obliquity(double tanHalfAngle, Trace trace)
    {
        var x = tanHalfAngle * tanHalfAngle;
        var s = Math.Abs(tanHalfAngle) < SeriesBelow
            ? 1 + (x / 4) - (x * x / 24)
            : 2 / (3 * x) * (Elementary.Pow(1 + x, 1.5) - 1);
        return trace.Step("wire-obliquity", s, new Substitution("t", Measure.Count(tanHalfAngle)));
    }

    /// <summary>V_s = A·L·s, metal of the broom in a basket of length L (m) for a metallic area A (m²); in m³.</summary>
    [Formula("steel-volume", "length of the wires times their section", "/docs/pour-plans", Basis.Derived, Symbol = "V_s",
        Name = "steel in the basket",
        Expression = "A·L·s", Kind = QuantityKind.Volume, Range = "wires reach through the whole basket")]
    public static double SteelVolumeM3(double metallicAreaM2, double lengthM, double obliquity, Trace trace) =>
        trace.Step("steel-volume", metallicAreaM2 * lengthM * obliquity,
            new("A", Measure.Area(metallicAreaM2)), new("L", Measure.Length(lengthM)), new("s", Measure.Count(obliquity)));

    /// <summary>
    /// V_m = m/ρ·L, metal in the basket by the mass of the rope, m (kg/m), ρ 7850 kg/m³; in m³. It counts lay,
    /// lubricant and core as steel, so it is the most metal that can be there and gives the least resin.
    /// </summary>
    [Formula("steel-volume-by-mass", "rope mass taken as steel throughout", "/docs/pour-plans", Basis.Derived, Symbol = "V_m",
        Name = "steel in the basket by rope mass",
        Expression = "m/ρ·L", Kind = QuantityKind.Volume, Range = "upper bound")]
    public static double SteelVolumeByMassM3(double massKgPerM, double lengthM, Trace trace) =>
        trace.Step("steel-volume-by-mass", massKgPerM / Steel.DensityKgPerM3 * lengthM,
            new("m", new Measure(massKgPerM, QuantityKind.LinearDensity)),
            new("ρ", new Measure(Steel.DensityKgPerM3, QuantityKind.Density)), new("L", Measure.Length(lengthM)));

    /// <summary>
    /// s_w = √(π·D²/(2√3·n)), distance between the centres of n wires that fill a section of diameter D (m) as a
    /// triangular lattice (each wire has the area √3/2·s_w² for itself); in m.
    /// </summary>
    [Formula("wire-spacing", "triangular lattice", "/docs/pour-plans", Basis.Derived, Symbol = "s_w",
        Name = "distance between wire centres",
        Expression = "√(π·D²/(2·√3·n))", Kind = QuantityKind.Length, Range = "wires spread evenly over the section")]
    public static double WireSpacingM(double sectionDiameterM, int wires, Trace trace) =>
        trace.Step("wire-spacing", Math.Sqrt(Math.PI * sectionDiameterM * sectionDiameterM / (2 * Math.Sqrt(3) * wires)),
            new("D", Measure.Length(sectionDiameterM)), new("n", Measure.Count(wires)));

    /// <summary>π/(2√3), the largest share of a plane that equal circles cover.</summary>
    public static double DensestFill { get; } = Math.PI / (2 * Math.Sqrt(3));
}
