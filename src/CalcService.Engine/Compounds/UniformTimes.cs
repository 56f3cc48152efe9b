namespace CalcService.Engine.Compounds;

/// <summary>
/// Gel and cure of a compound that follows the air, as a table on the wall has it. The band spans what the readings leave open: no sooner
/// than the warmest of air, steel and compound lets it gel, no later than the coldest; what comes after the gel goes by the colder of air
/// and steel, since steel outweighs the compound by far.
/// </summary>
public sealed class UniformTimes
{
    /// <summary>Ageing is followed a little beyond full strength, for a curve.</summary>
    private const double BeyondFull = 3;

    private readonly CureKinetics _kinetics;

    /// <param name="kinetics">Gel and cure by the sheet.</param>
    /// <param name="air">The air from mixing on.</param>
    /// <param name="steelK">Steel at mixing; null where it wasn't read.</param>
    /// <param name="compoundK">Compound at mixing; null where it wasn't read.</param>
    public UniformTimes(CureKinetics kinetics, TemperatureHistory air, double? steelK, double? compoundK)
    {
        (_kinetics, Air) = (kinetics, air);
        Colder = Warmer = ColderAfterGel = air;
        if (steelK is { } steel && compoundK is { } compound)
        {
            IsBounded = true;
            ColderAfterGel = air.NotAbove(steel);
            Colder = ColderAfterGel.NotAbove(compound);
            Warmer = air.NotBelow(steel).NotBelow(compound);
        }
    }

    public TemperatureHistory Air { get; }

    /// <summary>Whether steel and compound were read, so that there is a band.</summary>
    public bool IsBounded { get; }

    /// <summary>The coldest of air, steel and compound.</summary>
    public TemperatureHistory Colder { get; }

    /// <summary>The colder of air and steel.</summary>
    public TemperatureHistory ColderAfterGel { get; }

    /// <summary>The warmest of air, steel and compound.</summary>
    public TemperatureHistory Warmer { get; }

    /// <summary>Age along the air, by the expected times.</summary>
    public GelAge Expected(double slower = 1) => Age(_kinetics.Expected, Air, slower);

    /// <summary>Age by the earliest times where it is warmest.</summary>
    public GelAge Earliest(double slower = 1) => Age(_kinetics.Earliest, Warmer, slower);

    /// <summary>Age by the latest times where it is coldest.</summary>
    public GelAge Latest(double slower = 1) => Age(_kinetics.Latest, Colder, slower);

    /// <summary>Age towards full strength, by the latest times.</summary>
    public GelAge Full(double slower = 1) => Age(_kinetics.Latest, ColderAfterGel, slower);

    /// <summary>When it has gelled, s from the start.</summary>
    public static double? GelOf(GelAge age) => age.TimeOf(1);

    /// <summary>When it has its full strength, s from the start.</summary>
    public double? FullOf(GelAge age) => age.TimeOf(_kinetics.FullAge);

    /// <summary>Full strength by the latest times along a history, s from its start.</summary>
    public double? FullAlong(TemperatureHistory history, double slower = 1) => FullOf(Age(_kinetics.Latest, history, slower, _kinetics.FullAge));

    /// <summary>Gel and full strength by the latest times of a pour that is made later, s from that pour.</summary>
    public (double? LatestGelS, double? FullS) From(double pourS, double slower)
    {
        // Ages count from the pour, and so do the times.
        double? After(TemperatureHistory history, double age) => Age(_kinetics.Latest, history.From(pourS), slower, age).TimeOf(age) - pourS;
        return (After(Colder, 1), After(ColderAfterGel, _kinetics.FullAge));
    }

    private GelAge Age(GelCurve curve, TemperatureHistory history, double slower, double? enough = null) =>
        GelAge.Along(slower == 1 ? curve : curve.Slower(slower), history, _kinetics.Ceiling, enough ?? (BeyondFull * _kinetics.FullAge));
}
