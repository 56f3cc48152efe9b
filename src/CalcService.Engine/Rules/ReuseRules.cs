using CalcService.Engine.Findings;

namespace CalcService.Engine.Rules;

/// <summary>The limits that a used socket is held against, besides those of wear, which come with the request.</summary>
public sealed record ReuseRules
{
    /// <summary>Warmer than this while the cone came out: have the steel tested.</summary>
    public required RuleLimit RemovalWarm { get; init; }

    /// <summary>Warmer than this nobody may use it again unless its steel is shown to have borne it.</summary>
    public required RuleLimit RemovalHot { get; init; }

    /// <summary>Oldest search for cracks.</summary>
    public required RuleLimit InspectionAge { get; init; }

    /// <summary>Strength over stress at the rated load.</summary>
    public required RuleLimit DesignFactor { get; init; }

    /// <summary>Most wear, as a share of a size, that a limit can be meant to allow.</summary>
    public required RuleLimit MostAllowed { get; init; }

    /// <summary>Hottest removal that a limit can be meant to allow.</summary>
    public required RuleLimit HottestAllowed { get; init; }

    /// <summary>Less than this share of the drawing's metal: what the maker said of the socket holds no longer.</summary>
    public required RuleLimit LeastLeft { get; init; }

    /// <summary>More metal than the drawing's by more than this share: it isn't the socket of the drawing, or not bare.</summary>
    public required RuleLimit FarOffDrawing { get; init; }

    /// <summary>
    /// How far a machined size may be off where the drawing doesn't say: up to a size, by this much either way; smallest sizes first.
    /// </summary>
    public required IReadOnlyList<(double UpToM, RuleNumber Tolerance)> GeneralTolerances { get; init; }

    /// <summary>The compound that is taken to press on the wall, since a socket outlives the compounds in it.</summary>
    public required (RuleNumber Modulus, RuleNumber Poisson, RuleNumber Shrinkage) Compound { get; init; }

    /// <summary>Share of the small end that wires take where the rope isn't known.</summary>
    public required RuleNumber WireShare { get; init; }

    /// <summary>Every limit, in a fixed order.</summary>
    public IReadOnlyList<Rule> All =>
    [
        RemovalWarm, RemovalHot, InspectionAge, DesignFactor, MostAllowed, HottestAllowed, LeastLeft, FarOffDrawing,
            .. GeneralTolerances.Select(one => one.Tolerance),
        Compound.Modulus, Compound.Poisson, Compound.Shrinkage, WireShare,
    ];

    /// <summary>The tolerance of a machined size whose drawing doesn't give one.</summary>
    public RuleNumber GeneralTolerance(double sizeM) => GeneralTolerances.FirstOrDefault(one => sizeM <= one.UpToM,
        GeneralTolerances[^1]).Tolerance;
}
