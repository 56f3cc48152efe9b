using CalcService.Engine.Findings;

namespace CalcService.Engine.Rules;

/// <summary>The limits and defaults that a match of rope and socket holds against.</summary>
public sealed record MatchingRules
{
    public const string MineHoist = "mine-hoist";
    public const string Lift = "lift";

    /// <summary>What each duty asks.</summary>
    public required IReadOnlyList<DutyRule> Duties { get; init; }

    /// <summary>Least design factor of a rotation resistant hoist rope.</summary>
    public required RuleLimit RotationResistantLeast { get; init; }

    /// <summary>The same where nothing gives leave to go lower.</summary>
    public required RuleLimit RotationResistant { get; init; }

    /// <summary>Least factor of what hangs a platform with persons.</summary>
    public required RuleLimit Persons { get; init; }

    /// <summary>The same for rotation resistant rope.</summary>
    public required RuleLimit PersonsRotationResistant { get; init; }

    /// <summary>Least factor of any other rope that hangs persons, after that of a platform.</summary>
    public required RuleLimit PersonsElsewhere { get; init; }

    /// <summary>The same for rotation resistant rope.</summary>
    public required RuleLimit PersonsElsewhereRotationResistant { get; init; }

    /// <summary>K_T, strength of the end over that of the rope.</summary>
    public required RuleNumber Efficiency { get; init; }

    /// <summary>Least strength of a mine's attachment over that of the rope.</summary>
    public required RuleLimit MineAttachment { get; init; }

    /// <summary>Least length of a lift's basket, in rope diameters.</summary>
    public required RuleLimit LiftTaperLength { get; init; }

    /// <summary>Most that a lift's small end is wider than the rope.</summary>
    public required RuleLimit LiftSmallEndExcess { get; init; }

    /// <summary>Least mouth of a lift's basket, in rope diameters.</summary>
    public required RuleLimit LiftMouthLeast { get; init; }

    /// <summary>Largest mouth of a lift's basket, in rope diameters.</summary>
    public required RuleLimit LiftMouthMost { get; init; }

    /// <summary>Least basket length for spiral strand, in outer-wire diameters.</summary>
    public required RuleLimit SpiralLengthInWires { get; init; }

    /// <summary>Most proof load over the rope's breaking force.</summary>
    public required RuleLimit ProofShare { get; init; }

    /// <summary>Least design factor where no rule for the use is known.</summary>
    public required RuleLimit FactorLeast { get; init; }

    /// <summary>Coldest service that an older standard allows for resin.</summary>
    public required RuleLimit ServiceLowest { get; init; }

    /// <summary>Warmest service that an older standard allows for resin.</summary>
    public required RuleLimit ServiceHighest { get; init; }

    /// <summary>Friction between cone and socket: low, expected, high.</summary>
    public required (RuleNumber Low, RuleNumber Expected, RuleNumber High) Friction { get; init; }

    /// <summary>Linear shrinkage after gel over the volumetric shrinkage of the sheet.</summary>
    public required RuleNumber ShrinkageShare { get; init; }

    /// <summary>Outside over bore of a socket of which the outside isn't known.</summary>
    public required RuleNumber WallRatio { get; init; }

    /// <summary>Stiffness of a cone full of wires across its axis, over the compound's.</summary>
    public required RuleNumber RadialStiffening { get; init; }

    /// <summary>Pressure near the edge of the small end by finite elements, over this model's.</summary>
    public required RuleNumber LipFactor { get; init; }

    /// <summary>Every limit, in a fixed order.</summary>
    public IReadOnlyList<Rule> All =>
    [
        .. Duties.SelectMany(duty => new Rule?[] { duty.DesignFactor, duty.ProofFactor }).OfType<Rule>(),
        RotationResistantLeast, RotationResistant, Persons, PersonsRotationResistant, PersonsElsewhere, PersonsElsewhereRotationResistant,
        Efficiency, MineAttachment, LiftTaperLength, LiftSmallEndExcess, LiftMouthLeast, LiftMouthMost, SpiralLengthInWires, ProofShare,
        FactorLeast, ServiceLowest, ServiceHighest, Friction.Low, Friction.Expected, Friction.High, ShrinkageShare, WallRatio,
        RadialStiffening, LipFactor,
    ];
}
