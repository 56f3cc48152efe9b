using CalcService.Engine.Provenance;

namespace CalcService.Engine.Compounds;

/// <summary>
/// Cold resin turns to glass before it is cured: no degree above a ceiling that falls with temperature. The line is drawn
/// through what the sheet says: just full strength at its lowest cure temperature, complete cure at that of its full strength.
/// </summary>
public sealed class CureCeiling(CureShape shape, double lowestCureK, double fullStrengthK)
{
    /// <summary>From here on upwards full strength is reached.</summary>
    public double LowestCureK { get; } = lowestCureK;

    /// <summary>The age that is not passed at a temperature.</summary>
    public double AgeAt(double kelvins) => shape.AgeOf(DegreeAt(kelvins));

    /// <summary>The degree of cure that is not passed at a temperature.</summary>
    public double DegreeAt(double kelvins) => Degree(kelvins, LowestCureK, fullStrengthK, shape.FullDegree, Trace.None);

    /// <summary>α_c = α_f + (1 − α_f)·(T − T_low)/(T_f − T_low), between 0 and just below 1.</summary>
    [Formula("cure-ceiling", "line through the sheet's lowest cure temperature and that of its full strength", "/docs/cure-schedules",
        Basis.Derived, Symbol = "α_c", Name = "highest degree of cure",
        Expression = "α_f + (1 − α_f)·(T − T_low)/(T_f − T_low)", Kind = QuantityKind.Fraction,
        Range = "limited to 0 … 1; at least 1 K between both temperatures")]
    public static double Degree(double kelvins, double lowestCureK, double fullStrengthK, double fullDegree, Trace trace)
    {
        var span = Math.Max(1, fullStrengthK - lowestCureK);
        return trace.Step("cure-ceiling", Math.Clamp(fullDegree + ((1 - fullDegree) * (kelvins - lowestCureK) / span), 0, 1 - 1e-12),
            new("α_f", Measure.Fraction(fullDegree)), new("T", Measure.Temperature(kelvins)),
            new("T_low", Measure.Temperature(lowestCureK)), new("T_f", Measure.Temperature(fullStrengthK)));
    }
}
