using CalcService.Engine.Provenance;

namespace CalcService.Engine.Pouring.TakeOff;

/// <summary>What one end takes besides the compound, where the caller doesn't say. Common practice, no source.</summary>
public static class EndMaterials
{
    /// <summary>Seizing wire is so many times thinner than the rope.</summary>
    public const double RopePerSeizingWire = 12;

    /// <summary>Thickness and height of the collar of putty, in rope diameters.</summary>
    public const double CollarThickness = .5;

    /// <inheritdoc cref="CollarThickness"/>
    public const double CollarHeight = 1;

    /// <summary>Baths of cleaner: one to wash, a fresh one to rinse.</summary>
    public const int CleanerBaths = 2;

    /// <summary>V_c = π·t·(d + t)·h, a collar of thickness t (m) and height h (m) round a rope of diameter d (m); in m³.</summary>
    [Formula("seal-collar", "ring round the rope under the small end", "/docs/pour-plans", Basis.Derived, Symbol = "V_c",
        Name = "putty to seal one end",
        Expression = "π·t·(d + t)·h", Kind = QuantityKind.Volume,
        Range = "an estimate: thickness and height are common practice, no source")]
    public static double SealCollarM3(double diameterM, double thicknessM, double heightM, Trace trace) =>
        trace.Step("seal-collar", Math.PI * thicknessM * (diameterM + thicknessM) * heightM,
            new("t", Measure.Length(thicknessM)), new("d", Measure.Length(diameterM)), new("h", Measure.Length(heightM)));

    /// <summary>V_w = b·V, b baths that each fill a vessel as large as the basket V (m³); in m³.</summary>
    [Formula("cleaner-baths", "baths as large as the basket", "/docs/pour-plans", Basis.Derived, Symbol = "V_w",
        Name = "cleaner for one end",
        Expression = "b·V", Kind = QuantityKind.Volume, Range = "an estimate: the number of baths is common practice, no source")]
    public static double CleanerM3(int baths, double basketM3, Trace trace) =>
        trace.Step("cleaner-baths", baths * basketM3, new("b", Measure.Count(baths)), new("V", Measure.Volume(basketM3)));
}
