using CalcService.Engine.Numerics;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Compounds;

/// <summary>
/// A cup of compound that keeps all of its heat. A gel time that was taken in a cup is shorter than one at a temperature that is
/// held; how much, this bounds, so that a model that computes the heat itself doesn't count it twice.
/// </summary>
public static class WarmingCup
{
    private const int Parts = 12;

    /// <summary>ΔT = w·H/c: how much warmer complete cure makes the compound, K.</summary>
    [Formula("adiabatic-rise", "balance of heat without loss", "/docs/cure-schedules", Basis.Derived, Symbol = "ΔT",
        Name = "temperature rise of complete cure",
        Expression = "w·H/c", Kind = QuantityKind.TemperatureDifference, Range = "no heat lost, specific heat constant")]
    public static double RiseK(double resinFraction, double heatJPerKg, double specificHeatJPerKgK, Trace trace) =>
        trace.Step("adiabatic-rise", resinFraction * heatJPerKg / specificHeatJPerKgK, new("w", Measure.Fraction(resinFraction)),
            new("H", new Measure(heatJPerKg, QuantityKind.SpecificEnergy)),
            new("c", new Measure(specificHeatJPerKgK, QuantityKind.SpecificHeat)));

    /// <summary>t = ∫₀^α dα/r(α, T₀ + ΔT·α), r the law of cure; s. With ΔT = 0 the time at a temperature that is held.</summary>
    [Formula("cup-time", "cure without loss of heat, temperature tied to the degree of cure", "/docs/cure-schedules", Basis.Derived,
        Symbol = "t", Name = "time to a degree of cure in a cup",
        Expression = "∫dα/r(α, T_0 + ΔT·α)", Kind = QuantityKind.Duration, Range = "law with k₁ above 0; no heat lost")]
    public static double TimeS(CureLaw law, double startK, double riseK, double degree, Trace trace)
    {
        // Towards α = 0 the self-acceleration changes fast: parts that halve.
        var sum = 0.0;
        var upper = degree;
        for (var part = 0; part < Parts; part++)
        {
            var lower = part == Parts - 1 ? 0 : upper / 2;
            sum += GaussLegendre.Integral(new Slowness(law, startK, riseK), lower, upper);
            upper = lower;
        }

        return trace.Step("cup-time", sum, new("T_0", Measure.Kelvins(startK)), new("ΔT", Measure.TemperatureDifference(riseK)));
    }

    private readonly record struct Slowness(CureLaw Law, double StartK, double RiseK) : IFunction
    {
        public double At(double x) => 1 / Law.RatePerS(x, StartK + (RiseK * x));
    }
}
