using CalcService.Engine.Findings;

namespace CalcService.Engine.Rules;

/// <summary>What a law allows of a vapour in the air of one kind of workplace. Null where it sets no such limit.</summary>
/// <param name="Jurisdiction">Where it holds, by its code.</param>
/// <param name="Workplace">The kind of workplace; null where it holds for all.</param>
/// <param name="Ceiling">Never to be exceeded.</param>
/// <param name="ShortTerm">Mean over fifteen minutes.</param>
/// <param name="TimeWeighted">Mean over eight hours.</param>
public sealed record AirLaw(string Jurisdiction, Workplace? Workplace, RuleLimit? Ceiling, RuleLimit? ShortTerm, RuleLimit? TimeWeighted)
{
    /// <summary>Where and for whom it holds, in words.</summary>
    public required string Name { get; init; }

    /// <summary>Its limits.</summary>
    public IEnumerable<RuleLimit> Limits => new[] { Ceiling, ShortTerm, TimeWeighted }.OfType<RuleLimit>();
}

/// <summary>Kinds of workplace that laws tell apart.</summary>
public enum Workplace
{
    /// <summary>Not said.</summary>
    Unknown,

    /// <summary>A shop, a yard or a plant.</summary>
    GeneralIndustry,

    /// <summary>A construction site.</summary>
    Construction,

    /// <summary>A shipyard.</summary>
    Shipyard,
}

/// <summary>A vapour with its limits in the air of a workplace.</summary>
/// <param name="Substance">Name of the substance.</param>
/// <param name="MolarMassGPerMol">M, g/mol.</param>
/// <param name="Laws">What laws allow; the first holds where nobody says where the pour is.</param>
/// <param name="RecommendedShortTerm">Mean over fifteen minutes.</param>
/// <param name="RecommendedTimeWeighted">Mean over a working day.</param>
/// <param name="FlashPoint">From this temperature on its vapour can burn.</param>
public sealed record AirLimits(
    string Substance,
    double MolarMassGPerMol,
    IReadOnlyList<AirLaw> Laws,
    RuleLimit RecommendedShortTerm,
    RuleLimit RecommendedTimeWeighted,
    RuleLimit FlashPoint)
{
    /// <summary>Every limit, in a fixed order.</summary>
    public IEnumerable<RuleLimit> All => [.. Laws.SelectMany(law => law.Limits), RecommendedShortTerm, RecommendedTimeWeighted, FlashPoint];

    /// <summary>The law that holds at a place; where something isn't said, the first that may hold.</summary>
    public AirLaw LawAt(string? jurisdiction, Workplace workplace) =>
        Laws.First(law => MayHold(law, jurisdiction ?? Laws[0].Jurisdiction, workplace));

    /// <summary>Laws that may hold there, as far as it is said.</summary>
    public IEnumerable<AirLaw> LawsThatMayHold(string? jurisdiction, Workplace workplace) =>
        Laws.Where(law => MayHold(law, jurisdiction, workplace));

    private static bool MayHold(AirLaw law, string? jurisdiction, Workplace workplace) =>
        (jurisdiction is null || law.Jurisdiction == jurisdiction)
        && (workplace == Workplace.Unknown || law.Workplace is null || law.Workplace == workplace);
}
