using CalcService.Engine.Numerics;
using CalcService.Engine.Numerics.BoundaryValue;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Cones;

/// <summary>Where a march starts: the end of the contact, and how far the mouth has seated beyond touching.</summary>
internal readonly record struct ConeEdge(double AtM, double BeyondM);

/// <summary>One cone under one load: seeks the edge from which the march meets the load, and walks the cone from there.</summary>
internal sealed class ConeShot
{
    private const double StepTolerance = 1e-11;
    private const double LoadTolerance = 1e-11;

    private readonly Cone _cone;
    private readonly double _load;
    private readonly Trace _trace;
    private readonly double _stiffness;
    private readonly double _scale;
    private readonly ConeSlope _slope;
    private readonly PairMarch<ConeSlope> _march;

    public ConeShot(Cone cone, double loadN, Trace trace, Budget budget, CancellationToken cancellationToken)
    {
        (_cone, _load, _trace) = (cone, loadN, trace);
        var basket = cone.Basket;
        _stiffness = ConeFormulas.RadialStiffnessPa(
            cone.RadialModulusPa, cone.PoissonRatio, cone.WallRatioAt(0), cone.SocketModulusPa, cone.SocketPoissonRatio, trace);
        _scale = ConeFormulas.RigidSeatM(
            loadN, 0, basket.Taper, cone.Friction, cone.RadiusAtM(0), cone.RadiusAtM(basket.LengthM), basket.LengthM, _stiffness, trace);
        _slope = new(cone, _scale, loadN);
        _march = new(_slope, StepTolerance, budget, cancellationToken);
    }

    public ConeState? Solve(int intervals) => FindEdge() is { } edge ? Walk(edge, intervals) : null;

    /// <summary>Without a load: the cone has shrunk off the wall and just touches at the small end.</summary>
    public ConeState? Rest(int intervals)
    {
        var stations = new ConeStation[intervals + 1];
        return WalkFree(default, stations) ? new(0, 0, null, 0, 0, stations) : null;
    }

    /// <summary>Force at the small end, over the load, that an edge gives. It rises with the edge.</summary>
    public double? ForceAt(ConeEdge edge) => _march.Go(edge.AtM, 0, Start(edge))?.Second;

    private Pair Start(ConeEdge edge) => new(edge.BeyondM / _scale, 0);

    private ConeEdge? FindEdge()
    {
        var length = _cone.Basket.LengthM;
        if (ForceAt(new(length, 0)) is not { } full)
        {
            return null;
        }

        if (full >= 1)
        {
            // Near the small end the force grows with the square of the contact, so its root is nearly straight.
            var at = RisingRoot.Find(x => x > 0 ? Root(ForceAt(new(x, 0))) : -1, (0, -1), (length, Math.Sqrt(full) - 1), LoadTolerance);
            return at is { } edge ? new(edge, 0) : null;
        }

        // Once all bears the force is a straight line of the seating, so the second try meets it.
        var far = _scale;
        double? reached;
        while ((reached = ForceAt(new(length, far))) < 1)
        {
            far *= 2;
        }

        return reached is { } value
            && RisingRoot.Find(x => ForceAt(new(length, x)) - 1, (0, full - 1), (far, value - 1), LoadTolerance) is { } more
            ? new(length, more)
            : null;
    }

    private static double? Root(double? share) => share is { } value ? Math.Sqrt(Math.Max(0, value)) - 1 : null;

    private ConeState? Walk(ConeEdge edge, int intervals)
    {
        var stations = new ConeStation[intervals + 1];
        return WalkFree(edge, stations) && WalkBearing(edge, stations) is { } lipForce ? Finish(edge, stations, lipForce) : null;
    }

    /// <summary>Beyond the edge no force is left in the cone: there it only shrinks.</summary>
    private bool WalkFree(ConeEdge edge, ConeStation[] stations)
    {
        var (x, y) = (edge.AtM, Start(edge));
        for (var i = FirstFree(edge, stations); i < stations.Length; i++)
        {
            if (_march.Go(x, PlaceOf(i, stations), y) is not { } next)
            {
                return false;
            }

            (x, y) = (PlaceOf(i, stations), next with { Second = 0 });
            stations[i] = Station(x, y, pressurePa: 0);
        }

        return true;
    }

    /// <summary>From the edge to the small end; gives the force at the end of the lip.</summary>
    private double? WalkBearing(ConeEdge edge, ConeStation[] stations)
    {
        var lipForce = 0.0;
        var (x, y) = (edge.AtM, Start(edge));
        for (var i = FirstFree(edge, stations) - 1; i >= 0; i--)
        {
            var at = PlaceOf(i, stations);
            // The end of the lip lies between two stations: stop there on the way.
            if (x > LipM && at <= LipM)
            {
                if (_march.Go(x, LipM, y) is not { } atLip)
                {
                    return null;
                }

                (x, y, lipForce) = (LipM, atLip, atLip.Second * _load);
            }

            if (_march.Go(x, at, y) is not { } next)
            {
                return null;
            }

            (x, y) = (at, next);
            stations[i] = Station(x, y, _slope.PressureAt(x, y.First * _scale, y.Second * _load));
        }

        return lipForce;
    }

    private double LipM => Math.Min(ConeLoad.LipM, _cone.Basket.LengthM);

    private double PlaceOf(int station, ConeStation[] stations) => _cone.Basket.LengthM * station / (stations.Length - 1);

    /// <summary>The first station beyond the edge; none where the whole length bears.</summary>
    private int FirstFree(ConeEdge edge, ConeStation[] stations)
    {
        var i = 0;
        while (i < stations.Length && (PlaceOf(i, stations) < edge.AtM || edge.AtM >= _cone.Basket.LengthM))
        {
            i++;
        }

        return i;
    }

    private ConeStation Station(double x, Pair y, double pressurePa) => new(
        x,
        (y.First * _scale) + (_cone.Shrinkage * _cone.RadiusAtM(x) / _cone.Basket.Taper),
        y.Second * _load,
        pressurePa,
        pressurePa * ConeFormulas.LameFactor(_cone.WallRatioAt(x)));

    private ConeState Finish(ConeEdge edge, ConeStation[] stations, double lipForce)
    {
        var third = (stations.Length - 1) / 3;
        var (one, two) = (stations[third].ForceN / _load, stations[2 * third].ForceN / _load);
        double Mean(double loadN, double toM, Trace trace) =>
            ConeFormulas.MeanPressurePa(loadN, _cone.Basket.Taper, _cone.Friction, _cone.RadiusAtM(0), _cone.RadiusAtM(toM), trace);
        stations[0] = SmallEnd(stations[0]);
        return new(_load, edge.AtM, new(1 - one, one - two, two), Mean(_load - lipForce, LipM, Trace.None),
            Mean(_load, _cone.Basket.LengthM, _trace), stations);
    }

    /// <summary>
    /// Writes the laws at the small end, where the cone carries the whole load. Its pressure is the march's, which hangs on the seating
    /// beyond touching: in s that hides in the last digits where the load is small. The trace has the same law with s.
    /// </summary>
    private ConeStation SmallEnd(ConeStation marched)
    {
        var (cone, radius, ratio) = (_cone, _cone.RadiusAtM(0), _cone.WallRatioAt(0));
        var area = Math.PI * radius * radius;
        var axial = ConeFormulas.AxialStiffnessN(cone.WireModulusPa, cone.WireAreaM2, cone.CompoundModulusPa, area, _trace);
        ConeFormulas.AxialShrinkage(cone.Shrinkage, cone.CompoundModulusPa, area, cone.WireAreaM2, axial, _trace);
        ConeFormulas.PressurePa(_stiffness, marched.SeatM, cone.Basket.Taper, radius, cone.Shrinkage, cone.PoissonRatio, _load, axial,
            cone.SocketPoissonRatio, cone.SocketModulusPa * area * ((ratio * ratio) - 1), _trace);
        return marched with { HoopPa = ConeFormulas.HoopStressPa(marched.PressurePa, ratio, _trace) };
    }
}
