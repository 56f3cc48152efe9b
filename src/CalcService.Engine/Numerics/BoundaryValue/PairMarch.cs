namespace CalcService.Engine.Numerics.BoundaryValue;

/// <summary>
/// Marches two unknowns along a line, either way, with the embedded Runge–Kutta pair 5(4) of Dormand and Prince
/// (J. Comput. Appl. Math. 6, 1980, p. 19) and a step that follows the error. A kink of the slope costs small steps and
/// no accuracy.
/// </summary>
/// <param name="slope">The slope.</param>
/// <param name="tolerance">Error of a step, relative to the larger of 1 and the unknown.</param>
/// <param name="budget">Each step takes one out of it.</param>
/// <param name="cancellationToken">Ends the march.</param>
public sealed class PairMarch<TSlope>(TSlope slope, double tolerance, Budget budget, CancellationToken cancellationToken)
    where TSlope : struct, IPairSlope
{
    /// <summary>A step that has to be this short, over the whole way, will never get there.</summary>
    private const double LeastStep = 1e-12;

    private double _step;

    /// <summary>Goes from one place to another; null where the budget is spent, a number overflows or the slope has no end.</summary>
    public Pair? Go(double from, double to, Pair y)
    {
        var span = to - from;
        // The step found on the way before is a good guess for the way on.
        var step = _step > 0 ? Math.CopySign(Math.Min(_step, Math.Abs(span)), span) : span / 8;
        var x = from;
        var k1 = slope.At(x, y);
        while (Math.Abs(to - x) > Math.Abs(span) * 1e-14 && span != 0)
        {
            if (!budget.TrySpend(1))
            {
                return null;
            }

            cancellationToken.ThrowIfCancellationRequested();
            var isLast = Math.Abs(step) >= Math.Abs(to - x);
            var h = isLast ? to - x : step;
            var k2 = slope.At(x + (h / 5), y + (h * (1.0 / 5 * k1)));
            var k3 = slope.At(x + (.3 * h), y + (h * ((3.0 / 40 * k1) + (9.0 / 40 * k2))));
            var k4 = slope.At(x + (.8 * h), y + (h * ((44.0 / 45 * k1) + (-56.0 / 15 * k2) + (32.0 / 9 * k3))));
            var k5 = slope.At(x + (8.0 / 9 * h),
                y + (h * ((19372.0 / 6561 * k1) + (-25360.0 / 2187 * k2) + (64448.0 / 6561 * k3) + (-212.0 / 729 * k4))));
            var k6 = slope.At(x + h,
                y + (h * ((9017.0 / 3168 * k1) + (-355.0 / 33 * k2) + (46732.0 / 5247 * k3) + (49.0 / 176 * k4) + (-5103.0 / 18656 * k5))));
            var next = y + (h * ((35.0 / 384 * k1) + (500.0 / 1113 * k3) + (125.0 / 192 * k4) + (-2187.0 / 6784 * k5) + (11.0 / 84 * k6)));
            var k7 = slope.At(x + h, next);
            var error =
                h * ((71.0 / 57600 * k1) + (-71.0 / 16695 * k3) + (71.0 / 1920 * k4) + (-17253.0 / 339200 * k5) + (22.0 / 525 * k6)
                + (-1.0 / 40 * k7));
            var size = Math.Max(Against(error.First, y.First, next.First), Against(error.Second, y.Second, next.Second)) / tolerance;
            if (!double.IsFinite(size))
            {
                return null;
            }

            var factor = size > 0 ? Math.Clamp(.9 * Elementary.Pow(size, -.2), .2, 5) : 5;
            if (size <= 1)
            {
                (x, y, k1) = (isLast ? to : x + h, next, k7);
                // A step cut short by the end of the way says little about the next.
                _step = isLast ? Math.Max(Math.Abs(step), Math.Abs(h) * factor) : Math.Abs(h) * factor;
                step = Math.CopySign(_step, span);
            }
            else
            {
                step = h * factor;
                if (Math.Abs(step) < Math.Abs(span) * LeastStep)
                {
                    return null;
                }
            }
        }

        return y;
    }

    private static double Against(double error, double before, double after) =>
        Math.Abs(error) / Math.Max(1, Math.Max(Math.Abs(before), Math.Abs(after)));
}
