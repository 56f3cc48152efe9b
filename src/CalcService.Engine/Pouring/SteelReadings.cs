namespace CalcService.Engine.Pouring;

/// <summary>A temperature read on steel.</summary>
/// <param name="Pointer">The member that gives it.</param>
/// <param name="Place">steel, socket or wires.</param>
/// <param name="K">The temperature.</param>
internal sealed record SteelReading(string Pointer, string Place, double K);

/// <summary>
/// Every steel that the compound will touch. Wires count as steel unless they were read by themselves; a socket that
/// was read by itself counts by itself. Nothing is taken from the air.
/// </summary>
internal sealed class SteelReadings
{
    public SteelReadings(IReadOnlyList<PourEnd> ends, double? steelK)
    {
        var all = new List<SteelReading>();
        var isComplete = true;
        if (steelK is { } steel)
        {
            all.Add(new(PourPointers.Steel, "steel", steel));
        }

        for (var i = 0; i < ends.Count; i++)
        {
            if (ends[i].SocketTemperatureK is { } socket)
            {
                all.Add(new($"{PourPointers.Ends}/{i}/socket/temperature", "socket", socket));
            }
            else if (steelK is null)
            {
                isComplete = false;
            }

            if (ends[i].Rope.TemperatureK is { } wires)
            {
                all.Add(new($"{PourPointers.Ends}/{i}/rope/temperature", "wires", wires));
            }
        }

        All = [.. all];
        Coldest = isComplete ? all.MinBy(reading => reading.K) : null;
        Warmest = isComplete ? all.MaxBy(reading => reading.K) : null;
    }

    public SteelReading[] All { get; }

    /// <summary>Null where some steel wasn't read.</summary>
    public SteelReading? Coldest { get; }

    /// <summary>Null where some steel wasn't read.</summary>
    public SteelReading? Warmest { get; }
}
