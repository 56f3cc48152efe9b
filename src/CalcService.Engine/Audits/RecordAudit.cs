using CalcService.Engine.Compounds;
using CalcService.Engine.Cones.Heat;
using CalcService.Engine.Findings;
using CalcService.Engine.Ropes;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Audits;

/// <summary>Can an inspector rebuild from its record the decision that the end is safe, and does what it tells hold?</summary>
public static class RecordAudit
{
    /// <summary>Audits the record of one end.</summary>
    /// <param name="input">The record.</param>
    /// <param name="rules">The edition whose limits hold.</param>
    /// <param name="budget">Steps that may be spent, and whether to keep the trace.</param>
    /// <param name="cancellationToken">Ends the calculation early.</param>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static Outcome<AuditResult> Calculate(AuditInput input, RuleBook rules, Budget budget, CancellationToken cancellationToken)
    {
        cancellationToken.ThrowIfCancellationRequested();
        var scope = new AuditScope(input, rules, budget, cancellationToken);
        if (input.Compound.Demonstration)
        {
            scope.Find(CompoundFindings.Demonstration, AuditPointers.Sheet);
        }

        scope.CheckMixingOrder(input.Compound);
        scope.LeavePeakOpen(input.Compound);
        HeldChecks.Check(scope);
        TimeChecks.Check(scope);
        LotDayChecks.Check(scope);
        var plan = ReadingDayChecks.Check(scope, new());
        plan = CureDayChecks.Check(scope, plan);
        var rope = input.Rope is { } known ? RopeFacts.Of(known, AuditPointers.Rope, scope.Assumptions, scope.Trace) : null;
        plan = VolumeChecks.Check(scope, rope, plan);
        plan = ProofDayChecks.Check(scope, rope, plan);
        PeopleChecks.Check(scope);
        scope.FindGaps();

        var decision = scope.Findings.Decide();
        return new(
            new()
            {
                // Whatever a plan or quote may leave open, a record that lacks what it has to hold is not accepted.
                Standing = Verdict.Of<RecordStanding>(scope.LacksFacts && decision < Decision.Undetermined ? Decision.Undetermined
                    : decision),
                ItemsAsked = scope.ItemsAsked,
                Missing = [.. scope.Missing],
                Checks = scope.Checks,
                Recomputed = plan,
            },
            scope.Findings.Sorted(), AuditNotes.All, scope.Assumptions, scope.Trace.Steps);
    }
}
