namespace CalcService.Engine.Numerics;

/// <content>x^y = e^(y·ln x). A large exponent makes the error of the logarithm large, so that it is carried in two numbers.</content>
public static partial class Elementary
{
    /// <summary>From it on every power of what isn't 1 overflows or vanishes; below its inverse every power is 1.</summary>
    private const double TwoTo65 = 36893488147419103232.0;

    /// <summary>x^y, off by less than 0.53 units of the last place; 0.8 where the result is subnormal.</summary>
    public static double Pow(double x, double y) =>
        x == 1 || y == 0 ? 1
        : double.IsNaN(x) || double.IsNaN(y) ? double.NaN
        : double.IsInfinity(y) || x == 0 || double.IsInfinity(x) ? PowAtEnd(x, y)
        : x > 0 ? PowOf(x, y)
        : !double.IsInteger(y) ? double.NaN
        : double.IsOddInteger(y) ? -PowOf(-x, y) : PowOf(-x, y);

    private static double PowOf(double x, double y)
    {
        var (high, low) = LogInTwo(x);
        if (Math.Abs(y) is >= TwoTo65 or < 1 / TwoTo65)
        {
            return Math.Abs(y) < 1 || high == 0 ? 1 : high > 0 == y > 0 ? double.PositiveInfinity : 0;
        }

        var (upper, upperY) = (Upper(high), Upper(y));
        var product = upper * upperY;
        var rest = (upper * (y - upperY)) + (y * (high - upper + low));
        return Math.Abs(product) < ExpOverflows ? ExpOf(product, rest) : product > 0 ? double.PositiveInfinity : 0;
    }

    /// <summary>Powers of 0 and infinity, and infinite powers.</summary>
    private static double PowAtEnd(double x, double y)
    {
        var size = Math.Abs(x);
        return size == 1 ? 1
            : Math.CopySign(size > 1 == y > 0 ? double.PositiveInfinity : 0, double.IsOddInteger(y) ? x : 1);
    }
}
