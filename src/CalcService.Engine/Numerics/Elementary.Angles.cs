namespace CalcService.Engine.Numerics;

/// <content>Tangent and its inverse, for the angles of cones and leaning ropes.</content>
public static partial class Elementary
{
    private const int AtanParts = 16;
    private const double RightAngle = Math.PI / 2;

    /// <summary>What the double of π/2 lacks.</summary>
    private const double RightAngleRest = 6.123233995736766e-17;

    /// <summary>arctan(i/16) in two parts.</summary>
    private static readonly (double High, double Low)[] AtanTable =
        [.. Enumerable.Range(0, AtanParts + 1).Select(i => ExactSeries.Split(ExactSeries.Atan((decimal)i / AtanParts), SignificandBits))];

    /// <summary>tan x, off by less than 3 units of the last place.</summary>
    /// <param name="x">In rad, at most a right angle to either side.</param>
    public static double Tan(double x)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(Math.Abs(x), RightAngle, nameof(x));
        var size = Math.Abs(x);
        return Math.CopySign(size <= Math.PI / 4 ? TanOf(size) : 1 / TanOf(RightAngle - size + RightAngleRest), x);
    }

    /// <summary>arctan x, off by less than 2 units of the last place.</summary>
    public static double Atan(double x) =>
        double.IsNaN(x) ? x
        : Math.Abs(x) <= 1 ? Math.CopySign(AtanOf(Math.Abs(x)), x)
        : Math.CopySign(RightAngle - (AtanOf(1 / Math.Abs(x)) - RightAngleRest), x);

    /// <summary>Sine over cosine, each by its series; from 0 to half a right angle.</summary>
    private static double TanOf(double x)
    {
        var (square, sine, cosine) = (x * x, 0.0, 0.0);
        for (var n = 19; n > 1; n -= 2)
        {
            sine = square / (n * (n - 1)) * (-1 - sine);
            cosine = square / ((n - 1) * (n - 2)) * (-1 - cosine);
        }

        return (x + (x * sine)) / (1 + cosine);
    }

    /// <summary>arctan x = arctan c + arctan((x − c)/(1 + c·x)) with the nearest c = i/16; x from 0 to 1.</summary>
    private static double AtanOf(double x)
    {
        var i = (int)Math.Round(x * AtanParts);
        var c = (double)i / AtanParts;
        var t = (x - c) / (1 + (c * x));
        var square = t * t;
        var beyond = square * ((-1.0 / 3) + (square * ((1.0 / 5) + (square * ((-1.0 / 7) + (square * ((1.0 / 9) - (square / 11))))))));
        return AtanTable[i].High + (AtanTable[i].Low + (t + (t * beyond)));
    }
}
