using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Matching;

/// <summary>What the steps of one match share: the question, the rules, and where findings, assumptions and trace go.</summary>
internal sealed record MatchScope(MatchInput Input, RuleBook Book, Budget Budget, CancellationToken CancellationToken)
{
    public MatchingRules Rules => Book.Matching;

    public FindingList Findings { get; } = new();

    public List<Assumption> Assumptions { get; } = [];

    public Trace Trace { get; } = new(Budget.Trace);

    public void Find(FindingDefinition definition, string pointer, Measure? measured = null, Measure? limit = null,
        IReadOnlyList<string>? related = null, Severity? severity = null, Source? source = null, params FindingWord[] words) =>
        Findings.Add(new Finding(definition, severity ?? definition.Severities[0], pointer)
        {
            Measured = measured,
            Limit = limit,
            Related = related ?? [],
            Source = source,
            Words = words,
        });

    public void Assume(string pointer, string text, Measure? value, AssumptionOrigin origin) =>
        Assumptions.Add(new(pointer, text, value, origin));

    /// <summary>What the request gives, else the rule's value, said.</summary>
    public double Given(double? value, string pointer, RuleLimit rule)
    {
        if (value is null)
        {
            Assume(pointer, rule.Text, rule.Value, AssumptionOrigin.RuleSet);
        }

        return value ?? rule.Value!.Value.Si;
    }
}
