using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Findings;

/// <summary>A member that is missing, and the finding that says so.</summary>
internal sealed record Gap(FindingDefinition Finding, string Pointer, string What);

/// <summary>What the steps of one calculation share in every calculation: where its findings, assumptions and trace go.</summary>
internal abstract record CalculationScope(RuleBook Book, Budget Budget)
{
    public FindingList Findings { get; } = new();

    public List<Assumption> Assumptions { get; } = [];

    public Trace Trace { get; protected init; } = new(Budget.Trace);

    /// <summary>Findings that only list what is missing. They wait for each other: twelve that say the same are not read.</summary>
    protected virtual IReadOnlyList<FindingDefinition> Lists => [];

    /// <summary>What they found so far.</summary>
    protected List<Gap> Gaps { get; } = [];

    /// <summary>Adds a finding, with the first severity of its definition where none is given.</summary>
    public virtual void Find(FindingDefinition definition, string pointer, Judged judged = default,
        IReadOnlyList<string>? related = null, Severity? severity = null, Source? source = null, params ReadOnlySpan<FindingWord> words)
    {
        if (Lists.Contains(definition))
        {
            Gaps.Add(new(definition, pointer, words[0].Text!));
        }
        else
        {
            Add(definition, pointer, judged, related, severity, source, words);
        }
    }

    /// <summary>Says what is missing: all gaps of a kind in one finding.</summary>
    public virtual void FindGaps() => FindGaps(Gaps);

    protected void FindGaps(IEnumerable<Gap> gaps, string between = "; ", Severity? severity = null)
    {
        foreach (var kind in gaps.GroupBy(gap => gap.Finding))
        {
            FindMissing(kind.Key, [.. kind.Select(gap => (gap.Pointer, gap.What))], between, severity);
        }
    }

    /// <summary>One finding for all that is missing, at the first member with the others beside it; none where nothing is.</summary>
    public void FindMissing(
        FindingDefinition definition, IReadOnlyList<(string Pointer, string What)> missing, string between = ", ",
        Severity? severity = null)
    {
        if (missing.Count > 0)
        {
            Add(definition, missing[0].Pointer, related: [.. missing.Skip(1).Select(one => one.Pointer)], severity: severity,
                words: new FindingWord("what", string.Join(between, missing.Select(one => one.What).Distinct(StringComparer.Ordinal))));
        }
    }

    private void Add(FindingDefinition definition, string pointer, Judged judged = default,
        IReadOnlyList<string>? related = null, Severity? severity = null, Source? source = null, params ReadOnlySpan<FindingWord> words) =>
        Add(new Finding(definition, severity ?? definition.Severities[0], pointer)
        {
            Judged = judged,
            Related = related ?? [],
            Source = source,
            Words = words.ToArray(),
        });

    /// <summary>Adds a finding; one that is newer than the edition isn't raised.</summary>
    public void Add(Finding finding)
    {
        if (finding.Definition.IsIn(Book))
        {
            Findings.Add(finding);
        }
    }

    /// <summary>Says what the rules fill in.</summary>
    public void Assume(string pointer, Rule rule, AssumptionOrigin origin = AssumptionOrigin.RuleSet) =>
        Assume(pointer, rule.Text, (Measure?)rule, origin);

    public virtual void Assume(string pointer, string text, Measure? value, AssumptionOrigin origin) =>
        Assumptions.Add(new(pointer, text, value, origin));
}
