using CalcService.Engine.Provenance;

namespace CalcService.Engine.Matching;

/// <summary>The short formulas of a match.</summary>
public static class MatchFormulas
{
    private const string Document = "/docs/termination-matches";

    /// <summary>WLL = F_min·K_T/f with F_min breaking force of the rope (N), K_T efficiency of the end, f design factor; in N.</summary>
    [Formula("working-load-limit", "definition of the design factor", Document, Basis.Derived, Symbol = "WLL",
        Name = "working load limit of rope and end",
        Expression = "F_min·K_T/f", Kind = QuantityKind.Force, Range = "one rope, straight pull")]
    public static double WorkingLoadLimitN(double breakingForceN, double efficiency, double designFactor, Trace trace) =>
        trace.Step("working-load-limit", breakingForceN * efficiency / designFactor,
            new("F_min", Measure.Force(breakingForceN)), new("K_T", Measure.Count(efficiency)), new("f", Measure.Count(designFactor)));

    /// <summary>
    /// τ = δ·R_r/(4·L): bond along a wire of diameter δ (m) that breaks it, at its grade R_r (Pa), over the length L (m); in Pa.
    /// </summary>
    [Formula("bond-needed", "balance of one wire", Document, Basis.Derived, Symbol = "τ",
        Name = "bond that holds a wire to its breaking stress",
        Expression = "δ·R_r/(4·L)", Kind = QuantityKind.Stress, Range = "bond alone and even, without the grip of the wedge")]
    public static double BondNeededPa(double wireDiameterM, double gradePa, double lengthM, Trace trace) =>
        trace.Step("bond-needed", wireDiameterM * gradePa / (4 * lengthM),
            new("δ", Measure.Length(wireDiameterM)), new("R_r", Measure.Stress(gradePa)), new("L", Measure.Length(lengthM)));
}
