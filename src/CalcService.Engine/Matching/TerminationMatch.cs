using CalcService.Engine.Compounds;
using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;
using CalcService.Engine.Rules;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Matching;

/// <summary>Does this rope belong in this socket for this duty, and how does the cone hand its load over.</summary>
public static class TerminationMatch
{
    /// <summary>Computes a match.</summary>
    /// <param name="input">Rope, socket, compound, duty and service.</param>
    /// <param name="rules">The edition whose limits hold.</param>
    /// <param name="budget">Steps that may be spent, and whether to keep the trace.</param>
    /// <param name="cancellationToken">Ends the calculation early.</param>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static Outcome<MatchResult> Calculate(MatchInput input, RuleBook rules, Budget budget, CancellationToken cancellationToken)
    {
        var scope = new MatchScope(input, rules, budget, cancellationToken);
        if (input.Compound.Demonstration)
        {
            scope.Find(CompoundFindings.Demonstration, MatchPointers.Sheet);
        }

        var basket = input.Socket.Basket;
        if (!input.Socket.ToleranceStated)
        {
            scope.Assume(MatchPointers.Basket + "/tolerance", "sizes of the basket taken as exact", Measure.Length(0),
                AssumptionOrigin.Default);
        }

        var rope = RopeFacts.Of(input.Rope, MatchPointers.Rope, scope.Assumptions, scope.Trace);
        var angle = Basket.IncludedAngleRad(basket.SmallEndDiameterM, basket.LargeEndDiameterM, basket.LengthM, scope.Trace);
        var wires = WireSpacing.Of(basket, rope, scope.Trace);
        double? bond = rope.WireDiameterM is { } wire && input.Rope.Grade is { } grade
            ? MatchFormulas.BondNeededPa(wire, grade * 1e6, basket.LengthM, scope.Trace)
            : null;
        PairChecks.Check(scope, rope, wires);
        PairChecks.CheckConstruction(scope, rope, bond);
        var working = DutyChecks.Check(scope, rope);
        LawChecks.Check(scope);
        ServiceChecks.Check(scope);
        var core = ServiceChecks.CheckPreparation(scope);
        var lengthInDiameters = basket.LengthM / input.Rope.DiameterM;
        var transfer = TransferPlanner.Plan(scope, rope, working);
        if (transfer is not null)
        {
            ConeChecks.Check(scope, transfer);
        }

        var result = new MatchResult
        {
            Rope = rope,
            IncludedAngleRad = angle,
            LengthInDiameters = lengthInDiameters,
            Wires = wires,
            StrengthRatio = input.Socket.BreakingForceN / rope.BreakingForceN,
            Working = working,
            Core = core,
            BondNeededPa = bond,
            Transfer = transfer,
        };
        return new(result, scope.Findings.Sorted(), MatchingNotes.All, scope.Assumptions, scope.Trace.Steps);
    }
}
