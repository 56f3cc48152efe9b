using CalcService.Engine.Compounds;

namespace CalcService.Engine.Pouring;

/// <summary>
/// Every steel that the compound will touch. Wires count as steel unless they were read by themselves; a socket that
/// was read by itself counts by itself. Nothing is taken from the air.
/// </summary>
internal sealed class SteelReadings
{
    public SteelReadings(IReadOnlyList<PourEnd> ends, double? steelK)
    {
        var all = new List<Reading>();
        var isComplete = true;
        if (steelK is { } steel)
        {
            all.Add(new(Reading.Steel, PourPointers.Steel, steel));
        }

        for (var i = 0; i < ends.Count; i++)
        {
            if (ends[i].SocketTemperatureK is { } socket)
            {
                all.Add(new(Reading.Socket, $"{PourPointers.Ends}/{i}/socket/temperature", socket));
            }
            else if (steelK is null)
            {
                isComplete = false;
            }

            if (ends[i].Rope.TemperatureK is { } wires)
            {
                all.Add(new(Reading.Wires, $"{PourPointers.Ends}/{i}/rope/temperature", wires));
            }
        }

        All = [.. all];
        Coldest = isComplete ? all.MinBy(reading => reading.K) : null;
        Warmest = isComplete ? all.MaxBy(reading => reading.K) : null;
    }

    public Reading[] All { get; }

    /// <summary>Null where some steel wasn't read.</summary>
    public Reading? Coldest { get; }

    /// <summary>Null where some steel wasn't read.</summary>
    public Reading? Warmest { get; }
}
