using CalcService.Engine.Provenance;

namespace CalcService.Engine.Pouring;

/// <summary>Temperature at which water comes out of the air onto steel.</summary>
public static class DewPoint
{
    /// <summary>0 °C in K.</summary>
    public const double ZeroCelsiusK = 273.15;

    /// <summary>
    /// T_d = b·γ/(a − γ), γ = ln U + a·t/(b + t), with t air temperature (°C), U relative humidity (1), over water
    /// a = 17.62, b = 243.12 °C; in K. Range −45 to 60 °C.
    /// </summary>
    [Formula("dew-point", "WMO-No. 8, Guide to Instruments and Methods of Observation", "Annex 4.B, Magnus form over water", Basis.Published,
        Symbol = "T_d", Name = "dew point", Expression = "243.12·γ/(17.62 − γ), γ = ln(U) + 17.62·t/(243.12 + t)",
        Kind = QuantityKind.Temperature, Range = "air from −45 to 60 °C")]
    public static double OverWaterK(double airK, double relativeHumidity, Trace trace) =>
        trace.Step("dew-point", Magnus(airK, relativeHumidity, 17.62, 243.12),
            new("U", Measure.Count(relativeHumidity)), Substitution.In("t", airK - ZeroCelsiusK, "°C"));

    /// <summary>
    /// T_f = b·γ/(a − γ), γ as for the dew point, over ice a = 22.46, b = 272.62 °C; in K. It holds where T_f is
    /// below 0 °C and is warmer than the dew point over water.
    /// </summary>
    [Formula("frost-point", "WMO-No. 8, Guide to Instruments and Methods of Observation", "Annex 4.B, Magnus form over ice", Basis.Published,
        Symbol = "T_f", Name = "frost point", Expression = "272.62·γ/(22.46 − γ), γ = ln(U) + 17.62·t/(243.12 + t)",
        Kind = QuantityKind.Temperature, Range = "frost points from −65 to 0 °C")]
    public static double OverIceK(double airK, double relativeHumidity, Trace trace) =>
        trace.Step("frost-point", Magnus(airK, relativeHumidity, 22.46, 272.62),
            new("U", Measure.Count(relativeHumidity)), Substitution.In("t", airK - ZeroCelsiusK, "°C"));

    private static double Magnus(double airK, double relativeHumidity, double a, double b)
    {
        var t = airK - ZeroCelsiusK;
        var gamma = Math.Log(relativeHumidity) + (17.62 * t / (243.12 + t));
        return (b * gamma / (a - gamma)) + ZeroCelsiusK;
    }
}
