using CalcService.Engine.Cones;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;

namespace CalcService.Engine.Matching;

/// <summary>How the cone hands its load to the socket, at the loads that count.</summary>
internal static class TransferPlanner
{
    public static ConeTransfer? Plan(MatchScope scope, RopeFacts rope, WorkingLoad working)
    {
        if (ConeOf(scope, rope) is not { } cone)
        {
            return null;
        }

        if (rope.BreakingForceN is not { } breaking)
        {
            return NotComputed(scope, MatchPointers.BreakingForce, "the breaking force of the rope is not known");
        }

        var loads = new (string Name, double? LoadN)[] { ("workingLoad", working.JudgedN), ("proofLoad", working.ProofLoadN),
            ("breakingForce", breaking) };
        var cases = new List<ConeCase>();
        foreach (var (name, load) in loads)
        {
            if (load is { } newtons)
            {
                scope.Trace.Of = name;
                if (ConeLoad.Solve(cone, newtons, scope.Budget, scope.CancellationToken, trace: scope.Trace) is not { } state)
                {
                    return NotComputed(scope, MatchPointers.Basket, "the sizes do not belong together");
                }

                cases.Add(Case(scope, name, state));
            }
        }

        scope.Trace.Of = "";

        var judged = working.JudgedN ?? breaking;
        return ConeLoad.FullContactLoadN(cone, scope.Budget, scope.CancellationToken) is { } full
            && SensitivityRuns.At(scope, cone, judged) is { } sensitivity
            ? new(cone, full, cases, sensitivity)
            : NotComputed(scope, MatchPointers.Basket, "the sizes do not belong together");
    }

    private static Cone? ConeOf(MatchScope scope, RopeFacts rope)
    {
        var (socket, rules) = (scope.Input.Socket, scope.Rules);
        var end = new EndCone(scope, rules, scope.Input.Compound.Cured, socket.Basket, rope.MetallicAreaM2)
        {
            OuterAtSmallEndM = socket.OuterAtSmallEndM,
            OuterAtMouthM = socket.OuterAtMouthM,
            WallAssumed = MatchingFindings.WallAssumed,
        };
        if (end.Lacks is (var pointer, var why))
        {
            NotComputed(scope, pointer, why);
            return null;
        }

        if (end.Cured.ExpansionPerK is not null && scope.Input.CoolingK is null)
        {
            scope.Assume(MatchPointers.Cooling, "the cone is taken as set at its temperature in service", Measure.TemperatureDifference(0),
                AssumptionOrigin.Default);
        }

        return end.Expected(scope.Input.Friction, MatchPointers.Friction, scope.Input.CoolingK ?? 0);
    }

    private static ConeCase Case(MatchScope scope, string name, ConeState state)
    {
        var lip = state.LipPressurePa * scope.Rules.LipFactor.Si;
        var socket = scope.Input.Socket;
        return new(name, state, lip, lip / scope.Input.Compound.Cured.CompressiveStrengthPa,
            socket.OuterAtSmallEndM is null || socket.OuterAtMouthM is null ? null : state.HoopPa);
    }

    private static ConeTransfer? NotComputed(MatchScope scope, string pointer, string why)
    {
        scope.Find(MatchingFindings.TransferNotComputed, pointer, words: new FindingWord("why", why));
        return null;
    }
}
