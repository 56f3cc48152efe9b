using CalcService.Engine.Numerics;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Compounds;

/// <summary>What gels that were seen say about a lot whose sheet is known.</summary>
public static class GelPosterior
{
    /// <summary>F = exp(x̄·(N/σ_o²)/(1/σ_l² + N/σ_o²)), x̄ the mean of ln(observed age) over N gels seen.</summary>
    [Formula("gel-posterior", "normal prior and normal error on ln t_gel", "/docs/cure-schedules", Basis.Derived, Symbol = "F",
        Name = "gel times longer by the factor",
        Expression = "exp(x·(N/σ_o²)/(1/σ_l² + N/σ_o²))", Kind = QuantityKind.Count,
        Range = "small spreads, so that they are relative ones")]
    public static double Factor(double meanLog, int count, double lotSpread, double error, Trace trace)
    {
        var (prior, seen) = (1 / (lotSpread * lotSpread), count / (error * error));
        return trace.Step("gel-posterior", Elementary.Exp(meanLog * seen / (prior + seen)), new("x", Measure.Count(meanLog)),
            new("N", Measure.Count(count)),
            new("σ_o", Measure.Fraction(error)), new("σ_l", Measure.Fraction(lotSpread)));
    }
}
