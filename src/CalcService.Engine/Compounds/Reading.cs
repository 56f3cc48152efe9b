namespace CalcService.Engine.Compounds;

/// <summary>A temperature that was read.</summary>
/// <param name="Place">air, steel, socket, wires or compound.</param>
/// <param name="Pointer">The member that gives it.</param>
/// <param name="K">The temperature.</param>
internal sealed record Reading(string Place, string Pointer, double K)
{
    public const string Air = "air", Steel = "steel", Socket = "socket", Wires = "wires", Compound = "compound";

    /// <summary>The place in the words of a message.</summary>
    public string Name => Place switch
    {
        Air => "Air",
        Steel => "Steel",
        Socket => "A socket",
        Wires => "A wire",
        _ => "Compound",
    };

    /// <summary>A reading that was taken, else null.</summary>
    public static Reading? Of(string place, string pointer, double? kelvins) => kelvins is { } read ? new(place, pointer, read) : null;

    /// <summary>Those of several that were taken.</summary>
    public static IReadOnlyList<Reading> Taken(params ReadOnlySpan<Reading?> readings)
    {
        var taken = new List<Reading>(readings.Length);
        foreach (var reading in readings)
        {
            if (reading is not null)
            {
                taken.Add(reading);
            }
        }

        return taken;
    }
}
