using CalcService.Engine.Numerics;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Compounds;

/// <summary>
/// How the degree of cure goes with the age in gel times: the law of <see cref="CureLaw"/> with one activation energy and
/// m = 1, so that it has a closed form. c = k₂/k₁ and the whole order n are found from the sheet: the gel conversion is reached
/// at age 1, the full-strength conversion at the age that the sheet's time gives.
/// </summary>
public sealed class CureShape
{
    /// <summary>Beyond it nothing happens but at once.</summary>
    private const double SteepestAcceleration = 1e30;

    /// <summary>Below it c means nothing any more.</summary>
    private const double SlowestAcceleration = .01;

    private const int HighestOrder = 9;

    private readonly double _toGel;

    private CureShape(double acceleration, int order, double gelDegree, double fullDegree)
    {
        Acceleration = acceleration;
        Order = order;
        FullDegree = fullDegree;
        _toGel = ReactionTime(gelDegree, acceleration, order, Trace.None);
    }

    /// <summary>c = k₂/k₁.</summary>
    public double Acceleration { get; }

    /// <summary>n.</summary>
    public int Order { get; }

    /// <summary>Degree of cure at full strength.</summary>
    public double FullDegree { get; }

    /// <summary>Age at full strength.</summary>
    public double FullAge => AgeOf(FullDegree);

    /// <summary>The least order that can be so slow, with the acceleration that meets both conversions.</summary>
    /// <param name="fullAge">Age at full strength, above 1.</param>
    /// <param name="gelDegree">Gel conversion.</param>
    /// <param name="fullDegree">Full-strength conversion.</param>
    public static CureShape Calibrated(double fullAge, double gelDegree, double fullDegree)
    {
        double Age(double acceleration, int order) =>
            ReactionTime(fullDegree, acceleration, order, Trace.None) / ReactionTime(gelDegree, acceleration, order, Trace.None);

        // Without self-acceleration the tail is longest.
        var least = 1;
        while (least < HighestOrder && Age(SlowestAcceleration, least) < fullAge)
        {
            least++;
        }

        return new(Elementary.Exp(Root(logAcceleration => Elementary.Log(Age(Elementary.Exp(logAcceleration), least) / fullAge),
            Elementary.Log(SlowestAcceleration), Elementary.Log(SteepestAcceleration))),
            least, gelDegree, fullDegree);
    }

    /// <summary>The age at which a degree of cure is reached.</summary>
    public double AgeOf(double degree) => ReactionTime(degree, Acceleration, Order, Trace.None) / _toGel;

    /// <summary>The degree of cure at an age.</summary>
    public double DegreeAt(double age)
    {
        if (Order == 1)
        {
            // (1 + c·α)/(1 − α) = exp((1 + c)·θ), turned so that it doesn't overflow.
            var left = Elementary.Exp(-(1 + Acceleration) * _toGel * age);
            return (1 - left) / (1 + (Acceleration * left));
        }

        // In ln(1 − α) the tail is as easy to find as the start.
        var (low, high) = (-60.0, 0.0);
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = AgeOf(-Expm1(middle)) > age ? (middle, high) : (low, middle);
        }

        return -Expm1((low + high) / 2);
    }

    /// <summary>The law at the gel times of one line.</summary>
    public CureLaw LawOf(GelLine line)
    {
        var k1 = _toGel / line.ReferenceS * Elementary.Exp(line.EnergyJPerMol / (GelModel.GasConstant * line.ReferenceK));
        return new(k1, line.EnergyJPerMol, Acceleration * k1, line.EnergyJPerMol, 1, Order);
    }

    /// <summary>
    /// k₁·t until a degree of cure is reached at one temperature: ∫dα/((1 + c·α)·(1 − α)^n) for whole n, by partial fractions.
    /// </summary>
    [Formula("cure-time", "Kamal and Sourour law with m = 1 at one temperature, integrated by partial fractions", "/docs/cure-schedules",
        Basis.Derived, Symbol = "θ", Name = "reaction time k₁·t",
        Expression = "∫dα/((1 + c·α)·(1 − α)^n)", Kind = QuantityKind.Count, Range = "whole n from 1, c above 0, α below 1")]
    public static double ReactionTime(double degree, double acceleration, int order, Trace trace)
    {
        var (b, u) = (1 + acceleration, 1 - degree);
        var time = Elementary.Log(1 + (acceleration * degree)) / acceleration;
        for (var n = 1; n <= order; n++)
        {
            var plain = n == 1 ? -Elementary.Log(u) : (Elementary.Pow(u, 1 - n) - 1) / (n - 1);
            time = (plain + (acceleration * time)) / b;
        }

        return trace.Step("cure-time", time, new("α", Measure.Fraction(degree)), new("c", Measure.Count(acceleration)),
            new("n", Measure.Count(order)));
    }

    /// <summary>
    /// Root of a falling function: the chord, with an end that stays twice halved so that it can't hang (Illinois rule). The upper end
    /// where there is none.
    /// </summary>
    private static double Root(Func<double, double> falling, double low, double high)
    {
        var (atLow, atHigh) = (falling(low), falling(high));
        var x = high;
        var side = 0;
        for (var i = 0; i < 100 && atHigh < 0; i++)
        {
            x = ((low * atHigh) - (high * atLow)) / (atHigh - atLow);
            var at = falling(x);
            if (Math.Abs(at) < 1e-14)
            {
                break;
            }

            if (at > 0)
            {
                atHigh = side > 0 ? atHigh / 2 : atHigh;
                (low, atLow, side) = (x, at, 1);
            }
            else
            {
                atLow = side < 0 ? atLow / 2 : atLow;
                (high, atHigh, side) = (x, at, -1);
            }
        }

        return x;
    }

    private static double Expm1(double x) => Math.Abs(x) < 1e-5 ? x + (x * x / 2) : Elementary.Exp(x) - 1;
}
