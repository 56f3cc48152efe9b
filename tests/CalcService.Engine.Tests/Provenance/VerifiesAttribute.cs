namespace CalcService.Engine.Tests.Provenance;

/// <summary>What a formula is held against. The engine's own earlier output is none of these.</summary>
public enum Check
{
    /// <summary>Numbers that a document outside this repository prints, or that were worked by hand.</summary>
    WorkedExample,

    /// <summary>An exact result of mathematics.</summary>
    Analytic,

    /// <summary>Another way to compute the same, written without the formula under test.</summary>
    IndependentCode,
}

/// <summary>Says that a test holds a formula of the engine against something outside it.</summary>
/// <param name="formula">Id of the formula.</param>
/// <param name="check">What kind of check it is.</param>
/// <param name="source">Where the expected numbers come from.</param>
[AttributeUsage(AttributeTargets.Method, AllowMultiple = true)]
public sealed class VerifiesAttribute(string formula, Check check, string source) : Attribute
{
    public string Formula { get; } = formula;

    public Check Check { get; } = check;

    public string Source { get; } = source;
}
