namespace CalcService.Engine.Numerics.Charts;

/// <summary>
/// Student's t with a numerator that isn't centred: T = (Z + δ)/√(χ²/ν). Its distribution is the mean of Φ(t·x/√ν − δ) over the
/// chi distribution of x, integrated piece by piece; what normalises the chi density is integrated beside it.
/// </summary>
public static class NoncentralT
{
    private const double HalfWidth = 9;
    private const double WidestPiece = .25;

    /// <summary>So near to a probability a quantile is one: what integration leaves uncertain.</summary>
    private const double Near = 1e-14;

    /// <summary>P(T ≤ t).</summary>
    public static double Cumulative(double t, double degrees, double shift)
    {
        var mode = Math.Sqrt(Math.Max(0, degrees - 1));
        var (inside, all) = (0.0, 0.0);
        // Where t is large, Φ steps up within 1/slope.
        var slope = t / Math.Sqrt(degrees);
        var piece = Math.Min(WidestPiece, 1 / (1 + Math.Abs(slope)));
        for (var from = Math.Max(0, mode - HalfWidth); from < mode + HalfWidth; from += piece)
        {
            inside += GaussLegendre.Integral(new Part(degrees, mode, slope, shift), from, from + piece);
            all += GaussLegendre.Integral(new Part(degrees, mode, 0, double.NegativeInfinity), from, from + piece);
        }

        return inside / all;
    }

    /// <summary>The t with P(T ≤ t) = p.</summary>
    public static double Quantile(double p, double degrees, double shift)
    {
        (double At, double Value) From(double t) => (t, Cumulative(t, degrees, shift) - p);
        var (low, high) = (From(shift - 1), From(shift + 1));
        while (low.Value > 0)
        {
            low = From(low.At - (2 * (high.At - low.At)));
        }

        while (high.Value < 0)
        {
            high = From(high.At + (2 * (high.At - low.At)));
        }

        return RisingRoot.Find(t => From(t).Value, low, high, Near)!.Value;
    }

    /// <summary>The chi density over its highest value, times Φ; Φ is 1 where the shift is −∞.</summary>
    private readonly record struct Part(double Degrees, double Mode, double Slope, double Shift) : IFunction
    {
        public double At(double x)
        {
            var power = Degrees > 1 ? (Degrees - 1) * Elementary.Log(x / Mode) : 0;
            return Elementary.Exp(power - (((x * x) - (Mode * Mode)) / 2)) * (double.IsNegativeInfinity(Shift) ? 1
                : Normal.Cumulative((Slope * x) - Shift));
        }
    }
}
