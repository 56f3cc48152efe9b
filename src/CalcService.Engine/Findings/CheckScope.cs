using CalcService.Engine.Provenance;

namespace CalcService.Engine.Findings;

/// <summary>A calculation that writes down every check with its evidence. What is missing never passes.</summary>
internal abstract record CheckScope(Budget Budget) : RoomScope(Budget)
{
    public List<RoomCheck> Checks { get; } = [];

    private HashSet<(string Code, string Pointer, Severity Severity)> Said { get; } = [];

    /// <summary>Adds a finding once for each member.</summary>
    public override void Find(FindingDefinition definition, string pointer, Measure? measured = null, Measure? limit = null,
        IReadOnlyList<string>? related = null, Severity? severity = null, Source? source = null, params ReadOnlySpan<FindingWord> words)
    {
        if (Said.Add((definition.Code, pointer, severity ?? definition.Severities[0])))
        {
            base.Find(definition, pointer, measured, limit, related, severity, source, words);
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

    public void Write(string id, CheckOutcome outcome, FindingDefinition rule, Measure? measured = null, Measure? limit = null, Source? source = null, IReadOnlyList<string>? missing = null) =>
        Checks.Add(new(id, outcome, measured, limit, source ?? rule.Source, missing ?? [], rule.Code));

    /// <summary>
    /// How a check comes out by the weight of what stands against it: only a stop fails, since no row may forbid what the decision allows. What
    /// asks for care or lacks a fact leaves it open.
    /// </summary>
    public static CheckOutcome OutcomeOf(Severity? against) => against switch
    {
        null or Severity.Note => CheckOutcome.Pass,
        Severity.Stop => CheckOutcome.Fail,
        _ => CheckOutcome.Undetermined,
    };

    /// <summary>A check against which one finding stands, or none.</summary>
    public void Weigh(string id, FindingDefinition? against, FindingDefinition rule, Measure? measured = null, Measure? limit = null, IReadOnlyList<string>? missing = null) =>
        Write(id, OutcomeOf(against?.Severities[0]), against ?? rule, measured, limit, missing: missing);

    /// <summary>A check that is of no use here.</summary>
    public void Skip(string id, FindingDefinition rule, Measure? measured = null) => Write(id, CheckOutcome.NotApplicable, rule, measured);

    /// <summary>Where something is missing: writes the check as undetermined, with a finding for each gap; true then.</summary>
    public bool IsOpen(string id, FindingDefinition rule, IReadOnlyCollection<Gap> gaps, Measure? measured = null, Measure? limit = null, Source? source = null)
    {
        Find(gaps);
        if (gaps.Count > 0)
        {
            Write(id, CheckOutcome.Undetermined, rule, measured, limit, source, [.. gaps.Select(gap => gap.Pointer).Distinct(StringComparer.Ordinal)]);
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

    /// <summary>A number that has to stay within its limit. Above it fails even where something else is missing: missing never softens a stop.</summary>
    public void MustNotExceed(string id, Measure? measured, Measure? limit, string pointer, FindingDefinition rule, Source source, IReadOnlyCollection<Gap> gaps)
    {
        var above = measured is { } found && limit is { } most && Judged.IsAbove(found.Si, most.Si);
        if (above)
        {
            Find(rule, pointer, measured, limit, source: source);
        }

        Judge(id, above ? rule.Severities[0] : null, rule, gaps, measured, limit, source);
    }

    /// <summary>A check that comes out by what is there and stays open by what is missing: missing never softens a stop.</summary>
    public void Judge(string id, Severity? against, FindingDefinition rule, IReadOnlyCollection<Gap> gaps, Measure? measured = null, Measure? limit = null, Source? source = null)
    {
        var isOpen = IsOpen(id, rule, gaps, measured, limit, source);
        if (against == Severity.Stop)
        {
            Checks.RemoveAll(check => check.Id == id);
        }

        if (against == Severity.Stop || !isOpen)
        {
            Write(id, OutcomeOf(against), rule, measured, limit, source, [.. gaps.Select(gap => gap.Pointer).Distinct(StringComparer.Ordinal)]);
        }
    }
}
