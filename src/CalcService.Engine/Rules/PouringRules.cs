using CalcService.Engine.Findings;

namespace CalcService.Engine.Rules;

/// <summary>A vapour with its limits in the air of a workplace.</summary>
/// <param name="Substance">Name of the substance.</param>
/// <param name="MolarMassGPerMol">M, g/mol.</param>
/// <param name="LegalCeiling">Never to be exceeded.</param>
/// <param name="LegalTimeWeighted">Mean over eight hours.</param>
/// <param name="RecommendedShortTerm">Mean over fifteen minutes.</param>
/// <param name="RecommendedTimeWeighted">Mean over a working day.</param>
/// <param name="FlashPoint">From this temperature on its vapour can burn.</param>
public sealed record AirLimits(
    string Substance,
    double MolarMassGPerMol,
    RuleLimit LegalCeiling,
    RuleLimit LegalTimeWeighted,
    RuleLimit RecommendedShortTerm,
    RuleLimit RecommendedTimeWeighted,
    RuleLimit FlashPoint);

/// <summary>The limits and defaults that a pour plan holds against.</summary>
public sealed record PouringRules
{
    public const string General = "general";

    /// <summary>Least distance of the steel from the dew point.</summary>
    public required RuleLimit DewMargin { get; init; }

    /// <summary>Highest grade without special precautions, N/mm².</summary>
    public required RuleLimit HighestOrdinaryGrade { get; init; }

    /// <summary>Least basket length in rope diameters.</summary>
    public required RuleLimit BasketLengthInDiameters { get; init; }

    /// <summary>Least included cone angle.</summary>
    public required RuleLimit ConeAngleLeast { get; init; }

    /// <summary>Largest included cone angle.</summary>
    public required RuleLimit ConeAngleMost { get; init; }

    /// <summary>Allowance on the resin where the request gives none.</summary>
    public required RuleLimit Allowance { get; init; }

    /// <summary>Activation energy of gelling where one gel time is all there is: low, expected, high.</summary>
    public required (RuleLimit Low, RuleLimit Expected, RuleLimit High) AssumedActivationEnergy { get; init; }

    /// <summary>How many times less than its nominal air exchange a room takes away near the work.</summary>
    public required RuleLimit MixingFactor { get; init; }

    /// <summary>Air speed over the open resin.</summary>
    public required RuleLimit AirSpeed { get; init; }

    /// <summary>Age from which on a data sheet is asked for again, calendar months.</summary>
    public required RuleLimit SheetAge { get; init; }

    /// <summary>Widest included angle of the opened broom.</summary>
    public required RuleLimit BroomAngle { get; init; }

    /// <summary>Up to this rope diameter the seal gets a vent.</summary>
    public required RuleLimit VentUpTo { get; init; }

    /// <summary>How long a reading holds where the request doesn't say.</summary>
    public required RuleLimit ReadingsValidFor { get; init; }

    /// <summary>How the rope is seized.</summary>
    public required SeizingRules Seizing { get; init; }

    /// <summary>Vapours whose limits and properties are known.</summary>
    public required IReadOnlyList<AirLimits> Air { get; init; }

    /// <summary>Every limit, in a fixed order.</summary>
    public IReadOnlyList<RuleLimit> All =>
    [
        DewMargin, HighestOrdinaryGrade, BasketLengthInDiameters, ConeAngleLeast, ConeAngleMost, Allowance,
        AssumedActivationEnergy.Low, AssumedActivationEnergy.Expected, AssumedActivationEnergy.High, MixingFactor, AirSpeed,
        SheetAge, BroomAngle, VentUpTo, ReadingsValidFor,
        .. Air.SelectMany(air => new[] { air.LegalCeiling, air.LegalTimeWeighted, air.RecommendedShortTerm, air.RecommendedTimeWeighted, air.FlashPoint }),
        .. Seizing.All,
    ];
}
