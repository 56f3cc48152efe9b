using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Pouring;

/// <summary>Whether rope and wires go into the basket, and whether the socket is stronger than the rope.</summary>
internal static class FitChecks
{
    public static void Check(PourScope scope, PourEnd end, PlannedEnd planned, string pointer)
    {
        var fit = new EndFit(end.Rope, planned.Rope, end.Basket, pointer, scope.Rules, scope.Findings.Add);
        fit.CheckRope();
        fit.CheckRoom(planned.Wires);
        CheckServing(scope, end, fit, pointer);
        fit.CheckProportions(planned.IncludedAngleRad, end.GripLengthM);
        CheckStrength(scope, end, fit, pointer);
    }

    /// <summary>A serving that stands in the small end has to fit it, and the compound grips no wire that it covers.</summary>
    private static void CheckServing(PourScope scope, PourEnd end, EndFit fit, string pointer)
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
            fit.ReportTolerance("serving");
        }
    }

    private static void CheckStrength(PourScope scope, PourEnd end, EndFit fit, string pointer)
    {
        var (socketAt, ropeAt) = (pointer + "/socket/breakingForce", pointer + "/rope/certificate/breakingForce");
        if (end.SocketBreakingForceN is not { } socket)
        {
            scope.Find(PouringFindings.SocketStrengthMissing, socketAt, words: new FindingWord("what", "strength of the socket"));
        }
        else if (fit.Facts.BreakingForceN is null)
        {
            scope.Find(PouringFindings.SocketStrengthMissing, ropeAt, related: [socketAt], words: new FindingWord("what", "breaking force of the rope"));
        }
        else
        {
            fit.CheckStrength(socket);
        }
    }
}
