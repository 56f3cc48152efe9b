namespace CalcService.Engine.Compounds;

/// <summary>The temperatures that the sheet's clock goes by, before and after gel. They never hold the compound's own heat.</summary>
/// <param name="BeforeGel">Until gel.</param>
/// <param name="AfterGel">From gel on.</param>
/// <param name="MixK">The colder of air and compound at mixing: a cup of the mix stands in it.</param>
public sealed record CurePath(TemperatureHistory BeforeGel, TemperatureHistory AfterGel, double MixK)
{
    /// <summary>Until when temperatures were given; a cone is followed no longer than its release needs.</summary>
    public double KnownUntilS { get; init; } = AfterGel.EndS;

    /// <summary>
    /// The coldest of air, steel and compound, after gel of air and steel: steel outweighs the compound by far. Steel that nobody reads may
    /// be as cold as the air has been since it was last read.
    /// </summary>
    public static CurePath Uniform(TemperatureHistory air, SteelHistory steel, double compoundK)
    {
        var after = air.LowestSince(steel.LastReadS).Lower(steel.Kelvins);
        return new(after.NotAbove(compoundK), after, Math.Min(air.At(air.StartS), compoundK));
    }

    /// <summary>The same temperatures all the way.</summary>
    public static CurePath Of(TemperatureHistory history, double mixK) => new(history, history, mixK);

    /// <summary>From a later pour on, counted from it.</summary>
    public CurePath Since(double seconds) => new(BeforeGel.Since(seconds), AfterGel.Since(seconds), MixK);
}
