using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Pouring;

/// <summary>The same plan under other readings, of which only the decision is asked: nothing is written down.</summary>
internal sealed record PourProbe : PourScope
{
    /// <param name="plan">The plan.</param>
    /// <param name="conditions">The other readings.</param>
    /// <param name="lasting">The decision that holds whatever the readings are.</param>
    public PourProbe(PourScope plan, PourConditions conditions, Decision lasting)
        : base(plan)
    {
        if (conditions.SteelK != plan.Conditions.SteelK)
        {
            Steel = new(plan.Input.Ends, conditions.SteelK);
        }

        Conditions = conditions;
        Trace = Trace.None;
        Decision = lasting;
    }

    /// <summary>The decision so far.</summary>
    public Decision Decision { get; private set; }

    /// <summary>Nothing that is still to be checked can change the decision.</summary>
    public bool IsSettled => Decision == Decision.DoNotProceed;

    public override void Find(FindingDefinition definition, string pointer, Judged judged = default,
        IReadOnlyList<string>? related = null, Severity? severity = null, Source? source = null, params ReadOnlySpan<FindingWord> words)
    {
        if (definition.IsIn(Book) && (Decision)(severity ?? definition.Severities[0]) is var found && found > Decision)
        {
            Decision = found;
        }
    }

    public override void Assume(string pointer, string text, Measure? value, AssumptionOrigin origin)
    {
    }
}
