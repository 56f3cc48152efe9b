namespace CalcService.Engine.Findings;

/// <summary>The findings of one calculation.</summary>
public sealed class FindingList
{
    private readonly List<Finding> _findings = [];

    public void Add(Finding finding) => _findings.Add(finding);

    /// <summary>Each fact once, worst first, then by pointer and code, so that the same input gives the same list.</summary>
    public IReadOnlyList<Finding> Sorted() =>
        [.. AlikeFindings.Joined(_findings)
            .OrderByDescending(finding => finding.Severity)
            .ThenBy(finding => finding.Pointer, StringComparer.Ordinal)
            .ThenBy(finding => finding.Definition.Code, StringComparer.Ordinal)];

    /// <summary>The decision that they give, of all or of some.</summary>
    public Decision Decide(Predicate<Finding>? counts = null)
    {
        var worst = Decision.Proceed;
        foreach (var finding in _findings)
        {
            if ((Decision)finding.Severity is var decision && decision > worst && (counts is null || counts(finding)))
            {
                worst = decision;
            }
        }

        return worst;
    }

    /// <summary>The decision that the worst finding gives.</summary>
    public static Decision DecisionOf(IReadOnlyList<Finding> findings) =>
        findings.Count == 0 ? Decision.Proceed : (Decision)findings.Max(finding => finding.Severity);
}
