using CalcService.Engine.Numerics.Charts;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Audits;

/// <summary>Control charts of single values, and tolerance limits.</summary>
public static class ChartFormulas
{
    private const string Handbook = "NIST/SEMATECH e-Handbook of Statistical Methods";

    /// <summary>Mean range of two values over their standard deviation, as the handbook prints it.</summary>
    private const double RangeOfTwo = 1.128;

    /// <summary>σ = MR/1.128: standard deviation from the mean range of neighbours.</summary>
    [Formula("moving-range-deviation", Handbook, "6.3.2.2", Basis.Published, Symbol = "σ",
        Name = "standard deviation from the moving range",
        Expression = "MR/1.128", Kind = QuantityKind.Count, Range = "values in the order in which they came")]
    public static double Deviation(double meanRange, Trace trace) =>
        trace.Step("moving-range-deviation", meanRange / RangeOfTwo, new Substitution("MR", Measure.Count(meanRange)));

    /// <summary>L = x + k·σ: control limit of a single value, k negative for the lower one.</summary>
    [Formula("individuals-limit", Handbook, "6.3.2.2", Basis.Published, Symbol = "L", Name = "control limit of single values",
        Expression = "x + k·σ", Kind = QuantityKind.Count, Range = "k 3 above, −3 below")]
    public static double Limit(double mean, double deviations, double deviation, Trace trace) =>
        trace.Step("individuals-limit", mean + (deviations * deviation),
        new("x", Measure.Count(mean)), new("k", Measure.Count(deviations)), new("σ", Measure.Count(deviation)));

    /// <summary>z = λ·x + (1 − λ)·z_0: exponentially weighted moving average.</summary>
    [Formula("ewma", Handbook, "6.3.2.4", Basis.Published, Symbol = "z", Name = "exponentially weighted moving average",
        Expression = "λ·x + (1 − λ)·z_0", Kind = QuantityKind.Count, Range = "0 < λ ≤ 1, starting at the centre")]
    public static double Average(double weight, double value, double before, Trace trace) =>
        trace.Step("ewma", (weight * value) + ((1 - weight) * before),
        new("λ", Measure.Fraction(weight)), new("x", Measure.Count(value)), new("z_0", Measure.Count(before)));

    /// <summary>w = k·σ·√(λ/(2 − λ)): half width of the limits of the moving average, once it has settled.</summary>
    [Formula("ewma-width", Handbook, "6.3.2.4", Basis.Published, Symbol = "w", Name = "half width of the moving average's limits",
        Expression = "k·σ·√(λ/(2 − λ))", Kind = QuantityKind.Count, Range = "many values")]
    public static double AverageWidth(double deviations, double deviation, double weight, Trace trace) =>
        trace.Step("ewma-width", deviations * deviation * Math.Sqrt(weight / (2 - weight)),
            new("k", Measure.Count(deviations)), new("σ", Measure.Count(deviation)), new("λ", Measure.Fraction(weight)));

    /// <summary>K = t'(γ; N − 1, z_p·√N)/√N: below mean plus K standard deviations lies the share p, with confidence γ.</summary>
    [Formula("tolerance-factor", Handbook, "7.2.6.3", Basis.Published, Symbol = "K", Name = "one-sided tolerance factor",
        Expression = "t(γ, N − 1, z(p)·√N)/√N", Kind = QuantityKind.Count, Range = "normal values, N from 2")]
    public static double ToleranceFactor(long count, double coverage, double confidence, Trace trace)
    {
        var root = Math.Sqrt(count);
        return trace.Step("tolerance-factor", NoncentralT.Quantile(confidence, count - 1, Normal.Quantile(coverage) * root) / root,
            new("N", Measure.Count(count)), new("p", Measure.Fraction(coverage)), new("γ", Measure.Fraction(confidence)));
    }
}
