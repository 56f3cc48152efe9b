namespace CalcService.Engine.Numerics.Conduction;

/// <summary>A value over time, straight between its points and constant before the first and after the last.</summary>
public sealed class PiecewiseLinear
{
    private readonly double[] _times;
    private readonly double[] _values;

    /// <param name="times">Rising, s.</param>
    /// <param name="values">One for each time.</param>
    public PiecewiseLinear(IReadOnlyList<double> times, IReadOnlyList<double> values)
    {
        if (times.Count == 0 || times.Count != values.Count)
        {
            throw new ArgumentException("As many times as values, and at least one.", nameof(values));
        }

        for (var i = 1; i < times.Count; i++)
        {
            if (!(times[i] > times[i - 1]))
            {
                throw new ArgumentException("Times rise.", nameof(times));
            }
        }

        (_times, _values) = ([.. times], [.. values]);
    }

    /// <summary>A value that never changes.</summary>
    public static PiecewiseLinear Constant(double value) => new([0], [value]);

    public double At(double time)
    {
        var next = NextIndex(time);
        if (next == 0 || next == _times.Length)
        {
            return _values[next == 0 ? 0 : ^1];
        }

        return _values[next - 1] + ((time - _times[next - 1]) * Slope(next));
    }

    /// <summary>Slope just after a time.</summary>
    public double SlopeAfter(double time)
    {
        var next = NextIndex(time);
        return next == 0 || next == _times.Length ? 0 : Slope(next);
    }

    /// <summary>The next time after this one at which the slope changes; infinite where there is none.</summary>
    public double NextKinkAfter(double time)
    {
        var next = NextIndex(time);
        return next == _times.Length || _times.Length == 1 ? double.PositiveInfinity : _times[next];
    }

    private double Slope(int next) => (_values[next] - _values[next - 1]) / (_times[next] - _times[next - 1]);

    private int NextIndex(double time)
    {
        var found = Array.BinarySearch(_times, time);
        return found >= 0 ? found + 1 : ~found;
    }
}
