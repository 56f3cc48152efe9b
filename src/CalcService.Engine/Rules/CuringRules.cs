using CalcService.Engine.Findings;

namespace CalcService.Engine.Rules;

/// <summary>The limits and defaults that a cure schedule holds against.</summary>
public sealed record CuringRules
{
    /// <summary>Degree of cure at which the compound has gelled.</summary>
    public required RuleNumber GelConversion { get; init; }

    /// <summary>Degree of cure that stands for the full strength of the sheet.</summary>
    public required RuleNumber FullStrengthConversion { get; init; }

    /// <summary>Longest time that a temperature that stays as it is is followed.</summary>
    public required RuleNumber Horizon { get; init; }

    /// <summary>Relative spread of the gel time from lot to lot.</summary>
    public required RuleNumber LotSpread { get; init; }

    /// <summary>Relative error of a gel time that somebody saw.</summary>
    public required RuleNumber ObservationSpread { get; init; }

    /// <summary>From so many standard deviations on a gel time is out of family.</summary>
    public required RuleNumber OutOfFamily { get; init; }

    /// <summary>A delay shorter than this is in the times, and is no news.</summary>
    public required RuleLimit DelayWorthSaying { get; init; }

    /// <summary>Heat that the outside gives to the air, radiation included.</summary>
    public required RuleNumber FilmCoefficient { get; init; }

    /// <summary>Every limit, in a fixed order.</summary>
    public IReadOnlyList<Rule> All => [GelConversion, FullStrengthConversion, Horizon, LotSpread, ObservationSpread, OutOfFamily,
        DelayWorthSaying, FilmCoefficient];
}
