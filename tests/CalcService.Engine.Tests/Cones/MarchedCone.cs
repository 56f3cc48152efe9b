using CalcService.Engine.Cones;

namespace CalcService.Engine.Tests.Cones;

/// <summary>
/// The equations of docs/termination-matches.md written a second time, in mm and N, marched in equal Runge–Kutta steps and
/// matched to the load by halving. It shares nothing with the engine but the equations.
/// </summary>
public sealed class MarchedCone(Cone cone, double loadN, int steps = 2000)
{
    private readonly double _t = (cone.Basket.LargeEndDiameterM - cone.Basket.SmallEndDiameterM) / 2 / cone.Basket.LengthM;
    private readonly double _length = cone.Basket.LengthM * 1e3;
    private readonly double _aw = cone.WireAreaM2 * 1e6;
    private readonly double _ew = cone.WireModulusPa * 1e-6;
    private readonly double _em = cone.CompoundModulusPa * 1e-6;
    private readonly double _es = cone.SocketModulusPa * 1e-6;

    /// <summary>Seating (mm), force (N) and pressure (MPa) from the small end on, and the end of the contact (mm).</summary>
    public ((double X, double S, double N, double P)[] Path, double ContactTo) Solve()
    {
        var (low, high) = (0.0, 2 * _length);
        while (March(high)[0].N < loadN)
        {
            high *= 2;
        }

        for (var i = 0; i < 80; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = March(middle)[0].N < loadN ? (middle, high) : (low, middle);
        }

        return (March(high), Math.Min(high, _length));
    }

    /// <summary>From an edge of the contact below the length, or for more from the mouth seated that much further.</summary>
    private (double X, double S, double N, double P)[] March(double edge)
    {
        var x = Math.Min(edge, _length);
        var (s, n) = ((cone.Shrinkage * Radius(x) / _t) + (Math.Max(0, edge - _length) * .01), 0.0);
        var h = -x / steps;
        var path = new (double, double, double, double)[steps + 1];
        for (var i = steps; ; i--)
        {
            path[i] = (x, s, n, Slopes(x, s, n).P);
            if (i == 0)
            {
                return path;
            }

            var a = Slopes(x, s, n);
            var b = Slopes(x + (h / 2), s + (h / 2 * a.S), n + (h / 2 * a.N));
            var c = Slopes(x + (h / 2), s + (h / 2 * b.S), n + (h / 2 * b.N));
            var d = Slopes(x + h, s + (h * c.S), n + (h * c.N));
            s += h / 6 * (a.S + (2 * b.S) + (2 * c.S) + d.S);
            n += h / 6 * (a.N + (2 * b.N) + (2 * c.N) + d.N);
            x += h;
        }
    }

    private double Radius(double x) => (cone.Basket.SmallEndDiameterM * 500) + (_t * x);

    private (double S, double N, double P) Slopes(double x, double s, double n)
    {
        var r = Radius(x);
        var outer = (cone.OuterAtSmallEndM * 500) + ((cone.OuterAtMouthM - cone.OuterAtSmallEndM) * 500 * x / _length);
        var ratio2 = outer * outer / (r * r);
        var area = Math.PI * r * r;
        var ez = ((_ew * _aw) + (_em * (area - _aw))) / area;
        var epsZ = cone.Shrinkage * _em * (area - _aw) / (ez * area);
        var wall = area * (ratio2 - 1);
        var c = ((1 - cone.PoissonRatio) / (cone.RadialModulusPa * 1e-6))
            + ((((ratio2 + 1) / (ratio2 - 1)) + cone.SocketPoissonRatio) / _es);
        var p = Math.Max(0,
            ((s * _t / r) - cone.Shrinkage - (cone.PoissonRatio * n / (ez * area)) - (cone.SocketPoissonRatio * n / (_es * wall))) / c);
        var slopeS = (-n / (ez * area)) - (2 * cone.PoissonRatio * p / ez)
            + epsZ - (n / (_es * wall)) - (2 * cone.SocketPoissonRatio * p / (_es * (ratio2 - 1)));
        return (slopeS, -2 * Math.PI * r * p * (_t + cone.Friction), p);
    }
}
