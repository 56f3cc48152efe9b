namespace CalcService.Engine.Numerics.Charts;

/// <summary>A signal of a control chart.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Index">Index of the value that completed the pattern.</param>
public readonly record struct ChartSignal(string Rule, int Index);

/// <summary>
/// Patterns that chance hardly makes: the zone rules of Western Electric and the runs that are looked for beside them (NIST/SEMATECH
/// 6.3.2).
/// </summary>
public static class ZoneRules
{
    /// <summary>Rule names with the values of one side that they want beyond a zone: so many of so many.</summary>
    private static readonly (string Name, int Least, int Of, double Beyond)[] Zones =
    [
        ("one-beyond-three", 1, 1, 3), ("two-of-three-beyond-two", 2, 3, 2), ("four-of-five-beyond-one", 4, 5, 1),
            ("eight-on-one-side", 8, 8, 0),
    ];

    /// <summary>Values that rise or fall one after another.</summary>
    private const int Trend = 6;

    /// <summary>Values that go up and down in turn.</summary>
    private const int Turns = 14;

    /// <summary>Every signal, in the order of the values.</summary>
    public static IReadOnlyList<ChartSignal> Find(IReadOnlyList<double> values, double centre, double deviation)
    {
        var signals = new List<ChartSignal>();
        for (var i = 0; i < values.Count; i++)
        {
            foreach (var zone in Zones)
            {
                if (IsZone(values, i, zone.Least, zone.Of, centre, zone.Beyond * deviation, 1)
                    || IsZone(values, i, zone.Least, zone.Of, centre, zone.Beyond * deviation, -1))
                {
                    signals.Add(new(zone.Name, i));
                }
            }

            if (IsRun(values, i, Trend, alternating: false))
            {
                signals.Add(new("six-in-a-trend", i));
            }

            if (IsRun(values, i, Turns, alternating: true))
            {
                signals.Add(new("fourteen-up-and-down", i));
            }
        }

        return signals;
    }

    /// <summary>The value itself lies beyond the zone on this side, and so many of the last ones with it.</summary>
    private static bool IsZone(IReadOnlyList<double> values, int last, int least, int of, double centre, double width, int side)
    {
        bool Beyond(int i) => side * (values[i] - centre) > width;
        if (!Beyond(last) || last + 1 < least)
        {
            return false;
        }

        var found = 0;
        for (var i = Math.Max(0, last - of + 1); i <= last; i++)
        {
            found += Beyond(i) ? 1 : 0;
        }

        return found >= least;
    }

    private static bool IsRun(IReadOnlyList<double> values, int last, int length, bool alternating)
    {
        if (last + 1 < length)
        {
            return false;
        }

        var first = Math.Sign(values[last - length + 2] - values[last - length + 1]);
        for (var i = last - length + 2; i <= last; i++)
        {
            var step = Math.Sign(values[i] - values[i - 1]);
            var expected = alternating && (i - (last - length + 2)) % 2 == 1 ? -first : first;
            if (step == 0 || step != expected)
            {
                return false;
            }
        }

        return true;
    }
}
