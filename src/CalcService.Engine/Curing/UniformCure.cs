using CalcService.Engine.Compounds;

namespace CalcService.Engine.Curing;

/// <summary>The end whose compound follows the air: its times with what governs them, and its curve.</summary>
internal sealed class UniformCure(CureScope scope, CureKinetics kinetics, TemperatureHistory air)
{
    /// <summary>Points of a curve.</summary>
    private const int CurvePoints = 49;

    private readonly UniformTimes _times = new(kinetics, air, scope.Input.Conditions.SteelK, scope.Input.Conditions.CompoundK);

    /// <summary>The coldest of air, steel and compound.</summary>
    public TemperatureHistory Colder => _times.Colder;

    /// <summary>The colder of air and steel.</summary>
    public TemperatureHistory ColderAfterGel => _times.ColderAfterGel;

    /// <summary>The warmest of air, steel and compound.</summary>
    public TemperatureHistory Warmer => _times.Warmer;

    /// <summary>Full strength by the latest times along a history, s from mixing.</summary>
    public double? FullAlong(TemperatureHistory history, double slower = 1) => _times.FullAlong(history, slower);

    /// <summary>The times with every gel time longer by a factor.</summary>
    public EndCure At(double slower)
    {
        var expected = _times.Expected(slower);
        var cure = new EndCure { ExpectedGelS = UniformTimes.GelOf(expected) };
        if (!_times.IsBounded)
        {
            return cure with { Curve = Curve(expected, null, null, air.EndS) };
        }

        var (earliest, latest, full) = (_times.Earliest(slower), _times.Latest(slower), _times.Full(slower));
        var fullS = _times.FullOf(full);
        var steelIsLate = scope.Input.Conditions.SteelK < air.At(0);
        return cure with
        {
            EarliestGelS = UniformTimes.GelOf(earliest),
            LatestGelS = UniformTimes.GelOf(latest),
            GelGovernor = scope.Input.Conditions.CompoundK < ColderAfterGel.At(0) ? Governors.Compound : steelIsLate ? Governors.Steel : Governors.Air,
            FullS = fullS,
            FullGovernor = steelIsLate ? Governors.Steel : Governors.Air,
            Curve = Curve(expected, earliest, full, fullS ?? air.EndS),
        };
    }

    /// <summary>Gel and full strength by the latest times of a pour that is made later, in seconds from that pour; steel and compound as warm as read.</summary>
    public EndCure ReleaseAt(double pourS, double slower)
    {
        var (gel, full) = _times.From(pourS, slower);
        return new() { LatestGelS = gel, FullS = full };
    }

    private List<CurvePoint> Curve(GelAge expected, GelAge? earliest, GelAge? latest, double untilS)
    {
        var points = new List<CurvePoint>(CurvePoints);
        for (var i = 0; i < CurvePoints; i++)
        {
            var seconds = Math.Round(untilS * i / (CurvePoints - 1));
            var kelvins = air.At(Math.Min(seconds, air.EndS));
            var degree = kinetics.Shape.DegreeAt(expected.At(seconds));
            points.Add(new(CureClock.At(scope.Input.MixedAt, seconds), kelvins, kelvins, kelvins, degree, degree)
            {
                CureEarliest = earliest is null ? null : kinetics.Shape.DegreeAt(earliest.At(seconds)),
                CureLatest = latest is null ? null : kinetics.Shape.DegreeAt(latest.At(seconds)),
            });
        }

        return points;
    }
}
