using CalcService.Engine.Numerics;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Compounds;

/// <summary>Temperature at which water comes out of the air onto steel.</summary>
public static class DewPoint
{
    /// <summary>0 °C in K.</summary>
    public const double ZeroCelsiusK = 273.15;

    private static readonly MagnusForm Water = new(17.62, 243.12);
    private static readonly MagnusForm Ice = new(22.46, 272.62);

    /// <summary>
    /// T_d = b·γ/(a − γ), γ = ln U + a·t/(b + t), with t air temperature (°C), U relative humidity (1), over water
    /// a = 17.62, b = 243.12 °C; in K. Range −45 to 60 °C.
    /// </summary>
    [Formula("dew-point", "WMO-No. 8, Guide to Instruments and Methods of Observation", "Annex 4.B, Magnus form over water",
        Basis.Published,
        Symbol = "T_d", Name = "dew point", Expression = "243.12·γ/(17.62 − γ), γ = ln(U) + 17.62·t/(243.12 + t)",
        Kind = QuantityKind.Temperature, Range = "air from −45 to 60 °C")]
    public static double OverWaterK(double airK, double relativeHumidity, Trace trace) =>
        trace.Step("dew-point", Water.PointK(Gamma(airK, relativeHumidity)),
            new("U", Measure.Count(relativeHumidity)), Substitution.In("t", airK - ZeroCelsiusK, "°C"));

    /// <summary>
    /// T_f = b·γ/(a − γ), γ as for the dew point, over ice a = 22.46, b = 272.62 °C; in K. It holds where T_f is
    /// below 0 °C and is warmer than the dew point over water.
    /// </summary>
    [Formula("frost-point", "WMO-No. 8, Guide to Instruments and Methods of Observation", "Annex 4.B, Magnus form over ice",
        Basis.Published,
        Symbol = "T_f", Name = "frost point", Expression = "272.62·γ/(22.46 − γ), γ = ln(U) + 17.62·t/(243.12 + t)",
        Kind = QuantityKind.Temperature, Range = "frost points from −65 to 0 °C")]
    public static double OverIceK(double airK, double relativeHumidity, Trace trace) =>
        trace.Step("frost-point", Ice.PointK(Gamma(airK, relativeHumidity)),
            new("U", Measure.Count(relativeHumidity)), Substitution.In("t", airK - ZeroCelsiusK, "°C"));

    /// <summary>The temperature at which steel gets wet or frosted: the dew point, below 0 °C the frost point.</summary>
    internal static double WetK(double airK, double relativeHumidity) =>
        OverWaterK(airK, relativeHumidity, Trace.None) is var dew && dew < ZeroCelsiusK ? OverIceK(airK, relativeHumidity, Trace.None)
        : dew;

    /// <summary>Relative humidity at which air wets or frosts steel of this temperature: the same equations solved for U.</summary>
    internal static double Humidity(double airK, double pointK) => Elementary.Exp(On(pointK).Exponent(pointK) - Water.Exponent(airK));

    /// <summary>Air temperature at which steel of this temperature gets wet or frosted: the same equations solved for t.</summary>
    internal static double AirK(double pointK, double relativeHumidity) =>
        Water.PointK(On(pointK).Exponent(pointK) - Elementary.Log(relativeHumidity));

    /// <summary>γ = ln U + a·t/(b + t) of the air, over water whatever it leaves on the steel.</summary>
    private static double Gamma(double airK, double relativeHumidity) => Elementary.Log(relativeHumidity) + Water.Exponent(airK);

    /// <summary>What comes out of the air at a temperature.</summary>
    private static MagnusForm On(double pointK) => pointK < ZeroCelsiusK ? Ice : Water;

    /// <summary>The Magnus form over one surface.</summary>
    private readonly record struct MagnusForm(double A, double BC)
    {
        public double Exponent(double kelvins)
        {
            var t = kelvins - ZeroCelsiusK;
            return A * t / (BC + t);
        }

        public double PointK(double gamma) => (BC * gamma / (A - gamma)) + ZeroCelsiusK;
    }
}
