using System.Numerics;
using System.Runtime.InteropServices;

namespace CalcService.Engine.Numerics.Conduction;

/// <summary>What is done to whole arrays of numbers.</summary>
internal static class Vectors
{
    /// <summary>x += factor·y, each number by itself, so that it is the same whatever the width of a vector.</summary>
    public static void Add(Span<double> x, double factor, ReadOnlySpan<double> y)
    {
        var xs = MemoryMarshal.Cast<double, Vector<double>>(x);
        var ys = MemoryMarshal.Cast<double, Vector<double>>(y);
        var by = new Vector<double>(factor);
        for (var k = 0; k < xs.Length; k++)
        {
            xs[k] += by * ys[k];
        }

        for (var i = xs.Length * Vector<double>.Count; i < x.Length; i++)
        {
            x[i] += factor * y[i];
        }
    }

    /// <summary>Σ x·y, four sums side by side whatever the processor could add at once: the order decides the last bits.</summary>
    public static double Dot(ReadOnlySpan<double> x, ReadOnlySpan<double> y)
    {
        var (first, second, third, fourth) = (0.0, 0.0, 0.0, 0.0);
        var i = 0;
        for (; i <= x.Length - 4; i += 4)
        {
            first += x[i] * y[i];
            second += x[i + 1] * y[i + 1];
            third += x[i + 2] * y[i + 2];
            fourth += x[i + 3] * y[i + 3];
        }

        var sum = first + third + (second + fourth);
        for (; i < x.Length; i++)
        {
            sum += x[i] * y[i];
        }

        return sum;
    }
}
