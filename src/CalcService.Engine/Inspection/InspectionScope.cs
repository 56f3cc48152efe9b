using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Inspection;

/// <summary>What the steps of one inspection share.</summary>
internal sealed record InspectionScope(InspectionInput Input, RuleBook Book, Budget Budget) : CalculationScope(Book, Budget)
{
    public InspectionRules Rules => Book.Inspection;

    public List<InspectionCheck> Checks { get; } = [];

    /// <summary>The length of lay as told, where it can be one. What else is told is a slip of units, and tells nothing.</summary>
    public double? LayM => Input.Rope.LayLengthM is { } lay && Measure.Count(lay / Input.Rope.DiameterM) is var diameters
        && !Book.Pouring.Fit.LeastLay.Judge(diameters).IsBelow && !Book.Pouring.Fit.MostLay.Judge(diameters).IsAbove ? lay : null;

    /// <summary>
    /// Whether a limit holds here: by the rule set that is named, or for every end. Where nobody names a set, or the general one, the
    /// strictest known limit holds.
    /// </summary>
    public bool Holds(RuleLimit limit) =>
        Input.RuleSet is null or PouringRules.General || limit.RuleSet == Input.RuleSet || limit.RuleSet == PouringRules.General;

    /// <summary>How much a limit weighs where it is exceeded: one that holds stops; of one of another rule set nobody knows.</summary>
    public Severity WeightOf(RuleLimit limit) => Holds(limit) ? Severity.Stop : Severity.Unknown;

    /// <summary>What a check comes to where its limit is exceeded.</summary>
    public CheckOutcome OutcomeOf(RuleLimit limit) => CheckScope.OutcomeOf(WeightOf(limit));

    /// <summary>What would settle a check whose limit is exceeded.</summary>
    public IReadOnlyList<string> MissingOf(RuleLimit limit) => Holds(limit) ? [] : [InspectionPointers.RuleSet];

    /// <summary>
    /// Says that a limit is exceeded: by the inspection's own finding where it holds, else that somebody has to read its clause.
    /// </summary>
    public void Exceed(FindingDefinition definition, string pointer, RuleLimit limit, Measure measured, IReadOnlyList<string> related) =>
        Exceed(Holds(limit) ? definition : InspectionFindings.LimitElsewhere, pointer, measured, limit, related);

    /// <summary>Says that the limit of a law for other machines is exceeded, and that somebody has to read its clause.</summary>
    public void SayElsewhere(string pointer, RuleLimit limit, Measure measured, IReadOnlyList<string> related) =>
        Exceed(InspectionFindings.LimitElsewhere, pointer, measured, limit, related);

    private void Exceed(FindingDefinition definition, string pointer, Measure measured, RuleLimit limit, IReadOnlyList<string> related) =>
        Find(definition, pointer, limit.Judge(measured), related,
            words: [new("rule", limit.Text), new("document", limit.Source.Document), new("clause", limit.Source.Clause)]);

    protected override IReadOnlyList<FindingDefinition> Lists { get; } = [InspectionFindings.NotLookedAt];

    /// <summary>Keeps something that nobody looked at.</summary>
    public void Miss(string pointer, string what) => Find(InspectionFindings.NotLookedAt, pointer, words: new FindingWord("what", what));

    public override void FindGaps() => FindGaps(Gaps, ", ");

    /// <summary>Keeps a check; what is missing only counts where it is undetermined.</summary>
    public void Check(
        string id, CheckOutcome outcome, Severity severity, RuleLimit limit, Measure? measured = null, double? use = null,
        params IReadOnlyList<string> missing) =>
        Checks.Add(new(id, outcome, severity, measured, limit, missing) { Use = use });
}
