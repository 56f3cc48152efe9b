using System.Runtime.CompilerServices;

namespace CalcService.Engine.Numerics;

/// <content>e^x = 2^(k/128)·e^r with whole k and |r| ≤ ln 2/256: the first from a table, the second by its series.</content>
public static partial class Elementary
{
    private const int ExpParts = 128;

    /// <summary>Beyond it, on either side, every result is infinity or nothing.</summary>
    private const double ExpOverflows = 800;

    /// <summary>Added and taken off again it rounds to a whole number, which then stands in the lowest bits.</summary>
    private const double RoundToWhole = 6755399441055744;

    private const double ExpStepsPerUnit = 1.4426950408889634 * ExpParts;
    private const double TwoTo200 = 1.6069380442589903e60;

    /// <summary>ln 2/128; its upper part times any k is exact.</summary>
    private static readonly double ExpStepHigh = ExactSeries.Split(ExactSeries.Ln2 / ExpParts, 42).High;
    private static readonly double ExpStepLow = ExactSeries.Split(ExactSeries.Ln2 / ExpParts, 42).Low;

    /// <summary>2^(i/128) and, relative to it, what its double lacks.</summary>
    private static readonly (double Power, double Beside)[] ExpTable =
    [
        .. Enumerable.Range(0, ExpParts).Select(i => ExactSeries.Split(ExactSeries.Exp(ExactSeries.Ln2 * i / ExpParts), SignificandBits))
            .Select(power => (power.High, power.Low / power.High)),
    ];

    /// <summary>e^x, off by less than 0.52 units of the last place; 0.8 where the result is subnormal.</summary>
    public static double Exp(double x) =>
        double.IsNaN(x) ? x : Math.Abs(x) < ExpOverflows ? ExpOf(x, 0) : x > 0 ? double.PositiveInfinity : 0;

    /// <summary>e^(x + rest), the rest far smaller than x and both between the ends.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static double ExpOf(double x, double rest)
    {
        var shifted = (x * ExpStepsPerUnit) + RoundToWhole;
        var k = (int)BitConverter.DoubleToInt64Bits(shifted);
        var steps = shifted - RoundToWhole;
        var r = x - (steps * ExpStepHigh) - (steps * ExpStepLow) + rest;
        var entry = ExpTable[k & (ExpParts - 1)];
        var square = r * r;
        var beyond = entry.Beside + r + (square * (.5 + (r * (1.0 / 6)))) + (square * square * ((1.0 / 24) + (r * (1.0 / 120))));
        var exponent = k >> 7;
        return Math.Abs(exponent) < 1000
            ? Grown(entry.Power, exponent, beyond)
            : Grown(entry.Power, exponent - (Math.Sign(exponent) * 200), beyond) * (exponent > 0 ? TwoTo200 : 1 / TwoTo200);
    }

    /// <summary>power·2^exponent·(1 + beyond), where that is a normal number.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static double Grown(double power, int exponent, double beyond)
    {
        var scale = BitConverter.Int64BitsToDouble(BitConverter.DoubleToInt64Bits(power) + ((long)exponent << SignificandBits));
        return scale + (scale * beyond);
    }
}
