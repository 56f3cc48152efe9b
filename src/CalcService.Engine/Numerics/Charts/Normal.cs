namespace CalcService.Engine.Numerics.Charts;

/// <summary>The standard normal distribution.</summary>
public static class Normal
{
    /// <summary>Beyond it the tail is expanded as a continued fraction.</summary>
    private const double Tail = 5;

    /// <summary>Beyond it nothing is left of the tail.</summary>
    private const double Farthest = 40;

    /// <summary>Φ(x), by the series about 0 and the continued fraction of the tail.</summary>
    public static double Cumulative(double x)
    {
        if (x < -Tail)
        {
            return Density(x) / Fraction(-x);
        }

        if (x > Tail)
        {
            return 1 - Cumulative(-x);
        }

        var (term, sum) = (x, x);
        for (var k = 3; Math.Abs(term) > 1e-17 * Math.Abs(sum); k += 2)
        {
            term *= x * x / k;
            sum += term;
        }

        return .5 + (Density(x) * sum);
    }

    /// <summary>The x with Φ(x) = p, 0 &lt; p &lt; 1.</summary>
    public static double Quantile(double p) =>
        RisingRoot.Find(x => Cumulative(x) - p, (-Farthest, Cumulative(-Farthest) - p), (Farthest, Cumulative(Farthest) - p), 0)!.Value;

    private static double Density(double x) => Elementary.Exp(-x * x / 2) / Math.Sqrt(2 * Math.PI);

    private static double Fraction(double x)
    {
        var value = x;
        for (var k = 60; k > 0; k--)
        {
            value = x + (k / value);
        }

        return value;
    }
}
