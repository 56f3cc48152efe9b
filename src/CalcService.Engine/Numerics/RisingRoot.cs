namespace CalcService.Engine.Numerics;

/// <summary>
/// The place where a rising function passes zero: the secant between two ends of which one is below and one above, with
/// the weight of an end halved that stays twice (the Illinois rule), and a halving whenever that is slow.
/// </summary>
public static class RisingRoot
{
    private const int MostSteps = 120;

    /// <summary>Null where the function has no value, or the ends don't enclose the root.</summary>
    /// <param name="function">The function; null ends the search.</param>
    /// <param name="low">An end with its value, not above zero.</param>
    /// <param name="high">An end with its value, not below zero.</param>
    /// <param name="tolerance">Value that counts as zero.</param>
    public static double? Find(Func<double, double?> function, (double At, double Value) low, (double At, double Value) high,
        double tolerance)
    {
        if (!(low.Value <= 0 && high.Value >= 0))
        {
            return null;
        }

        var (lowWeight, highWeight, stayed) = (low.Value, high.Value, 0);
        for (var i = 0; i < MostSteps; i++)
        {
            if (-low.Value <= tolerance)
            {
                return low.At;
            }

            if (high.Value <= tolerance || high.At - low.At <= 1e-15 * Math.Abs(high.At))
            {
                return high.At;
            }

            var secant = low.At + ((high.At - low.At) * lowWeight / (lowWeight - highWeight));
            var at = i % 8 == 7 || !(secant > low.At && secant < high.At) ? low.At + ((high.At - low.At) / 2) : secant;
            if (function(at) is not { } value)
            {
                return null;
            }

            if (value < 0)
            {
                (low, lowWeight) = ((at, value), value);
                highWeight = stayed > 0 ? highWeight / 2 : highWeight;
                stayed = 1;
            }
            else
            {
                (high, highWeight) = ((at, value), value);
                lowWeight = stayed < 0 ? lowWeight / 2 : lowWeight;
                stayed = -1;
            }
        }

        return high.At;
    }
}
