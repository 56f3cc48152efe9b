using CalcService.Engine.Findings;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Reuse;

/// <summary>After the old cone is out, is this forging still a socket?</summary>
public static class ReuseAssessment
{
    /// <summary>Assesses a used socket.</summary>
    /// <param name="input">Socket, limits, cone removal, inspection and intended use.</param>
    /// <param name="rules">The edition whose limits hold.</param>
    /// <param name="budget">Whether to keep the trace; the steps are few and always the same.</param>
    /// <param name="cancellationToken">Ends the calculation early.</param>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static Outcome<ReuseResult> Calculate(ReuseInput input, RuleBook rules, Budget budget, CancellationToken cancellationToken)
    {
        cancellationToken.ThrowIfCancellationRequested();
        var scope = new ReuseScope(input, rules, budget);
        HistoryChecks.Check(scope);
        InspectionChecks.Check(scope);
        var wear = WearChecks.Check(scope);
        var strength = StrengthChecks.Check(scope, wear);
        var remaining = LoadChecks.Check(scope, strength);

        var findings = scope.Findings.Sorted();
        var disposition = DispositionOf(findings);
        var result = new ReuseResult
        {
            Disposition = disposition,
            Checks = scope.Checks,
            Wear = wear,
            RatedLoadN = strength.RatedN,
            ProofLoadN = strength.ProofN,
            DesignFactor = strength.DesignFactor,
            AsMade = strength.AsMade,
            AsMeasured = strength.AsMeasured,
            RemainingStrengthN = remaining,
            // Nothing brings a withdrawn socket back, so no work is proposed on one.
            Work = disposition == Disposition.Withdraw
                ? []
                : [.. findings.Where(finding => finding.Severity == Severity.Caution).Select(finding => new WorkToDo(finding.Definition, finding.Pointer))],
        };
        return new(result, findings, ReuseNotes.All, scope.Assumptions, scope.Trace.Steps);
    }

    /// <summary>The order of precedence, one to one with the decision: a stop withdraws, what is missing holds, work to do comes before use.</summary>
    public static Disposition DispositionOf(IReadOnlyList<Finding> findings) => FindingList.DecisionOf(findings) switch
    {
        Decision.DoNotProceed => Disposition.Withdraw,
        Decision.Undetermined => Disposition.Hold,
        Decision.ProceedWithCare => Disposition.ReuseAfterWork,
        _ => Disposition.Reuse,
    };
}
