using CalcService.Engine.Findings;
using CalcService.Engine.Numerics;
using CalcService.Engine.Provenance;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Pouring;

/// <summary>Whether the rope stands straight in its basket.</summary>
public static class AlignmentChecks
{
    internal static void Check(PourScope scope, PourEnd end, PlannedEnd planned, string pointer)
    {
        // A rope that leans more is judged with all else that can't be.
        if (end.TiltRad is { } tilt && !scope.Rules.Fit.MostTilt.Judge(Measure.Angle(tilt)).IsAbove && planned.Wires.Count > 0
            && planned.Wires[0].ClearM is var gap and > 0
            && TiltShiftM(end.GripLengthM, tilt, scope.Trace) is var shift && Judged.Length(shift, gap).IsAbove
            && scope.Rules.Fit.ReadTilt.Judge(Measure.Angle(tilt)) is { IsAbove: true } read
            && new Judged(Measure.Angle(tilt), Limit.Of(Measure.Angle(Elementary.Atan(gap / end.GripLengthM)))) is { IsAbove: true } most)
        {
            scope.Find(BoundFindings.RopeTilted, pointer + "/tilt", read.Share < most.Share ? read : most);
        }
    }

    /// <summary>e = L·tan τ, how far a rope that leans by τ (rad) leaves the axis of the basket over its length L (m); in m.</summary>
    [Formula("tilt-shift", "a straight line that leans", "/docs/pour-plans", Basis.Derived, Symbol = "e",
        Name = "shift of the broom over the basket",
        Expression = "L·tan(τ)", Kind = QuantityKind.Length, Range = "rope straight up to the mouth")]
    public static double TiltShiftM(double lengthM, double tiltRad, Trace trace) =>
        trace.Step("tilt-shift", lengthM * Elementary.Tan(tiltRad), new("L", Measure.Length(lengthM)), new("τ", Measure.Angle(tiltRad)));
}
