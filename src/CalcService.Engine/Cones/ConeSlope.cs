using CalcService.Engine.Numerics.BoundaryValue;

namespace CalcService.Engine.Cones;

/// <summary>
/// The two equations of the cone along its axis, for the seating beyond touching w = s − ε·r/tan α over
/// <paramref name="scaleM"/> and the force N over <paramref name="loadN"/>: the pressure hangs on w, which s would hide in
/// its last digits where the load is small. The socket is held at its small end, so its wall carries N too, as compression.
/// </summary>
internal readonly struct ConeSlope(Cone cone, double scaleM, double loadN) : IPairSlope
{
    private readonly double _taper = cone.Basket.Taper;
    private readonly double _smallRadius = cone.Basket.SmallEndDiameterM / 2;
    private readonly double _outerSmall = cone.OuterAtSmallEndM / 2;
    private readonly double _outerTaper = (cone.OuterAtMouthM - cone.OuterAtSmallEndM) / (2 * cone.Basket.LengthM);
    private readonly double _friction = cone.Friction;
    private readonly double _shrinkage = cone.Shrinkage;
    private readonly double _compound = cone.CompoundModulusPa;
    private readonly double _wires = (cone.WireModulusPa - cone.CompoundModulusPa) * cone.WireAreaM2;
    private readonly double _wireStiffness = cone.WireModulusPa * cone.WireAreaM2;
    private readonly double _plug = (1 - cone.PoissonRatio) / cone.RadialModulusPa;
    private readonly double _poisson = cone.PoissonRatio;
    private readonly double _socket = cone.SocketModulusPa;
    private readonly double _socketPoisson = cone.SocketPoissonRatio;
    private readonly double _scale = scaleM;
    private readonly double _load = loadN;

    public Pair At(double x, Pair y)
    {
        var (beyond, force) = (y.First * _scale, y.Second * _load);
        var place = Place(x);
        var pressure = Pressure(place, beyond, force);
        var stretch = (force / place.AxialStiffness) + (2 * _poisson * pressure * place.Area / place.AxialStiffness);
        var wall = (force / place.SocketStiffness) + (2 * _socketPoisson * pressure * place.Area / place.SocketStiffness);
        var forceSlope = -2 * Math.PI * place.Radius * pressure * (_taper + _friction);
        return new(-(place.HeldShrinkage + stretch + wall) / _scale, forceSlope / _load);
    }

    public double PressureAt(double x, double beyondM, double forceN) => Pressure(Place(x), beyondM, forceN);

    private double Pressure(in Section place, double beyond, double force)
    {
        var squeeze =
            (beyond * _taper / place.Radius) - (_poisson * force / place.AxialStiffness) - (_socketPoisson * force / place.SocketStiffness);
        return squeeze > 0 ? squeeze / place.Compliance : 0;
    }

    private Section Place(double x)
    {
        var radius = _smallRadius + (_taper * x);
        var area = Math.PI * radius * radius;
        var axial = (_compound * area) + _wires;
        var ratio = (_outerSmall + (_outerTaper * x)) / radius;
        var wall = (ratio * ratio) - 1;
        return new(radius, area, axial, _shrinkage * _wireStiffness / axial, _socket * area * wall,
            _plug + (((((ratio * ratio) + 1) / wall) + _socketPoisson) / _socket));
    }

    // HeldShrinkage is ε − ε_z: what the wires hold back of the shrinkage along the axis.
    private readonly record struct Section(double Radius, double Area, double AxialStiffness, double HeldShrinkage, double SocketStiffness,
        double Compliance);
}
