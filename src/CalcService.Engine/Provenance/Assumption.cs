namespace CalcService.Engine.Provenance;

/// <summary>Who chose a value that the request didn't give.</summary>
public enum AssumptionOrigin
{
    /// <summary>A default of this service.</summary>
    Default,

    /// <summary>Estimated from what the request does give.</summary>
    Estimate,

    /// <summary>The rule set in force.</summary>
    RuleSet,
}

/// <summary>A value that the calculation used and the request didn't give.</summary>
/// <param name="Pointer">The member that would replace it.</param>
/// <param name="Text">What was assumed and why.</param>
/// <param name="Value">The value, where it is one number.</param>
/// <param name="Origin">Who chose it.</param>
public sealed record Assumption(string Pointer, string Text, Measure? Value, AssumptionOrigin Origin);
