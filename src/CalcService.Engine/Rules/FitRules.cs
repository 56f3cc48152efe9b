using CalcService.Engine.Findings;

namespace CalcService.Engine.Rules;

/// <summary>Bounds beyond which an end in a socket can't be meant, or can't hold.</summary>
public sealed record FitRules
{
    /// <summary>Below this included angle a basket is no cone.</summary>
    public required RuleLimit LeastCone { get; init; }

    /// <summary>Basket in rope diameters below which nothing holds.</summary>
    public required RuleLimit ShortestBasket { get; init; }

    /// <summary>Basket in rope diameters below which only a type test can tell.</summary>
    public required RuleLimit ShortBasket { get; init; }

    /// <summary>Small end in rope diameters from which the rope isn't led.</summary>
    public required RuleLimit WidestSmallEnd { get; init; }

    /// <summary>Small end in rope diameters above which it is loose.</summary>
    public required RuleLimit LooseSmallEnd { get; init; }

    /// <summary>How far a certificate's breaking force may lie off the estimate of its class.</summary>
    public required RuleLimit StrengthSpread { get; init; }

    /// <summary>Lean above which nobody knows how the cone sets.</summary>
    public required RuleLimit MostTilt { get; init; }

    /// <summary>Lean of a rope that can still be read as one.</summary>
    public required RuleLimit ReadTilt { get; init; }

    /// <summary>Share of its nominal diameter that a rope may have lost where no rule set says.</summary>
    public required RuleLimit Thinning { get; init; }

    /// <summary>Share of its nominal diameter by which a rope may measure thicker.</summary>
    public required RuleLimit Thickening { get; init; }

    /// <summary>Straight rope below the socket in rope diameters.</summary>
    public required RuleLimit StraightRope { get; init; }

    /// <summary>How long before the pour a broom may have been dried.</summary>
    public required RuleLimit DriedFor { get; init; }

    /// <summary>Included angle below which a broom can't be cleaned and filled through.</summary>
    public required RuleLimit NarrowBroom { get; init; }

    /// <summary>Length of lay in rope diameters below which what is told is no length of lay.</summary>
    public required RuleLimit LeastLay { get; init; }

    /// <summary>Length of lay in rope diameters above which it is none.</summary>
    public required RuleLimit MostLay { get; init; }

    /// <summary>Every limit, in a fixed order.</summary>
    public IReadOnlyList<Rule> All =>
    [
        LeastCone, ShortestBasket, ShortBasket, WidestSmallEnd, LooseSmallEnd, StrengthSpread, MostTilt, ReadTilt, Thinning, Thickening,
        StraightRope, DriedFor, NarrowBroom, LeastLay, MostLay,
    ];
}
