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

    /// <summary>The part of it that begins at a time that it covers, counted from that time.</summary>
    public TemperatureHistory Since(double seconds)
    {
        var part = From(seconds);
        return new([.. part._seconds.Select(time => time - seconds)], part._kelvins);
    }

    /// <summary>Lowest and highest temperature from one time to another, both cut to what it covers.</summary>
    public (double LowestK, double HighestK) Extremes(double fromS, double toS)
    {
        var (first, last) = (At(Math.Clamp(fromS, StartS, EndS)), At(Math.Clamp(toS, StartS, EndS)));
        var (lowest, highest) = (Math.Min(first, last), Math.Max(first, last));
        for (var i = 0; i < _seconds.Length; i++)
        {
            if (_seconds[i] > fromS && _seconds[i] < toS)
            {
                (lowest, highest) = (Math.Min(lowest, _kelvins[i]), Math.Max(highest, _kelvins[i]));
            }
        }

        return (lowest, highest);
    }

    /// <summary>From a time on the lowest that it has been since then: what was chilled stays chilled.</summary>
    public TemperatureHistory LowestSince(double fromS)
    {
        if (fromS >= EndS)
        {
            return this;
        }

        var (seconds, kelvins) = (new List<double>(), new List<double>());
        for (var i = 0; i < _seconds.Length && _seconds[i] < fromS; i++)
        {
            seconds.Add(_seconds[i]);
            kelvins.Add(_kelvins[i]);
        }

        var rest = From(Math.Max(fromS, StartS));
        var lowest = rest._kelvins[0];
        seconds.Add(rest._seconds[0]);
        kelvins.Add(lowest);
        for (var i = 1; i < rest._seconds.Length; i++)
        {
            var (before, after) = (rest._kelvins[i - 1], rest._kelvins[i]);
            if (after < lowest && before > lowest)
            {
                // It comes back down to where it was.
                seconds.Add(rest._seconds[i - 1] + ((before - lowest) / (before - after) * (rest._seconds[i] - rest._seconds[i - 1])));
                kelvins.Add(lowest);
            }

            lowest = Math.Min(lowest, after);
            seconds.Add(rest._seconds[i]);
            kelvins.Add(lowest);
        }

        return new(seconds, kelvins);
    }

    /// <summary>The lower of both at every time that both cover.</summary>
    public TemperatureHistory Lower(TemperatureHistory other)
    {
        var (from, to) = (Math.Max(StartS, other.StartS), Math.Min(EndS, other.EndS));
        double[] times = [from, .. _seconds.Concat(other._seconds).Where(time => time > from && time < to).Distinct().Order(), to];
        var (seconds, kelvins) = (new List<double>(times.Length), new List<double>(times.Length));
        var gap = 0.0;
        for (var i = 0; i < times.Length; i++)
        {
            var (here, there) = (At(times[i]), other.At(times[i]));
            if (i > 0 && gap * (here - there) < 0)
            {
                var at = times[i - 1] + (gap / (gap - (here - there)) * (times[i] - times[i - 1]));
                seconds.Add(at);
                kelvins.Add(Math.Min(At(at), other.At(at)));
            }

            seconds.Add(times[i]);
            kelvins.Add(Math.Min(here, there));
            gap = here - there;
        }

        return new(seconds, kelvins);
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
