using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Findings;

/// <summary>A calculation that writes down every check with its evidence. What is missing never passes.</summary>
internal abstract record CheckScope(RuleBook Book, Budget Budget) : CalculationScope(Book, Budget)
{
    public List<CheckRow> Checks { get; } = [];

    private HashSet<(string Code, string Pointer, Severity Severity)> Said { get; } = [];

    /// <summary>Adds a finding once for each member.</summary>
    public override void Find(FindingDefinition definition, string pointer, Judged judged = default,
        IReadOnlyList<string>? related = null, Severity? severity = null, Source? source = null, params ReadOnlySpan<FindingWord> words)
    {
        if (Said.Add((definition.Code, pointer, severity ?? definition.Severities[0])))
        {
            base.Find(definition, pointer, judged, related, severity, source, words);
        }
    }

    /// <summary>Adds the finding of each gap.</summary>
    public void Find(IEnumerable<Gap> gaps)
    {
        foreach (var gap in gaps)
        {
            Find(gap.Finding, gap.Pointer, words: new FindingWord("what", gap.What));
        }
    }

    /// <summary>Writes a check down, unless its rule is newer than the edition.</summary>
    public void Write(string id, CheckOutcome outcome, FindingDefinition rule, Judged judged = default,
        IReadOnlyList<string>? missing = null)
    {
        if (rule.IsIn(Book))
        {
            Checks.Add(new(id, outcome, judged, judged.Limit?.Source ?? rule.SourceIn(Book), missing ?? [], rule.Code));
        }
    }

    /// <summary>
    /// How a check comes out by the weight of what stands against it: only a stop fails, since no row may forbid what the decision allows.
    /// What asks for care or lacks a fact leaves it open.
    /// </summary>
    public static CheckOutcome OutcomeOf(Severity? against) => against switch
    {
        null or Severity.Note => CheckOutcome.Pass,
        Severity.Stop => CheckOutcome.Fail,
        _ => CheckOutcome.Undetermined,
    };

    /// <summary>A check against which one finding stands, or none.</summary>
    public void Weigh(string id, FindingDefinition? against, FindingDefinition rule, Judged judged = default,
        IReadOnlyList<string>? missing = null) =>
        Write(id, OutcomeOf(against?.Severities[0]), against ?? rule, judged, missing);

    /// <summary>A check that is of no use here.</summary>
    public void Skip(string id, FindingDefinition rule, Measure? measured = null) =>
        Write(id, CheckOutcome.NotApplicable, rule, new(measured, null));

    /// <summary>Where something is missing: writes the check as undetermined, with a finding for each gap; true then.</summary>
    public bool IsOpen(string id, FindingDefinition rule, IReadOnlyCollection<Gap> gaps, Judged judged = default)
    {
        Find(gaps);
        if (gaps.Count > 0)
        {
            Write(id, CheckOutcome.Undetermined, rule, judged, [.. gaps.Select(gap => gap.Pointer).Distinct(StringComparer.Ordinal)]);
        }

        return gaps.Count > 0;
    }

    /// <summary>A fact that has to be no.</summary>
    public void MustNotBe(string id, bool? fact, string pointer, FindingDefinition rule, Gap gap, params ReadOnlySpan<FindingWord> words)
    {
        if (IsOpen(id, rule, fact is null ? [gap] : []))
        {
            return;
        }

        if (fact == true)
        {
            Find(rule, pointer, words: words);
        }

        Weigh(id, fact == true ? rule : null, rule);
    }

    /// <summary>
    /// A number that has to stay within its limit. Above it fails even where something else is missing: missing never softens a stop.
    /// </summary>
    public void MustNotExceed(string id, Judged judged, string pointer, FindingDefinition rule, IReadOnlyCollection<Gap> gaps)
    {
        if (judged.IsAbove)
        {
            Find(rule, pointer, judged);
        }

        Judge(id, judged.IsAbove ? rule.Severities[0] : null, rule, gaps, judged);
    }

    /// <summary>A check that comes out by what is there and stays open by what is missing: missing never softens a stop.</summary>
    public void Judge(string id, Severity? against, FindingDefinition rule, IReadOnlyCollection<Gap> gaps, Judged judged = default)
    {
        var isOpen = IsOpen(id, rule, gaps, judged);
        if (against == Severity.Stop)
        {
            Checks.RemoveAll(check => check.Id == id);
        }

        if (against == Severity.Stop || !isOpen)
        {
            Write(id, OutcomeOf(against), rule, judged, [.. gaps.Select(gap => gap.Pointer).Distinct(StringComparer.Ordinal)]);
        }
    }
}
