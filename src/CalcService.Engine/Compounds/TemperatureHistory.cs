namespace CalcService.Engine.Compounds;

/// <summary>
/// A temperature over time: straight between its points, however far apart they are. It says nothing before its first
/// point and after its last one.
/// </summary>
public sealed class TemperatureHistory
{
    private readonly double[] _seconds;
    private readonly double[] _kelvins;

    /// <param name="seconds">Times, rising.</param>
    /// <param name="kelvins">Temperature at each of them.</param>
    public TemperatureHistory(IReadOnlyList<double> seconds, IReadOnlyList<double> kelvins)
    {
        _seconds = [.. seconds];
        _kelvins = [.. kelvins];
    }

    /// <summary>Times of the points, s.</summary>
    public ReadOnlySpan<double> Seconds => _seconds;

    /// <summary>Temperatures of the points.</summary>
    public ReadOnlySpan<double> Kelvins => _kelvins;

    public double StartS => _seconds[0];

    public double EndS => _seconds[^1];

    /// <summary>A temperature that stays as it is.</summary>
    public static TemperatureHistory Constant(double kelvins, double startS, double endS) => new([startS, endS], [kelvins, kelvins]);

    /// <summary>Whether it says something about a time.</summary>
    public bool Covers(double seconds) => seconds >= StartS && seconds <= EndS;

    /// <summary>The temperature at a time that it covers.</summary>
    public double At(double seconds)
    {
        var found = Array.BinarySearch(_seconds, seconds);
        if (found >= 0)
        {
            return _kelvins[found];
        }

        var after = Math.Clamp(~found, 1, _seconds.Length - 1);
        var share = (seconds - _seconds[after - 1]) / (_seconds[after] - _seconds[after - 1]);
        return _kelvins[after - 1] + (share * (_kelvins[after] - _kelvins[after - 1]));
    }

    /// <summary>The part of it that begins at a time that it covers.</summary>
    public TemperatureHistory From(double seconds)
    {
        var after = Array.FindIndex(_seconds, time => time > seconds);
        return after < 0
            ? new([seconds, seconds], [At(seconds), At(seconds)])
            : new([seconds, .. _seconds[after..]], [At(seconds), .. _kelvins[after..]]);
    }

    /// <summary>The same, nowhere above a temperature.</summary>
    public TemperatureHistory NotAbove(double kelvins) => Bent(kelvins, Math.Min);

    /// <summary>The same, nowhere below a temperature.</summary>
    public TemperatureHistory NotBelow(double kelvins) => Bent(kelvins, Math.Max);

    /// <summary>Bends the line at a temperature; where it passes it between two points there is a point more.</summary>
    private TemperatureHistory Bent(double kelvins, Func<double, double, double> choose)
    {
        var seconds = new List<double>(_seconds.Length + 2);
        var temperatures = new List<double>(_seconds.Length + 2);
        for (var i = 0; i < _seconds.Length; i++)
        {
            if (i > 0 && (_kelvins[i - 1] - kelvins) * (_kelvins[i] - kelvins) < 0)
            {
                var share = (kelvins - _kelvins[i - 1]) / (_kelvins[i] - _kelvins[i - 1]);
                seconds.Add(_seconds[i - 1] + (share * (_seconds[i] - _seconds[i - 1])));
                temperatures.Add(kelvins);
            }

            seconds.Add(_seconds[i]);
            temperatures.Add(choose(_kelvins[i], kelvins));
        }

        return new(seconds, temperatures);
    }
}
