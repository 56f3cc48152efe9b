using CalcService.Engine.Findings;

namespace CalcService.Engine.Rules;

/// <summary>The limits of an audit, besides those that the work itself is held against.</summary>
public sealed record AuditRules
{
    /// <summary>How far a recorded volume may lie outside what basket and rope give, as a share of it.</summary>
    public required RuleLimit VolumeSpread { get; init; }

    /// <summary>How far a recorded volume may lie outside before it is no matter of measuring.</summary>
    public required RuleLimit VolumeFar { get; init; }

    /// <summary>Standard deviations of the control limits.</summary>
    public required RuleNumber ControlLimit { get; init; }

    /// <summary>Weight of the newest value in an exponentially weighted moving average.</summary>
    public required RuleNumber EwmaWeight { get; init; }

    /// <summary>Share of all ends that a tolerance limit covers.</summary>
    public required RuleNumber Coverage { get; init; }

    /// <summary>How sure that is.</summary>
    public required RuleNumber Confidence { get; init; }

    /// <summary>Fewer records than this make a chart that is only a beginning.</summary>
    public required RuleLimit FirmFrom { get; init; }

    /// <summary>Every limit, in a fixed order.</summary>
    public IReadOnlyList<Rule> All => [VolumeSpread, VolumeFar, ControlLimit, EwmaWeight, Coverage, Confidence, FirmFrom];
}
