using CalcService.Engine.Findings;

namespace CalcService.Engine.Rules;

/// <summary>How a rope is seized before it is cut and opened. Sizes are in rope diameters.</summary>
public sealed record SeizingRules
{
    /// <summary>Seizings for each inch of rope diameter.</summary>
    public required RuleNumber CountPerInch { get; init; }

    /// <summary>Fewest seizings.</summary>
    public required RuleNumber CountLeast { get; init; }

    /// <summary>Least width of one seizing.</summary>
    public required RuleNumber WidthLeast { get; init; }

    /// <summary>Largest width of one seizing.</summary>
    public required RuleNumber WidthMost { get; init; }

    /// <summary>Distance between seizings.</summary>
    public required RuleNumber Spacing { get; init; }

    /// <summary>Distance between seizings by those who set them wider.</summary>
    public required RuleNumber SpacingWide { get; init; }

    /// <summary>Every limit, in a fixed order.</summary>
    public IReadOnlyList<Rule> All => [CountPerInch, CountLeast, WidthLeast, WidthMost, Spacing, SpacingWide];
}
