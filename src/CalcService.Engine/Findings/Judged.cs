namespace CalcService.Engine.Findings;

/// <summary>A number against its limit. Sizes carry twelve digits, so what equals its limit is judged with that much room.</summary>
internal static class Judged
{
    private const double Room = 1e-11;

    public static bool IsAbove(double found, double limit) => found > limit * (1 + Room);

    public static bool IsBelow(double found, double limit) => found < limit * (1 - Room);
}
