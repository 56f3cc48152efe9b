using CalcService.Engine.Numerics;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Pouring;

/// <summary>How fast open compound gives off vapour.</summary>
public static class Evaporation
{
    /// <summary>
    /// ln P = 105.93 − 8685.9/T − 12.42·ln T + 7.5583·10⁻⁶·T², T in K; in Pa. Range 242.54 to 636 K.
    /// </summary>
    [Formula("styrene-vapour-pressure", "Perry's Chemical Engineers' Handbook", "Table 2-8, styrene", Basis.Published,
        Symbol = "P_v", Name = "vapour pressure of styrene", Expression = "exp(105.93 − 8685.9/T − 12.42·ln(T) + 7.5583e-6·T²)",
        Kind = QuantityKind.Stress, Range = "242.54 to 636 K")]
    public static double StyreneVapourPressurePa(double kelvins, Trace trace) =>
        trace.Step("styrene-vapour-pressure",
            Elementary.Exp(105.93 - (8685.9 / kelvins) - (12.42 * Elementary.Log(kelvins)) + (7.5583e-6 * kelvins * kelvins)),
            new Substitution("T", Measure.Kelvins(kelvins)));

    /// <summary>
    /// G = 8.24·10⁻⁸·M^0.835·X·P_v·(1/29 + 1/M)^0.25·v^0.5·A/(T^0.05·d^0.5·P^0.5) in g/s, with M (g/mol), X mole
    /// fraction, P_v (torr), v air speed (ft/min), A surface (cm²), T (K), d length of the surface along the air (cm),
    /// P 1 atm; takes SI and returns kg/s.
    /// </summary>
    [Formula("evaporation-rate", "US EPA ChemSTEER user guide", "EPA/OPPT model for low air speed", Basis.Published,
        Symbol = "G", Name = "vapour from one open surface",
        Expression = "8.24e-8·M^0.835·X·P_v·(1/29 + 1/M)^0.25·v^0.5·A/(T^0.05·d^0.5·P^0.5) in g/s",
        Kind = QuantityKind.MassFlow, Range = "air up to 100 ft/min (0.508 m/s) at 1 atm")]
    public static double RateKgPerS(
        double molarMassGPerMol, double moleFraction, double vapourPressurePa, double airSpeedMPerS, double surfaceM2,
        double kelvins, double lengthM, Trace trace)
    {
        var torr = vapourPressurePa * 760 / 101325;
        var feetPerMinute = airSpeedMPerS / .3048 * 60;
        var gramsPerSecond = 8.24e-8 * Elementary.Pow(molarMassGPerMol, .835) * moleFraction * torr
            * Elementary.Pow((1.0 / 29) + (1 / molarMassGPerMol), .25) * Math.Sqrt(feetPerMinute) * (surfaceM2 * 1e4)
            / (Elementary.Pow(kelvins, .05) * Math.Sqrt(lengthM * 100));
        return trace.Step("evaporation-rate", gramsPerSecond / 1000,
            Substitution.In("M", molarMassGPerMol, "g/mol"), new("X", Measure.Count(moleFraction)), Substitution.In("P_v", torr, "torr"),
            Substitution.In("v", feetPerMinute, "ft/min"), Substitution.In("A", surfaceM2 * 1e4, "cm²"),
            Substitution.In("T", kelvins, "K"), Substitution.In("d", lengthM * 100, "cm"), Substitution.In("P", 1, "atm"));
    }
}
