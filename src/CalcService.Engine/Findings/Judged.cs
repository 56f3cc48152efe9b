namespace CalcService.Engine.Findings;

/// <summary>
/// A number against its limit: the one comparison of the service. What equals its limit keeps it; what rounding and conversion of units
/// add, a billionth of the limit, is no reason to exceed it.
/// </summary>
public static class Judged
{
    private const double Room = 1e-9;

    /// <summary>Whether it is more than may be.</summary>
    public static bool IsAbove(double found, double limit) => found > limit + (Room * Math.Abs(limit));

    /// <summary>Whether it is less than must be.</summary>
    public static bool IsBelow(double found, double limit) => found < limit - (Room * Math.Abs(limit));
}
