using CalcService.Engine.Provenance;

namespace CalcService.Engine.Pouring;

/// <summary>Vapour in a room with a steady source: V·dC/dt = G − n·V·C.</summary>
public static class RoomAir
{
    /// <summary>C = G·τ/V·φ(n·τ), φ(x) = (1 − e^{−x})/x, after a source G (kg/s) ran for τ (s) with n air changes (1/s); in kg/m³.</summary>
    [Formula("room-concentration", "balance of a well-mixed room", "docs/pour-plans.md", Basis.Derived,
        Symbol = "C", Name = "vapour in the room when the source ends", Expression = "G·τ/V·(1 − exp(−n·τ))/(n·τ)",
        Kind = QuantityKind.MassConcentration, Range = "well-mixed air; n reduced by the mixing factor")]
    public static double ConcentrationKgPerM3(double sourceKgPerS, double volumeM3, double airChangesPerS, double seconds, Trace trace) =>
        trace.Step("room-concentration", sourceKgPerS * seconds / volumeM3 * MeanDecay(airChangesPerS * seconds),
            new("G", new Measure(sourceKgPerS, QuantityKind.MassFlow)), new("τ", Measure.Duration(seconds)),
            new("V", Measure.Volume(volumeM3)), new("n", new Measure(airChangesPerS, QuantityKind.Rate)));

    /// <summary>
    /// C̄ over a time T (s) that begins with the source: the source runs for τ ≤ T, then the air only clears. From
    /// the balance, ∫C dt = (G·τ/V − C(T))/n; without ventilation the area under the ramp; in kg/m³.
    /// </summary>
    [Formula("room-mean", "balance of a well-mixed room", "docs/pour-plans.md", Basis.Derived,
        Symbol = "C̄", Name = "mean vapour in the room", Expression = "(G·τ/V·ψ(n·τ)·τ + C·φ(n·(T − τ))·(T − τ))/T, φ(x) = (1 − exp(−x))/x, ψ(x) = (1 − φ(x))/x",
        Kind = QuantityKind.MassConcentration, Range = "well-mixed air; n reduced by the mixing factor")]
    public static double MeanKgPerM3(double sourceKgPerS, double volumeM3, double airChangesPerS, double sourceS, double overS, Trace trace)
    {
        var running = Math.Min(sourceS, overS);
        var end = ConcentrationKgPerM3(sourceKgPerS, volumeM3, airChangesPerS, running, Trace.None);
        var rise = sourceKgPerS * running / volumeM3 * MeanRise(airChangesPerS * running) * running;
        var fall = end * MeanDecay(airChangesPerS * (overS - running)) * (overS - running);
        return trace.Step("room-mean", (rise + fall) / overS,
            new("G", new Measure(sourceKgPerS, QuantityKind.MassFlow)), new("τ", Measure.Duration(running)), new("V", Measure.Volume(volumeM3)),
            new("n", new Measure(airChangesPerS, QuantityKind.Rate)), new("C", new Measure(end, QuantityKind.MassConcentration)),
            new("T", Measure.Duration(overS)));
    }

    /// <summary>x_v = C/M·R·T/P at 25 °C and 1 atm, C (kg/m³), M (g/mol); parts by volume.</summary>
    [Formula("air-fraction", "ideal gas at 25 °C and 101.325 kPa", "29 CFR 1910.1000 note (a)", Basis.Law,
        Symbol = "x_v", Name = "parts of vapour by volume", Expression = "C/M·24.465 L/mol",
        Kind = QuantityKind.AirFraction, Range = "dilute vapour")]
    public static double AirFraction(double concentrationKgPerM3, double molarMassGPerMol, Trace trace) =>
        trace.Step("air-fraction", concentrationKgPerM3 * 1000 / molarMassGPerMol * 24.465e-3,
            new("C", new Measure(concentrationKgPerM3, QuantityKind.MassConcentration)), Substitution.In("M", molarMassGPerMol, "g/mol"));

    private static double MeanDecay(double x) => x < 1e-4 ? 1 - (x / 2) + (x * x / 6) : (1 - Math.Exp(-x)) / x;

    private static double MeanRise(double x) => x < 1e-4 ? .5 - (x / 6) + (x * x / 24) : (1 - MeanDecay(x)) / x;
}
