using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Pouring;

/// <summary>Whether rope and wires go into the basket, and whether the socket is stronger than the rope.</summary>
internal static class FitChecks
{
    public static void Check(PourScope scope, PourEnd end, PlannedEnd planned, string pointer)
    {
        CheckRope(scope, end, pointer);
        CheckServing(scope, end, pointer);
        CheckWires(scope, end, planned, pointer);
        CheckStrength(scope, end, planned.Rope, pointer);
    }

    private static void CheckRope(PourScope scope, PourEnd end, string pointer)
    {
        var (rope, smallEnd) = (end.Rope.OverallDiameterM, end.Basket.SmallEndDiameterM);
        var (at, ropeAt) = (pointer + "/socket/basket/smallEndDiameter", pointer + (end.Rope.MeasuredDiameterM is null ? "/rope/diameter" : "/rope/measuredDiameter"));
        if (rope >= smallEnd)
        {
            scope.Find(PouringFindings.RopeDoesNotEnter, at, Measure.Length(rope), Measure.Length(smallEnd), [ropeAt]);
        }
        else if (rope >= smallEnd - end.Basket.ToleranceM)
        {
            ReportTolerance(scope, pointer, "rope");
        }
        else if (smallEnd > 2 * rope)
        {
            scope.Find(PouringFindings.RopeLoose, at, Measure.Length(smallEnd), Measure.Length(rope), [ropeAt]);
        }
    }

    /// <summary>A serving that stands in the small end has to fit it, and the compound grips no wire that it covers.</summary>
    private static void CheckServing(PourScope scope, PourEnd end, string pointer)
    {
        if (end.ServingInBasketM is not > 0)
        {
            return;
        }

        var smallEnd = end.Basket.SmallEndDiameterM;
        scope.Find(PouringFindings.ServingShortensGrip, pointer + "/servingInBasket", Measure.Length(end.GripLengthM), Measure.Length(end.Basket.LengthM));
        if (end.ServingDiameterM is not { } serving)
        {
            scope.Find(PouringFindings.ServingFitUnknown, pointer + "/servingDiameter");
        }
        else if (serving >= smallEnd)
        {
            scope.Find(PouringFindings.ServingDoesNotFit, pointer + "/servingDiameter", Measure.Length(serving), Measure.Length(smallEnd),
                [pointer + "/socket/basket/smallEndDiameter"]);
        }
        else if (serving >= smallEnd - end.Basket.ToleranceM)
        {
            ReportTolerance(scope, pointer, "serving");
        }
    }

    private static void CheckWires(PourScope scope, PourEnd end, PlannedEnd planned, string pointer)
    {
        if (planned.Wires.Count == 0)
        {
            scope.Find(PouringFindings.WireFitUnknown, pointer + "/rope/wireCount", related: [pointer + "/rope/outerWireDiameter"]);
        }

        if (planned.Rope.MetallicAreaM2 is not { } area)
        {
            return;
        }

        // Judged by area: outer wires that are thicker than the rest would make n of them too many.
        if (FillOf(area, end.Basket) is var fill && fill > Broom.DensestFill)
        {
            scope.Find(PouringFindings.WiresDoNotFit, pointer + "/socket/basket", Measure.Fraction(fill), Measure.Fraction(Broom.DensestFill), [pointer + "/rope"]);
        }
        else if (FillOf(area, end.Basket.GrownBy(-end.Basket.ToleranceM)) > Broom.DensestFill)
        {
            ReportTolerance(scope, pointer, "wires");
        }
    }

    private static void CheckStrength(PourScope scope, PourEnd end, RopeFacts rope, string pointer)
    {
        var at = pointer + "/socket/breakingForce";
        string[] ropeAt = [pointer + "/rope/certificate/breakingForce"];
        if (end.SocketBreakingForceN is not { } socket)
        {
            scope.Find(PouringFindings.SocketStrengthMissing, at, words: new FindingWord("what", "strength of the socket"));
        }
        else if (rope.BreakingForceN is not { } breaking)
        {
            scope.Find(PouringFindings.SocketStrengthMissing, ropeAt[0], related: [at], words: new FindingWord("what", "breaking force of the rope"));
        }
        else if (socket <= breaking)
        {
            scope.Find(PouringFindings.SocketWeaker, at, Measure.Force(socket), Measure.Force(breaking), ropeAt);
        }
    }

    private static void ReportTolerance(PourScope scope, string pointer, string what) =>
        scope.Find(PouringFindings.FitDependsOnTolerance, pointer + "/socket/basket/tolerance", related: [pointer + "/rope/diameter"],
            words: new FindingWord("what", what));

    private static double FillOf(double areaM2, Basket basket) =>
        areaM2 / (Math.PI / 4 * basket.SmallEndDiameterM * basket.SmallEndDiameterM);
}
