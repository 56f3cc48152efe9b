using CalcService.Engine.Findings;

namespace CalcService.Engine.Rules;

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
    public required RuleNumber Allowance { get; init; }

    /// <summary>Activation energy of gelling where one gel time is all there is: low, expected, high.</summary>
    public required (RuleNumber Low, RuleNumber Expected, RuleNumber High) AssumedActivationEnergy { get; init; }

    /// <summary>How many times less than its nominal air exchange a room takes away near the work.</summary>
    public required RuleNumber MixingFactor { get; init; }

    /// <summary>Air speed over the open resin.</summary>
    public required RuleNumber AirSpeed { get; init; }

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

    /// <summary>What an end in a socket can't be.</summary>
    public required FitRules Fit { get; init; }

    /// <summary>Vapours whose limits and properties are known.</summary>
    public required IReadOnlyList<AirLimits> Air { get; init; }

    /// <summary>Every limit, in a fixed order.</summary>
    public IReadOnlyList<Rule> All =>
    [
        DewMargin, HighestOrdinaryGrade, BasketLengthInDiameters, ConeAngleLeast, ConeAngleMost, Allowance,
        AssumedActivationEnergy.Low, AssumedActivationEnergy.Expected, AssumedActivationEnergy.High, MixingFactor, AirSpeed,
        SheetAge, BroomAngle, VentUpTo, ReadingsValidFor,
        .. Air.SelectMany(air => air.All),
        .. Seizing.All, .. Fit.All,
    ];
}
