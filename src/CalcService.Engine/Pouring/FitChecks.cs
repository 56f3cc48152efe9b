using CalcService.Engine.Findings;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Pouring;

/// <summary>Whether rope, serving and socket go together.</summary>
internal static class FitChecks
{
    public static void Check(PourScope scope, PourEnd end, PlannedEnd planned, string pointer)
    {
        var fit = new EndFit(end.Rope, planned.Rope, end.Basket, pointer, scope.Rules, scope.Add)
        {
            SocketBreakingForceN = end.SocketBreakingForceN,
            Metal = end.Metal,
            RopeRange = end.RopeRange,
            GripLengthM = end.GripLengthM,
            TiltRad = end.TiltRad,
            StraightBelowM = end.StraightBelowM,
            SizesFrom = end.SizesFrom,
        };
        fit.Check();
        fit.CheckCare();
        fit.CheckProportions();
        if (!scope.IsQuote)
        {
            fit.Ask(planned.Wires);
        }

        CheckServing(scope, end, fit, pointer);
    }

    /// <summary>A serving that stands in the small end has to fit it, and the compound grips no wire that it covers.</summary>
    private static void CheckServing(PourScope scope, PourEnd end, EndFit fit, string pointer)
    {
        if (end.ServingInBasketM is not > 0)
        {
            return;
        }

        var smallEnd = end.Basket.SmallEndDiameterM;
        scope.Find(PouringFindings.ServingShortensGrip, pointer + "/servingInBasket", Judged.Length(end.GripLengthM, end.Basket.LengthM));
        if (end.ServingDiameterM is not { } serving)
        {
            if (!scope.IsQuote)
            {
                scope.Find(PouringFindings.ServingFitUnknown, pointer + "/servingDiameter");
            }
        }
        else if (Judged.Length(serving, smallEnd) is { IsBelow: false } thick)
        {
            scope.Find(PouringFindings.ServingDoesNotFit, pointer + "/servingDiameter", thick,
                [pointer + "/socket/basket/smallEndDiameter"]);
        }
        else if (!Judged.Length(serving, smallEnd - end.Basket.ToleranceM).IsBelow)
        {
            fit.ReportTolerance("serving");
        }
    }
}
