using CalcService.Engine.Tests.Numerics;

namespace CalcService.Engine.Tests.Pouring;

/// <summary>
/// Pressures of water vapour in balance with water and ice. Coefficients from memory; the published check values hold them.
/// </summary>
public static class Iapws
{
    /// <summary>IAPWS-IF97, region 4, equation 30: saturation over water from 273.15 to 647.096 K, in Pa.</summary>
    public static double OverWaterPa(double kelvins)
    {
        var theta = kelvins + (-.23855557567849 / (kelvins - 650.17534844798));
        var a = (theta * theta) + (1167.0521452767 * theta) - 724213.16703206;
        var b = (-17.073846940092 * theta * theta) + (12020.82470247 * theta) - 3232555.0322333;
        var c = (14.91510861353 * theta * theta) - (4823.2657361591 * theta) + 405113.40542057;
        return Math.Pow(2 * c / (-b + Math.Sqrt((b * b) - (4 * a * c))), 4) * 1e6;
    }

    /// <summary>IAPWS R14-08(2011), sublimation over ice Ih from 50 to 273.16 K, in Pa.</summary>
    public static double OverIcePa(double kelvins)
    {
        var theta = kelvins / 273.16;
        return 611.657 * Math.Exp(((-21.2144006 * Math.Pow(theta, .00333333333))
            + (27.3203819 * Math.Pow(theta, 1.20666667)) - (6.1059813 * Math.Pow(theta, 1.70333333))) / theta);
    }

    /// <summary>
    /// Murphy and Koop, Q. J. R. Meteorol. Soc. 131 (2005) 1539, equation 10: over supercooled water from 123 to 332 K, in Pa.
    /// </summary>
    public static double OverSupercooledWaterPa(double kelvins) => Math.Exp(54.842763 - (6763.22 / kelvins) - (4.210 * Math.Log(kelvins))
        + (.000367 * kelvins) + (Math.Tanh(.0415 * (kelvins - 218.8))
            * (53.878 - (1331.22 / kelvins) - (9.44523 * Math.Log(kelvins)) + (.014025 * kelvins))));

    /// <summary>Temperature at which air of this vapour pressure is saturated, in K.</summary>
    public static double SaturatedAtK(Func<double, double> pressure, double vapourPa) =>
        Reference.Root(kelvins => pressure(kelvins) - vapourPa, 150, 373.15);
}
