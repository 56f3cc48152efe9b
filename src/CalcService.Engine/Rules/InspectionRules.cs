using CalcService.Engine.Findings;
using CalcService.Engine.Ropes;

namespace CalcService.Engine.Rules;

/// <summary>Over what broken wires are counted.</summary>
public enum WireWindow
{
    /// <summary>One rope lay, anywhere.</summary>
    Lay,

    /// <summary>One rope lay, in the rope beyond its end connections.</summary>
    LayBeyondEnds,

    /// <summary>One strand in one rope lay.</summary>
    Strand,

    /// <summary>Six rope diameters.</summary>
    SixDiameters,

    /// <summary>Thirty rope diameters.</summary>
    ThirtyDiameters,

    /// <summary>At the end connection: in the one rope lay that begins where the rope leaves it.</summary>
    EndLay,

    /// <summary>In the valleys between the strands, in one rope lay.</summary>
    Valley,
}

/// <summary>What an end can have, besides broken wires.</summary>
public enum EndCondition
{
    /// <summary>Put together wrongly.</summary>
    ImproperlyApplied,

    /// <summary>Corroded.</summary>
    Corroded,

    /// <summary>Cracked.</summary>
    Cracked,

    /// <summary>Bent, or the rope bent where it leaves the socket.</summary>
    Bent,

    /// <summary>Worn.</summary>
    Worn,

    /// <summary>The cone or a wire has moved.</summary>
    Slipped,
}

/// <summary>A number of broken wires that takes a rope or an end out of service.</summary>
/// <param name="Id">Name of the check.</param>
/// <param name="Window">Over what they are counted.</param>
/// <param name="Functions">The ropes that it holds for.</param>
/// <param name="Limit">From this number on it rejects.</param>
public sealed record BrokenWireRule(string Id, WireWindow Window, IReadOnlyList<RopeFunction> Functions, RuleLimit Limit);

/// <summary>A condition that takes an end out of service.</summary>
public sealed record EndConditionRule(EndCondition Condition, RuleLimit Limit);

/// <summary>The limits of ends in service.</summary>
public sealed record InspectionRules
{
    public const string ConstructionCrane = "construction-crane";
    public const string Platform = "platform";
    public const string Naval = "naval";

    /// <summary>The rule sets that a request can name.</summary>
    public static IReadOnlyList<string> RuleSets { get; } =
        [ConstructionCrane, MatchingRules.MineHoist, Platform, Naval, PouringRules.General];

    public required IReadOnlyList<BrokenWireRule> BrokenWires { get; init; }

    public required IReadOnlyList<EndConditionRule> Conditions { get; init; }

    /// <summary>Most loss of diameter from the nominal one.</summary>
    public required RuleLimit NominalDiameterLoss { get; init; }

    /// <summary>Most loss of diameter from the one first measured.</summary>
    public required RuleLimit BaselineDiameterLoss { get; init; }

    /// <summary>Most loss of strength by a nondestructive test.</summary>
    public required RuleLimit StrengthLoss { get; init; }

    /// <summary>Fewest full turns left on the drum.</summary>
    public required RuleLimit DrumTurns { get; init; }

    /// <summary>Most months until an end is socketed again.</summary>
    public required RuleLimit ResocketAfter { get; init; }

    /// <summary>How far beyond the damage a rope is cut.</summary>
    public required RuleNumber CutBeyond { get; init; }

    /// <summary>Warmest service of resin where no sheet says otherwise.</summary>
    public required RuleLimit RememberedHighest { get; init; }

    /// <summary>Every limit, in a fixed order.</summary>
    public IReadOnlyList<Rule> All =>
    [
        .. BrokenWires.Select(rule => rule.Limit), .. Conditions.Select(rule => rule.Limit),
        NominalDiameterLoss, BaselineDiameterLoss, StrengthLoss, DrumTurns, ResocketAfter, CutBeyond, RememberedHighest,
    ];
}
