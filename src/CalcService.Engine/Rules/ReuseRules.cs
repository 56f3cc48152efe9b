using CalcService.Engine.Findings;

namespace CalcService.Engine.Rules;

/// <summary>The limits that a used socket is held against, besides those of wear, which come with the request.</summary>
public sealed record ReuseRules
{
    /// <summary>Warmer than this while the cone came out: have the steel tested.</summary>
    public required RuleLimit RemovalWarm { get; init; }

    /// <summary>Warmer than this: withdrawn.</summary>
    public required RuleLimit RemovalHot { get; init; }

    /// <summary>Oldest search for cracks.</summary>
    public required RuleLimit InspectionAge { get; init; }

    /// <summary>Strength over stress at the rated load.</summary>
    public required RuleLimit DesignFactor { get; init; }

    /// <summary>Every limit, in a fixed order.</summary>
    public IReadOnlyList<RuleLimit> All => [RemovalWarm, RemovalHot, InspectionAge, DesignFactor];
}
