using CalcService.Engine.Numerics;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Pouring;

/// <summary>
/// A source of vapour that fades as its surface skins over, G·e^{−k·t}, in a room with n air changes:
/// V·dC/dt = G·e^{−k·t} − n·V·C. k = 0 is a steady source. Every form here holds for n = k and for n = 0 too.
/// </summary>
/// <param name="SourceKgPerS">G, kg/s at the start.</param>
/// <param name="DecayPerS">k, 1/s.</param>
/// <param name="VolumeM3">V, m³.</param>
/// <param name="AirChangesPerS">n, 1/s.</param>
public readonly record struct RoomAir(double SourceKgPerS, double DecayPerS, double VolumeM3, double AirChangesPerS)
{
    /// <summary>C = G·t/V·e^{−k·t}·φ((n − k)·t), φ(x) = (1 − e^{−x})/x, which is G/V·(e^{−k·t} − e^{−n·t})/(n − k); in kg/m³.</summary>
    [Formula("room-concentration", "balance of a well-mixed room", "/docs/pour-plans", Basis.Derived,
        Symbol = "C", Name = "vapour in the room", Expression = "G·t/V·exp(−k·t)·φ((n − k)·t), φ(x) = (1 − exp(−x))/x",
        Kind = QuantityKind.MassConcentration, Range = "well-mixed air; n reduced by the mixing factor; t up to the end of the source")]
    public double ConcentrationKgPerM3(double seconds, Trace trace) =>
        trace.Step("room-concentration",
        SourceKgPerS * seconds / VolumeM3 * Elementary.Exp(-DecayPerS * seconds) * MeanDecay((AirChangesPerS - DecayPerS) * seconds),
            new("G", new Measure(SourceKgPerS, QuantityKind.MassFlow)), new("t", Measure.Duration(seconds)),
            new("V", Measure.Volume(VolumeM3)), new("n", new Measure(AirChangesPerS, QuantityKind.Rate)),
            new("k", new Measure(DecayPerS, QuantityKind.Rate)));

    /// <summary>
    /// t_p = ln(n/k)/(n − k), when the vapour is highest; no later than the end of the source (s). A steady source and
    /// a closed room are highest at that end; in s.
    /// </summary>
    [Formula("room-peak-time", "balance of a well-mixed room, dC/dt = 0", "/docs/pour-plans", Basis.Derived,
        Symbol = "t_p", Name = "when the vapour is highest", Expression = "min(τ, ln(n/k)/(n − k))",
        Kind = QuantityKind.Duration, Range = "n and k above 0; else the end of the source")]
    public double PeakTimeS(double sourceEndsS, Trace trace) =>
        trace.Step("room-peak-time", DecayPerS <= 0 || AirChangesPerS <= 0 ? sourceEndsS : Math.Min(sourceEndsS, UnboundedPeakS()),
            new("τ", Measure.Duration(sourceEndsS)), new("n", new Measure(AirChangesPerS, QuantityKind.Rate)),
            new("k", new Measure(DecayPerS, QuantityKind.Rate)));

    /// <summary>
    /// C̄ over a time T (s) that begins with the source: it runs for τ ≤ T, then the air only clears. The area under the
    /// running part is G/V·(τ·φ(k·τ) − τ·φ(n·τ))/(n − k); in kg/m³.
    /// </summary>
    [Formula("room-mean", "balance of a well-mixed room", "/docs/pour-plans", Basis.Derived,
        Symbol = "C̄", Name = "mean vapour in the room",
        Expression = "(G/V·(τ·φ(k·τ) − τ·φ(n·τ))/(n − k) + C·(T − τ)·φ(n·(T − τ)))/T, φ(x) = (1 − exp(−x))/x",
        Kind = QuantityKind.MassConcentration, Range = "well-mixed air; n reduced by the mixing factor")]
    public double MeanKgPerM3(double sourceEndsS, double overS, Trace trace)
    {
        var running = Math.Min(sourceEndsS, overS);
        var end = ConcentrationKgPerM3(running, Trace.None);
        var rise = SourceKgPerS * running / VolumeM3 * running * Slope(DecayPerS * running, AirChangesPerS * running);
        var fall = end * MeanDecay(AirChangesPerS * (overS - running)) * (overS - running);
        return trace.Step("room-mean", (rise + fall) / overS,
            new("G", new Measure(SourceKgPerS, QuantityKind.MassFlow)), new("τ", Measure.Duration(running)),
            new("V", Measure.Volume(VolumeM3)),
            new("n", new Measure(AirChangesPerS, QuantityKind.Rate)), new("k", new Measure(DecayPerS, QuantityKind.Rate)),
            new("C", new Measure(end, QuantityKind.MassConcentration)), new("T", Measure.Duration(overS)));
    }

    /// <summary>x_v = C/M·R·T/P at 25 °C and 1 atm, C (kg/m³), M (g/mol); parts by volume.</summary>
    [Formula("air-fraction", "ideal gas at 25 °C and 101.325 kPa", "29 CFR 1910.1000 note (a)", Basis.Law,
        Symbol = "x_v", Name = "parts of vapour by volume", Expression = "C/M·24.465 L/mol",
        Kind = QuantityKind.AirFraction, Range = "dilute vapour")]
    public static double AirFraction(double concentrationKgPerM3, double molarMassGPerMol, Trace trace) =>
        trace.Step("air-fraction", concentrationKgPerM3 * 1000 / molarMassGPerMol * 24.465e-3,
            new("C", new Measure(concentrationKgPerM3, QuantityKind.MassConcentration)), Substitution.In("M", molarMassGPerMol, "g/mol"));

    /// <summary>ln(n/k)/(n − k), which is 1/n where both are the same.</summary>
    private double UnboundedPeakS()
    {
        var more = (DecayPerS - AirChangesPerS) / AirChangesPerS;
        return Math.Abs(more) < 1e-6 ? (1 - (more / 2)) / AirChangesPerS
            : Elementary.Log(DecayPerS / AirChangesPerS) / (DecayPerS - AirChangesPerS);
    }

    private static double MeanDecay(double x) => Math.Abs(x) < 1e-4 ? 1 - (x / 2) + (x * x / 6) : (1 - Elementary.Exp(-x)) / x;

    /// <summary>(φ(x) − φ(y))/(y − x), by the slope of φ where the two are close.</summary>
    private static double Slope(double x, double y) => Math.Abs(y - x) < 1e-4 ? SlopeAt((x + y) / 2)
        : (MeanDecay(x) - MeanDecay(y)) / (y - x);

    /// <summary>−φ′(x).</summary>
    private static double SlopeAt(double x) => x < 1e-3 ? .5 - (x / 3) + (x * x / 8) : (1 - (Elementary.Exp(-x) * (1 + x))) / (x * x);
}
