namespace CalcService.Engine.Compounds;

/// <summary>
/// Gel of a compound that follows the air, as a table on the wall has it. The band spans what the readings leave open: no sooner
/// than the warmest of air, steel and compound lets it gel, no later than the coldest.
/// </summary>
public sealed class UniformTimes
{
    private readonly CureKinetics _kinetics;
    private readonly TemperatureHistory _warmer;

    /// <param name="kinetics">Gel and cure by the sheet.</param>
    /// <param name="air">The air from mixing on.</param>
    /// <param name="steel">The steel as it was read; null where it wasn't.</param>
    /// <param name="compoundK">Compound at mixing; null where it wasn't read.</param>
    public UniformTimes(CureKinetics kinetics, TemperatureHistory air, SteelHistory? steel, double? compoundK)
    {
        (_kinetics, Air, _warmer) = (kinetics, air, air);
        if (steel is not null && compoundK is { } compound)
        {
            Path = CurePath.Uniform(air, steel, compound);
            _warmer = air.NotBelow(steel.WarmestK).NotBelow(compound);
        }
    }

    public TemperatureHistory Air { get; }

    /// <summary>The coldest of air, steel and compound; null where one of them wasn't read, so that there is no band.</summary>
    public CurePath? Path { get; }

    /// <summary>Warmest of air, steel and compound up to a time.</summary>
    public double WarmestK(double untilS) => _warmer.Extremes(0, untilS).HighestK;

    /// <summary>Age along the air, by the expected times.</summary>
    public GelAge Expected(double slower = 1) => Age(_kinetics.Expected.Slower(slower), Air);

    /// <summary>Age by the earliest times where it is warmest.</summary>
    public GelAge Earliest() => Age(_kinetics.Earliest, _warmer);

    private GelAge Age(GelCurve curve, TemperatureHistory history) =>
        GelAge.Along(curve, history, _kinetics.Ceiling, 3 * _kinetics.FullAge);
}
