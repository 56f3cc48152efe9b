using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Inspection;

/// <summary>What the steps of one inspection share.</summary>
internal sealed record InspectionScope(InspectionInput Input, RuleBook Book, Budget Budget) : RoomScope(Budget)
{
    public InspectionRules Rules => Book.Inspection;

    /// <summary>Where nobody names a rule set, or the general one, the strictest known limit holds.</summary>
    public bool IsGeneral { get; } = Input.RuleSet is null or PouringRules.General;

    public List<InspectionCheck> Checks { get; } = [];

    /// <summary>How much a limit weighs here: its own rule set and the general one stop; borrowed from another set it is a caution.</summary>
    public Severity WeightOf(RuleLimit limit) =>
        IsGeneral || limit.RuleSet == Input.RuleSet || limit.RuleSet == PouringRules.General ? Severity.Stop : Severity.Caution;

    /// <summary>Keeps a check; what is missing only counts where it is undetermined.</summary>
    public void Check(string id, CheckOutcome outcome, Severity severity, RuleLimit limit, Measure? measured = null, double? use = null, params IReadOnlyList<string> missing) =>
        Checks.Add(new(id, outcome, severity, measured, limit, missing) { Use = use });
}
