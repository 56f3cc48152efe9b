using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Inspection;

/// <summary>May an end in service go on serving.</summary>
public static class ServiceInspection
{
    private static readonly FindingDefinition[] NoCutHelps = [InspectionFindings.DiameterReduced, InspectionFindings.StrengthLost];

    private static readonly FindingDefinition[] OfTheRope = [InspectionFindings.BrokenWires, .. NoCutHelps];

    /// <summary>Judges an inspection.</summary>
    /// <param name="input">The end and what was found.</param>
    /// <param name="rules">The edition whose limits hold.</param>
    /// <param name="budget">Whether to keep the trace; an inspection needs few steps.</param>
    /// <param name="cancellationToken">Ends the calculation early.</param>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static Outcome<InspectionResult> Calculate(InspectionInput input, RuleBook rules, Budget budget,
        CancellationToken cancellationToken)
    {
        cancellationToken.ThrowIfCancellationRequested();
        var scope = new InspectionScope(input, rules, budget);
        if (input.RuleSet is null)
        {
            scope.Find(InspectionFindings.RuleSetMissing, InspectionPointers.RuleSet);
        }

        if (input.Compound?.Demonstration == true)
        {
            scope.Find(CompoundFindings.Demonstration, InspectionPointers.Compound);
        }

        var wires = WireChecks.Check(scope);
        ConditionChecks.Check(scope);
        scope.FindGaps();
        SizeChecks.Check(scope);
        HistoryChecks.CheckHeat(scope);
        HistoryChecks.CheckChemicals(scope);
        var due = HistoryChecks.CheckAge(scope);
        HistoryChecks.CheckAttachment(scope);
        // What is wrong with the end is cut off at the mouth; broken wires reach as far as they were found, where anybody said.
        var onTheEnd = scope.Findings.Sorted().Where(IsOnTheEnd).ToArray();
        var stops = onTheEnd.Where(finding => finding.Severity == Severity.Stop).Select(finding => finding.Definition).ToArray();
        double? damage = wires.ReachM ?? (stops.Except(OfTheRope).Any() ? 0 : null);
        var isReachKnown = (!wires.Rejects || wires.IsWhole) && !stops.Intersect(NoCutHelps).Any()
            && onTheEnd.All(finding => finding.Severity != Severity.Unknown);
        var (cut, left) = LeftChecks.Check(scope, damage, isReachKnown);
        var result = new InspectionResult
        {
            Disposition = Verdict.Of<ServiceDisposition>(scope.Findings.Decide(IsOnTheEnd)),
            Checks = scope.Checks,
            CutFromM = cut,
            Left = left,
            NextDue = due,
            Strictest = Strictest(scope.Checks),
        };
        return new(result, scope.Findings.Sorted(), InspectionNotes.All, scope.Assumptions, scope.Trace.Steps);
    }

    /// <summary>The rope that is left and the compound's being invented decide, and don't dispose of the end.</summary>
    private static bool IsOnTheEnd(Finding finding) => finding.Definition != CompoundFindings.Demonstration
        && finding.Pointer is not (InspectionPointers.DrumTurns or InspectionPointers.DrumDiameter or InspectionPointers.LengthLeft);

    /// <summary>The worst check first, and among checks alike the one nearest to its limit.</summary>
    private static InspectionCheck? Strictest(IEnumerable<InspectionCheck> checks) => checks
        .Where(check => check.Outcome != CheckOutcome.NotApplicable)
        .OrderByDescending(check => check.Outcome switch { CheckOutcome.Fail => 2, CheckOutcome.Undetermined => 1, _ => 0 })
        .ThenByDescending(check => check.Use ?? 0)
        .ThenBy(check => check.Limit, RuleLimit.ByNumber)
        .ThenBy(check => check.Id, StringComparer.Ordinal)
        .FirstOrDefault();
}
