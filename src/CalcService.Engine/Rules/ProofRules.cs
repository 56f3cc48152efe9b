using CalcService.Engine.Findings;

namespace CalcService.Engine.Rules;

/// <summary>The limits of proof loading, besides the factors of the duties.</summary>
public sealed record ProofRules
{
    /// <summary>Shares of the proof load at which it is stopped and looked at.</summary>
    public required IReadOnlyList<RuleNumber> Steps { get; init; }

    /// <summary>How far the test load may stay below what is asked for.</summary>
    public required RuleLimit Under { get; init; }

    /// <summary>How far it may go above.</summary>
    public required RuleLimit Over { get; init; }

    /// <summary>How far the shrinkage of a compound may be off, either way.</summary>
    public required RuleNumber ShrinkageSpread { get; init; }

    /// <summary>Every limit, in a fixed order.</summary>
    public IReadOnlyList<Rule> All => [.. Steps, Under, Over, ShrinkageSpread];
}
