using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;

namespace CalcService.Engine.Pouring.Preparation;

/// <summary>Where an end is seized and cut.</summary>
public static class PreparationNumbers
{
    /// <summary>
    /// L_b = L_g·√(1 + t²), wire that the outermost wires need to reach through a grip of length L_g (m) along a wall of
    /// taper t = tan α; in m. The inner wires are cut with them and end no lower.
    /// </summary>
    [Formula("broom-length", "a wire along the wall of the cone", "/docs/pour-plans", Basis.Derived, Symbol = "L_b",
        Name = "length of the broom",
        Expression = "L_g·√(1 + t^2)", Kind = QuantityKind.Length, Range = "wires straight from the top seizing to the mouth")]
    public static double BroomLengthM(double gripLengthM, double taper, Trace trace) =>
        trace.Step("broom-length", gripLengthM * Math.Sqrt(1 + (taper * taper)), new("L_g", Measure.Length(gripLengthM)),
        new("t", Measure.Count(taper)));

    internal static EndPreparation Of(PourScope scope, PourEnd end)
    {
        var rules = scope.Rules.Seizing;
        double Size(Findings.RuleNumber rule) => Seizing.SizeM(end.Rope.DiameterM, rule.Si, scope.Trace);
        return new(
            Seizing.Count(end.Rope.DiameterM, rules.CountPerInch.Si, rules.CountLeast.Si, scope.Trace),
            Size(rules.WidthLeast),
            Size(rules.WidthMost),
            Size(rules.Spacing),
            end.GripLengthM,
            BroomLengthM(end.GripLengthM, end.Basket.Taper, scope.Trace));
    }
}
