using System.Runtime.CompilerServices;

namespace CalcService.Engine.Numerics;

/// <content>
/// ln x = k·ln 2 − ln c + ln(1 + r) for x = 2^k·z with z from 11/16 to 11/8, c = j/128 near 1/z and r = c·z − 1: c has so few digits that
/// r is known exactly, as a sum of two numbers. Where x is near 1, k and ln c are 0, and nothing is lost there either.
/// </content>
public static partial class Elementary
{
    private const int LogParts = 128;

    /// <summary>Multiples of 2^−42 add without rounding, up to the largest exponent.</summary>
    private const int LogBits = 42;

    /// <summary>11/16, where z begins.</summary>
    private const long LogFrom = 0x3FE6000000000000;
    private const double TwoTo52 = 4503599627370496;

    private static readonly double Ln2High = ExactSeries.Split(ExactSeries.Ln2, LogBits).High;
    private static readonly double Ln2Low = ExactSeries.Split(ExactSeries.Ln2, LogBits).Low;

    /// <summary>For each 128th of the significands c, and −ln c in two parts.</summary>
    private static readonly LogEntry[] LogTable = [.. Enumerable.Range(0, LogParts).Select(LogEntry.At)];

    /// <summary>ln x, off by less than 0.53 units of the last place.</summary>
    public static double Log(double x)
    {
        if (!(x > 0) || double.IsPositiveInfinity(x))
        {
            return x == 0 ? double.NegativeInfinity : x < 0 ? double.NaN : x;
        }

        var (whole, rest, r, lost) = LogReduced(x);
        var square = r * r;
        var high = whole + r;
        return (square * (-.5 + (r * LogSeries(r, square)))) + (rest + lost + (whole - high + r)) + high;
    }

    /// <summary>ln x as a sum of two numbers, to some 68 bits; x positive and finite.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static (double High, double Low) LogInTwo(double x)
    {
        var (whole, rest, r, lost) = LogReduced(x);
        var first = whole + r;
        // −r²/2 would lose its last bits: the square of the upper half is exact.
        var upper = Upper(r);
        var half = -.5 * upper * upper;
        var second = first + half;
        var square = r * r;
        var low = rest + (whole - first + r) + (lost * (1 - r)) + (-.5 * (r - upper) * (r + upper)) + (first - second + half)
            + (square * r * LogSeries(r, square));
        var high = second + low;
        return (high, second - high + low);
    }

    /// <summary>k·ln 2 − ln c, whole and what is left, and r with what its double lacks.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static (double Whole, double Beside, double R, double Lost) LogReduced(double x)
    {
        var bits = BitConverter.DoubleToInt64Bits(x);
        var k = 0L;
        if (bits < 1L << SignificandBits)
        {
            (bits, k) = (BitConverter.DoubleToInt64Bits(x * TwoTo52), -SignificandBits);
        }

        var from = bits - LogFrom;
        var entry = LogTable[(int)(from >> (SignificandBits - 7)) & (LogParts - 1)];
        k += from >> SignificandBits;
        var z = BitConverter.Int64BitsToDouble(bits - (from & (-1L << SignificandBits)));
        var upper = Upper(z);
        var (a, b) = ((upper * entry.C) - 1, (z - upper) * entry.C);
        var r = a + b;
        var part = r - a;
        return ((k * Ln2High) + entry.High, (k * Ln2Low) + entry.Low, r, a - (r - part) + (b - part));
    }

    /// <summary>1/3 − r/4 + r²/5 − … up to r⁶/9.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static double LogSeries(double r, double square) =>
        (1.0 / 3) - (r / 4) + (square * ((1.0 / 5) - (r * (1.0 / 6)) + (square * ((1.0 / 7) - (r / 8) + (square * (1.0 / 9))))));

    private readonly record struct LogEntry(double C, double High, double Low)
    {
        public static LogEntry At(int i)
        {
            const int Denominator = 128;
            var middle = BitConverter.Int64BitsToDouble(LogFrom + (((2L * i) + 1) << (SignificandBits - 8)));
            var j = (int)Math.Round(Denominator / middle);
            var (high, low) = ExactSeries.Split(ExactSeries.LogOfRatio(Denominator, j), LogBits);
            return new((double)j / Denominator, high, low);
        }
    }
}
