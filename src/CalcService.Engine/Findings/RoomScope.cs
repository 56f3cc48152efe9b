using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Findings;

/// <summary>What the steps of one calculation share in every room: where its findings, assumptions and trace go.</summary>
internal abstract record RoomScope(RuleBook Book, Budget Budget)
{
    public FindingList Findings { get; } = new();

    public List<Assumption> Assumptions { get; } = [];

    public Trace Trace { get; protected init; } = new(Budget.Trace);

    /// <summary>Adds a finding, with the first severity of its definition where none is given.</summary>
    public virtual void Find(FindingDefinition definition, string pointer, Judged judged = default,
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
