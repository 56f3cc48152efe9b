using CalcService.Engine.Provenance;

namespace CalcService.Engine.Compounds;

/// <summary>How much is mixed, and how long it may be used.</summary>
public static class MixFormulas
{
    /// <summary>V_n = (1 + a)·V_h + V_v: what has to be mixed, with V_h the most resin that the baskets take, a the
    /// allowance and V_v what stays in the vessel; in m³.</summary>
    [Formula("needed-volume", "sum over the baskets of a mix", "/docs/pour-plans", Basis.Derived, Symbol = "V_n", Name = "compound needed",
        Expression = "(1 + a)·V_h + V_v", Kind = QuantityKind.Volume, Range = "one mix")]
    public static double NeededM3(double allowance, double highM3, double residueM3, Trace trace) =>
        trace.Step("needed-volume", ((1 + allowance) * highM3) + residueM3,
            new("a", Measure.Fraction(allowance)), new("V_h", Measure.Volume(highM3)), new("V_v", Measure.Volume(residueM3)));

    /// <summary>t_pot = p·t_gel, p the usable share of the sheet, t_gel the earliest gel in the vessel; in s.</summary>
    [Formula("pot-life", "the compound's data sheet", "potLife", Basis.DataSheet, Symbol = "t_pot", Name = "pot life",
        Expression = "p·t_gel", Kind = QuantityKind.Duration,
            Range = "compound at rest in its vessel; a large mix warms itself and gels sooner")]
    public static double PotLifeS(double share, double gelTimeS, Trace trace) =>
        trace.Step("pot-life", share * gelTimeS, new("p", Measure.Fraction(share)), new("t_gel", Measure.Duration(gelTimeS)));
}
