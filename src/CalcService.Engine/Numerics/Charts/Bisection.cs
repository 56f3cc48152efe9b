namespace CalcService.Engine.Numerics.Charts;

/// <summary>Root of a rising function between two ends.</summary>
internal static class Bisection
{
    public static double Root(Func<double, double> rising, double low, double high)
    {
        for (var i = 0; i < 200; i++)
        {
            var middle = low + ((high - low) / 2);
            if (middle <= low || middle >= high)
            {
                break;
            }

            (low, high) = rising(middle) < 0 ? (middle, high) : (low, middle);
        }

        return low + ((high - low) / 2);
    }
}
