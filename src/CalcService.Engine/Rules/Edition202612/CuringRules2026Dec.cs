using CalcService.Engine.Provenance;

namespace CalcService.Engine.Rules.Edition202612;

/// <summary>The limits of a cure in the edition of November 2026.</summary>
public static class CuringRules2026Dec
{
    public static CuringRules Rules { get; } = new()
    {
        GelConversion = new("degree of cure at gel", Measure.Fraction(.05),
            new("Yang and Lee, Polymer 29 (1988): unsaturated polyester gels at a few per cent", "", Basis.FromMemory)),
        FullStrengthConversion = new("degree of cure that the sheet's time to full strength stands for", Measure.Fraction(.90),
            new("a mark on the scale: the sheet's own time says when it is reached", "/docs/cure-schedules", Basis.Derived)),
        Horizon = new("longest time that a constant temperature is followed", Measure.Days(14),
            new("nobody knows the weather further ahead", "/docs/cure-schedules", Basis.Derived)),
        LotSpread = new("spread of the gel time from lot to lot, one standard deviation", Measure.Fraction(.10), Source.CommonPractice),
        ObservationSpread = new("error of an observed gel time, one standard deviation", Measure.Fraction(.05), Source.CommonPractice),
        OutOfFamily = new("standard deviations from which on a gel time is out of family", Measure.Count(3),
            new("NIST/SEMATECH e-Handbook of Statistical Methods", "6.3.2, three-sigma limits", Basis.Published)),
        DelayWorthSaying = new("delay of the release by a cold night or cold steel from which on it is said", Measure.Duration(15 * 60),
            Source.CommonPractice),
        FilmCoefficient = new("heat given to still air, radiation included", new(8, QuantityKind.HeatTransferCoefficient),
            new("handbook range of 5 to 10 W/(m2.K) for a warm body in still air", "", Basis.FromMemory)),
    };
}
