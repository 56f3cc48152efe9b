namespace CalcService.Engine.Numerics;

/// <summary>
/// Series summed in decimal numbers of 28 digits, which are whole numbers inside and the same everywhere: what the tables of
/// <see cref="Elementary"/> are made of, once, instead of hundreds of constants to be believed.
/// </summary>
internal static class ExactSeries
{
    /// <summary>ln 2; its value with more digits is in DLMF 4.2 and OEIS A002162.</summary>
    public const decimal Ln2 = 0.6931471805599453094172321215m;

    /// <summary>e^x = Σ xⁿ/n!, x from 0 to 1.</summary>
    public static decimal Exp(decimal x)
    {
        var (sum, term) = (1m, 1m);
        for (var n = 1; term != 0; n++)
        {
            term *= x / n;
            sum += term;
        }

        return sum;
    }

    /// <summary>ln(a/b) = 2·Σ zⁿ/n over odd n, z = (a − b)/(a + b).</summary>
    public static decimal LogOfRatio(int a, int b)
    {
        var z = (decimal)(a - b) / (a + b);
        var (sum, power) = (0m, z);
        for (var n = 1; power != 0; n += 2)
        {
            sum += power / n;
            power *= z * z;
        }

        return 2 * sum;
    }

    /// <summary>arctan x by Euler's series, whose terms halve at least; x from 0 to 1.</summary>
    public static decimal Atan(decimal x)
    {
        var (square, sum, term) = (x * x, 0m, x / (1 + (x * x)));
        for (var n = 1; term != 0; n++)
        {
            sum += term;
            term *= 2m * n / ((2 * n) + 1) * square / (1 + square);
        }

        return sum;
    }

    /// <summary>A number as a multiple of 2^−bits and what is left of it.</summary>
    public static (double High, double Low) Split(decimal value, int bits)
    {
        const int RestBits = 40;
        var scaled = value * (1L << bits);
        var whole = decimal.Round(scaled);
        var rest = decimal.Round((scaled - whole) * (1L << RestBits));
        return (Math.ScaleB((long)whole, -bits), Math.ScaleB((long)rest, -bits - RestBits));
    }
}
