using System.Numerics;
using System.Runtime.InteropServices;

namespace CalcService.Engine.Numerics.Conduction;

/// <summary>What is done to whole arrays of numbers.</summary>
internal static class Vectors
{
    /// <summary>x += factor·y.</summary>
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

    /// <summary>Σ x·y.</summary>
    public static double Dot(ReadOnlySpan<double> x, ReadOnlySpan<double> y)
    {
        var xs = MemoryMarshal.Cast<double, Vector<double>>(x);
        var ys = MemoryMarshal.Cast<double, Vector<double>>(y);
        var total = Vector<double>.Zero;
        for (var k = 0; k < xs.Length; k++)
        {
            total += xs[k] * ys[k];
        }

        var sum = xs.Length == 0 ? 0 : Vector.Sum(total);
        for (var i = xs.Length * Vector<double>.Count; i < x.Length; i++)
        {
            sum += x[i] * y[i];
        }

        return sum;
    }
}
