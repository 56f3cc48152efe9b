namespace CalcService.Engine.Findings;

/// <summary>How much a finding weighs, worst last. Stop beats missing beats caution beats note.</summary>
public enum Severity
{
    /// <summary>Worth knowing.</summary>
    Note,

    /// <summary>Go on only with the care that the finding names.</summary>
    Caution,

    /// <summary>A fact that a safety rule needs is missing.</summary>
    Unknown,

    /// <summary>Do not go on.</summary>
    Stop,
}

/// <summary>The answer in one word, one to one with the worst severity found.</summary>
public enum Decision
{
    /// <summary>Nothing worse than a note.</summary>
    Proceed,

    /// <summary>At least one caution.</summary>
    ProceedWithCare,

    /// <summary>At least one missing fact, no stop.</summary>
    Undetermined,

    /// <summary>At least one stop.</summary>
    DoNotProceed,
}
