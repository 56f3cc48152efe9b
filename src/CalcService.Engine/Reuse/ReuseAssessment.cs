using CalcService.Engine.Findings;
using CalcService.Engine.Ropes;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Reuse;

/// <summary>After the old cone is out, is this forging still a socket?</summary>
public static class ReuseAssessment
{
    /// <summary>Assesses a used socket.</summary>
    /// <param name="input">Socket, limits, cone removal, inspection and intended use.</param>
    /// <param name="rules">The edition whose limits hold.</param>
    /// <param name="budget">Steps that may be spent, and whether to keep the trace.</param>
    /// <param name="cancellationToken">Ends the calculation early.</param>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static Outcome<ReuseResult> Calculate(ReuseInput input, RuleBook rules, Budget budget, CancellationToken cancellationToken)
    {
        cancellationToken.ThrowIfCancellationRequested();
        var scope = new ReuseScope(input, rules, budget, cancellationToken);
        HistoryChecks.Check(scope);
        InspectionChecks.Check(scope);
        var wear = WearChecks.Check(scope);
        LimitChecks.Check(scope);
        var rope = input.Intended.Rope is { } intended
            ? RopeFacts.Of(intended, ReusePointers.IntendedRope, scope.Assumptions, scope.Trace)
            : null;
        var loads = ReuseLoads.Of(scope);
        var strength = StrengthChecks.Check(scope, wear, loads, rope);
        var remaining = LoadChecks.Check(scope, wear, loads, strength, rope);

        scope.CheckTaken(ReuseStated.Facts(scope, rope));
        scope.FindGaps();
        var decision = scope.Findings.Decide(IsOnTheSocket);
        var needsPin = decision == Decision.Proceed && scope.Findings.Decide(IsOnThePin) > Decision.Proceed;
        var disposition = Verdict.Of<Disposition>(needsPin ? Decision.ProceedWithCare : decision);
        var findings = scope.Findings.Sorted();
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
                : [.. findings.Where(finding => IsOnThePin(finding) || (finding.Severity == Severity.Caution && IsOnTheSocket(finding)))
                    .Select(finding => new WorkToDo(finding.Definition, finding.Pointer))],
        };
        return new(result, findings, ReuseNotes.All, scope.Assumptions, scope.Trace.Steps);
    }

    /// <summary>
    /// Whether a finding is on the socket itself, and not on what it is meant for: a sound socket is not set aside because this rope
    /// is too strong for it.
    /// </summary>
    private static bool IsOnTheSocket(Finding finding) =>
        !IsOnThePin(finding) && !ReuseStated.IsOfTheUse(finding) && !ReuseFindings.OfTheUse.Contains(finding.Definition);

    /// <summary>Whether a new pin mends it: no load until then, and yet a socket.</summary>
    private static bool IsOnThePin(Finding finding) => finding.Definition == ReuseFindings.PinYields;
}
