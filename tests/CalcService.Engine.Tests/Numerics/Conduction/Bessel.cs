namespace CalcService.Engine.Tests.Numerics.Conduction;

/// <summary>Bessel functions by their power series, good to about 1e-12 for arguments below 10.</summary>
internal static class Bessel
{
    public static double J0(double x) => Series(x, 0);

    public static double J1(double x) => Series(x, 1);

    private static double Series(double x, int order)
    {
        var term = order == 0 ? 1 : x / 2;
        var sum = term;
        for (var k = 1; k < 60; k++)
        {
            term *= -(x * x / 4) / (k * (k + order));
            sum += term;
        }

        return sum;
    }
}
