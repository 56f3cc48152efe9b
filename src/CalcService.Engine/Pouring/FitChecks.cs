using CalcService.Engine.Findings;
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
        fit.CheckProportions(planned.IncludedAngleRad);
        CheckStrength(scope, end, fit, pointer);
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
