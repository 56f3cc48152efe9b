namespace CalcService.Engine.Provenance;

/// <summary>One symbol of a formula with the number that stood for it.</summary>
/// <param name="Symbol">The symbol.</param>
/// <param name="Value">The number.</param>
/// <param name="Unit">The unit that the number is in, where the formula holds in that unit only.</param>
public readonly record struct Substitution(string Symbol, Measure Value, string? Unit = null)
{
    /// <summary>A number in the unit of an empirical formula.</summary>
    public static Substitution In(string symbol, double number, string unit) => new(symbol, Measure.Count(number), unit);
}

/// <summary>One formula as it was computed.</summary>
/// <param name="Formula">The formula.</param>
/// <param name="Of">What it was computed for, such as the id of an end; empty for the whole job.</param>
/// <param name="Value">The result.</param>
/// <param name="Substitutions">The numbers that went in.</param>
public sealed record TraceStep(FormulaAttribute Formula, string Of, Measure Value, IReadOnlyList<Substitution> Substitutions);

/// <summary>
/// Collects the steps of one calculation. The formulas themselves write to it, so a trace can't differ from what was
/// computed. Switched off it costs a comparison.
/// </summary>
public sealed class Trace(bool on)
{
    private readonly List<TraceStep> _steps = [];

    /// <summary>A trace that records nothing, for calls from checks.</summary>
    public static Trace None { get; } = new(false);

    /// <summary>What the following steps are computed for.</summary>
    public string Of
    {
        get;
        set => field = on ? value : field;
    } = "";

    public IReadOnlyList<TraceStep> Steps => _steps;

    /// <summary>Records a step and hands its value through.</summary>
    public double Step(string formulaId, double si, params ReadOnlySpan<Substitution> substitutions)
    {
        if (on)
        {
            var formula = FormulaCatalogue.All[formulaId];
            _steps.Add(new TraceStep(formula, Of, new Measure(si, formula.Kind), substitutions.ToArray()));
        }

        return si;
    }
}
