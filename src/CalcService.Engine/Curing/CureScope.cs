using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Curing;

/// <summary>What the steps of one schedule share: the question, the rules, and where findings, assumptions and trace go.</summary>
internal sealed record CureScope(CureScheduleInput Input, RuleBook Book, Budget Budget, CancellationToken CancellationToken)
{
    public CuringRules Rules => Book.Curing;

    public FindingList Findings { get; } = new();

    public List<Assumption> Assumptions { get; } = [];

    public Trace Trace { get; } = new(Budget.Trace);

    public void Find(FindingDefinition definition, string pointer, Measure? measured = null, Measure? limit = null,
        IReadOnlyList<string>? related = null, params FindingWord[] words) =>
        Findings.Add(new Finding(definition, definition.Severities[0], pointer)
        {
            Measured = measured,
            Limit = limit,
            Related = related ?? [],
            Words = words,
        });

    /// <summary>The sheet doesn't state what a safety rule needs.</summary>
    public void SheetSilent(string pointer, string what) => Find(CompoundFindings.SheetSilent, pointer, words: new FindingWord("what", what));

    public void Assume(string pointer, string text, Measure? value, AssumptionOrigin origin) => Assumptions.Add(new(pointer, text, value, origin));

    public static double Si(RuleLimit limit) => limit.Value!.Value.Si;
}
