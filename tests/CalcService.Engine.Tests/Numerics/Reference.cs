namespace CalcService.Engine.Tests.Numerics;

/// <summary>Plain textbook numerics, so that a formula can be held against what it is the closed form of.</summary>
public static class Reference
{
    /// <summary>Composite Simpson rule.</summary>
    public static double Integral(Func<double, double> f, double from, double to, int intervals = 2000)
    {
        var h = (to - from) / intervals;
        var sum = f(from) + f(to);
        for (var i = 1; i < intervals; i++)
        {
            sum += (i % 2 == 0 ? 2 : 4) * f(from + (i * h));
        }

        return sum * h / 3;
    }

    /// <summary>Classical fourth-order Runge–Kutta for y′ = f(y), from y over a time in equal steps.</summary>
    public static double RungeKutta(Func<double, double> slope, double y, double over, int steps) =>
        RungeKutta((value, _) => slope(value), y, 0, over, steps);

    /// <summary>The same for y′ = f(y, t).</summary>
    public static double RungeKutta(Func<double, double, double> slope, double y, double from, double to, int steps)
    {
        var h = (to - from) / steps;
        for (var i = 0; i < steps; i++)
        {
            var t = from + (i * h);
            var k1 = slope(y, t);
            var k2 = slope(y + (h / 2 * k1), t + (h / 2));
            var k3 = slope(y + (h / 2 * k2), t + (h / 2));
            var k4 = slope(y + (h * k3), t + h);
            y += h / 6 * (k1 + (2 * k2) + (2 * k3) + k4);
        }

        return y;
    }

    /// <summary>Root of a rising function by bisection.</summary>
    public static double Root(Func<double, double> rising, double low, double high)
    {
        for (var i = 0; i < 200; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = rising(middle) < 0 ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }
}
