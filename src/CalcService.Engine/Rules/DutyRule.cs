using CalcService.Engine.Findings;

namespace CalcService.Engine.Rules;

/// <summary>What a rope end is for.</summary>
public enum DutyUse
{
    /// <summary>Not said.</summary>
    Unknown,

    /// <summary>Sling.</summary>
    Sling,

    /// <summary>Pendant or other standing rope of a crane.</summary>
    Pendant,

    /// <summary>Running hoist rope of a crane.</summary>
    HoistRope,

    /// <summary>Hoist rope of a mine.</summary>
    MineHoist,

    /// <summary>Suspension rope of a lift.</summary>
    Lift,

    /// <summary>Mooring line.</summary>
    Mooring,

    /// <summary>Anything else: the request gives its design factor.</summary>
    Other,
}

/// <summary>What a duty asks of a rope end.</summary>
/// <param name="Use">The duty.</param>
/// <param name="DesignFactor">Breaking force over working load; null where only the request can say.</param>
/// <param name="ProofFactor">Proof load over rated load; null where the duty has no rule of its own.</param>
public sealed record DutyRule(DutyUse Use, RuleLimit? DesignFactor, RuleNumber? ProofFactor);
