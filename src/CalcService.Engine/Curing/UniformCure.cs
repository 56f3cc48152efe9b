using CalcService.Engine.Compounds;

namespace CalcService.Engine.Curing;

/// <summary>
/// The compound follows the air, as a table on the wall has it. The band spans what the readings leave open: no sooner than the warmest of
/// air, steel and compound lets it gel, no later than the coldest; what comes after the gel goes by the colder of air and steel, since
/// steel outweighs the compound by far.
/// </summary>
internal sealed class UniformCure
{
    /// <summary>Points of a curve.</summary>
    private const int CurvePoints = 49;

    /// <summary>Ageing is followed a little beyond full strength, for the curve.</summary>
    private const double BeyondFull = 3;

    private readonly CureScope _scope;
    private readonly CureKinetics _kinetics;
    private readonly TemperatureHistory _air;
    private readonly bool _isBounded;

    public UniformCure(CureScope scope, CureKinetics kinetics, TemperatureHistory air)
    {
        (_scope, _kinetics, _air) = (scope, kinetics, air);
        Colder = Warmer = ColderAfterGel = air;
        if (scope.Input.Conditions is { SteelK: { } steel, CompoundK: { } compound })
        {
            _isBounded = true;
            ColderAfterGel = air.NotAbove(steel);
            Colder = ColderAfterGel.NotAbove(compound);
            Warmer = air.NotBelow(steel).NotBelow(compound);
        }
    }

    /// <summary>The coldest of air, steel and compound.</summary>
    public TemperatureHistory Colder { get; }

    /// <summary>The colder of air and steel.</summary>
    public TemperatureHistory ColderAfterGel { get; }

    /// <summary>The warmest of air, steel and compound.</summary>
    public TemperatureHistory Warmer { get; }

    /// <summary>Full strength by the latest times along a history, s from mixing.</summary>
    public double? FullAlong(TemperatureHistory history, double slower = 1) =>
        Age(_kinetics.Latest, history, slower, _kinetics.FullAge).TimeOf(_kinetics.FullAge);

    /// <summary>The times with every gel time longer by a factor.</summary>
    public EndCure At(double slower)
    {
        var expected = Age(_kinetics.Expected, _air, slower);
        var cure = new EndCure { ExpectedGelS = Gel(expected) };
        if (!_isBounded)
        {
            return cure with { Curve = Curve(expected, null, null, _air.EndS) };
        }

        var earliest = Age(_kinetics.Earliest, Warmer, slower);
        var latest = Age(_kinetics.Latest, Colder, slower);
        var full = Age(_kinetics.Latest, ColderAfterGel, slower);
        var fullS = full.TimeOf(_kinetics.FullAge);
        var steelIsLate = _scope.Input.Conditions.SteelK < _air.At(0);
        return cure with
        {
            EarliestGelS = Gel(earliest),
            LatestGelS = Gel(latest),
            GelGovernor = _scope.Input.Conditions.CompoundK < ColderAfterGel.At(0) ? Governors.Compound : steelIsLate ? Governors.Steel : Governors.Air,
            FullS = fullS,
            FullGovernor = steelIsLate ? Governors.Steel : Governors.Air,
            Curve = Curve(expected, earliest, full, fullS ?? _air.EndS),
        };
    }

    /// <summary>Gel and full strength by the latest times of a pour that is made later, in seconds from that pour; steel and compound as warm as read.</summary>
    public EndCure ReleaseAt(double pourS, double slower)
    {
        // Ages count from the pour, and so do the times.
        double? After(TemperatureHistory history, double age) =>
            Age(_kinetics.Latest, history.From(pourS), slower, age).TimeOf(age) - pourS;
        return new() { LatestGelS = After(Colder, 1), FullS = After(ColderAfterGel, _kinetics.FullAge) };
    }

    private static double? Gel(GelAge age) => age.TimeOf(1);

    private GelAge Age(GelCurve curve, TemperatureHistory history, double slower, double? enough = null) =>
        GelAge.Along(slower == 1 ? curve : curve.Slower(slower), history, _kinetics.Ceiling, enough ?? (BeyondFull * _kinetics.FullAge));

    private List<CurvePoint> Curve(GelAge expected, GelAge? earliest, GelAge? latest, double untilS)
    {
        var points = new List<CurvePoint>(CurvePoints);
        for (var i = 0; i < CurvePoints; i++)
        {
            var seconds = Math.Round(untilS * i / (CurvePoints - 1));
            var air = _air.At(Math.Min(seconds, _air.EndS));
            var degree = _kinetics.Shape.DegreeAt(expected.At(seconds));
            points.Add(new(CureClock.At(_scope.Input.MixedAt, seconds), air, air, air, degree, degree)
            {
                CureEarliest = earliest is null ? null : _kinetics.Shape.DegreeAt(earliest.At(seconds)),
                CureLatest = latest is null ? null : _kinetics.Shape.DegreeAt(latest.At(seconds)),
            });
        }

        return points;
    }
}
