using CalcService.Engine.Provenance;

namespace CalcService.Engine.Reuse;

/// <summary>How far a size has gone from its drawing.</summary>
public static class WearFormulas
{
    private const string Document = "/docs/reuse-assessments";

    /// <summary>g = (x − x_0)/x_0 with x the size found and x_0 that of the drawing; 1.</summary>
    [Formula("wear-growth", "definition of a relative change", Document, Basis.Derived, Symbol = "g",
        Name = "growth over the drawing's size",
        Expression = "(x − x_0)/x_0", Kind = QuantityKind.Fraction, Range = "any size")]
    public static double Growth(double foundM, double drawnM, Trace trace) =>
        trace.Step("wear-growth", (foundM - drawnM) / drawnM, new("x", Measure.Length(foundM)), new("x_0", Measure.Length(drawnM)));

    /// <summary>o = (D_max − D_min)/D_0 over the diameters of one section (m), D_0 that of the drawing; 1.</summary>
    [Formula("wear-ovality", "definition of ovality", Document, Basis.Derived, Symbol = "o", Name = "ovality over the drawing's diameter",
        Expression = "(D_max − D_min)/D_0", Kind = QuantityKind.Fraction, Range = "diameters across one section")]
    public static double Ovality(double largestM, double smallestM, double drawnM, Trace trace) =>
        trace.Step("wear-ovality", (largestM - smallestM) / drawnM,
            new("D_max", Measure.Length(largestM)), new("D_min", Measure.Length(smallestM)), new("D_0", Measure.Length(drawnM)));

    /// <summary>l = 1 − (D_2 − D_1)/((x_2 − x_1)·2·t_0): share of the taper t_0 = tan α that is lost between two sections; 1.</summary>
    [Formula("wear-taper-loss", "taper through two sections", Document, Basis.Derived, Symbol = "l",
        Name = "share of the taper that is lost",
        Expression = "1 − (D_2 − D_1)/((x_2 − x_1)·2·t_0)", Kind = QuantityKind.Fraction, Range = "two sections apart")]
    public static double TaperLoss(double lowerM, double upperM, double apartM, double taper, Trace trace) =>
        trace.Step("wear-taper-loss", 1 - ((upperM - lowerM) / (apartM * 2 * taper)),
            new("D_2", Measure.Length(upperM)), new("D_1", Measure.Length(lowerM)), new("x_2", Measure.Length(apartM)),
            new("x_1", Measure.Length(0)), new("t_0", Measure.Count(taper)));
}
