using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Rules.Edition202612;

/// <summary>The limits of a match in the edition of November 2026.</summary>
public static class MatchingRules2026Dec
{
    private static readonly Source Cranes = new("ASME B30.5", "", Basis.FromMemory);
    private static readonly Source MineLaw = new("30 CFR 56.19025, 57.19025, 75.1435, 77.1435", "(a), (b)", Basis.Law);
    private static readonly Source MineFactor = new("30 CFR 56.19021, 57.19021, 75.1431, 77.1431",
        "(a)(1), (b)(1): 7.0 for no length; less 0.001 for each foot of rope on a winding drum, 0.0005 on a friction drum",
        Basis.FromMemory);
    private static readonly Source LiftFactor =
        new("EN 81-20", "5.5.2.2: 12 with three ropes or more, 16 with two, more by calculation", Basis.FromMemory);
    private static readonly Source Lifts = new("ASME A17.1", "2.20.9.4", Basis.FromMemory);
    private static readonly Source OldStandard = new("BS 7035:1989", "§1", Basis.Published);
    private static readonly Source Elements = new("/docs/termination-matches", "against finite elements", Basis.Derived);

    public static MatchingRules Rules { get; } = new()
    {
        Duties =
        [
            new(DutyUse.Sling, Factor("sling", 5, new("ASME B30.9", "", Basis.FromMemory)),
                new("sling", "poured sockets of slings are proof loaded to this many times the vertical rated load", Measure.Count(2),
                    new("NAVEDTRA 14080", "chapter 3, proof testing slings: vertical rated capacity x 2; DOE-STD-1090-96, 15.4.7.1, has "
                        + "poured sockets certified as proof tested", Basis.Published))),
            new(DutyUse.Pendant, Factor("pendant", 3, Cranes), null),
            new(DutyUse.HoistRope, Factor("hoist-rope", 3.5, Cranes), null),
            new(DutyUse.MineHoist, Factor(MatchingRules.MineHoist, 7, MineFactor), null),
            new(DutyUse.Lift, Factor(MatchingRules.Lift, 12, LiftFactor), null),
            new(DutyUse.Mooring, Factor("mooring", 1.67, new("API RP 2SK, intact", "", Basis.FromMemory)), null),
        ],
        RotationResistantLeast = Hoisting("design factor of a rotation resistant hoist rope, at least, whatever its type", 3.5,
            "(e)(2)(ii)"),
        RotationResistant = Hoisting("design factor of a rotation resistant hoist rope without leave to go lower", 5,
        "(e)(2)(i), (iii), (iv)"),
        Persons = Persons("strength of what hangs a personnel platform, over the most that is meant to hang", 5),
        PersonsRotationResistant =
        Persons("strength of rotation resistant rope that hangs a personnel platform, over the most that is meant to hang", 10),
        PersonsElsewhere = PersonsElsewhere("strength of any other rope that hangs persons, over the most that is meant to hang", 5),
        PersonsElsewhereRotationResistant =
            PersonsElsewhere("strength of any other rotation resistant rope that hangs persons, over the most that is meant to hang", 10),
        Efficiency = new("strength of a resin socketed end over that of the rope", Measure.Fraction(1),
            new("EN 13411-4:2021", "K_T", Basis.Published)),
        MineAttachment = new(MatchingRules.MineHoist, "attachment at least this share of the rope's nominal strength",
            Measure.Fraction(.80), MineLaw),
        LiftTaperLength = new(MatchingRules.Lift, "tapered basket at least this many rope diameters long", Measure.Count(4.75), Lifts),
        LiftSmallEndExcess = new(MatchingRules.Lift, "small end at most this much wider than the rope", Measure.Length(3.0 / 32 * .0254),
            Lifts),
        LiftMouthLeast = new(MatchingRules.Lift, "mouth at least this many rope diameters wide", Measure.Count(2.25), Lifts),
        LiftMouthMost = new(MatchingRules.Lift, "mouth at most this many rope diameters wide", Measure.Count(3), Lifts),
        SpiralLengthInWires = new("basket for spiral strand at least this many outer-wire diameters long", Measure.Count(50),
            new("DIN 3092 and EN 13411-4 tradition", "", Basis.FromMemory)),
        ProofShare = new("proof load at most this share of the rope's breaking force", Measure.Fraction(.5),
            new("rules for proof loading of wire rope ends", "", Basis.FromMemory)),
        FactorLeast = new("design factor where no rule for the use is known, at least", Measure.Count(2),
            new("with less, a proof load of twice the working load would reach the breaking force", "/docs/termination-matches",
            Basis.Derived)),
        ServiceLowest = new("coldest service of a resin socket in an older standard", Measure.Temperature(-20 + 273.15), OldStandard),
        ServiceHighest = new("warmest service of a resin socket in an older standard", Measure.Temperature(70 + 273.15), OldStandard),
        Friction = (
            new("friction between cone and socket, low", Measure.Count(.1), Source.CommonPractice),
            new("friction between cone and socket, expected", Measure.Count(.2), Source.CommonPractice),
            new("friction between cone and socket, high", Measure.Count(.3), Source.CommonPractice)),
        ShrinkageShare =
        new("linear shrinkage after gel over the volumetric shrinkage, as if all of it came after gel and alike in all directions",
            Measure.Fraction(1.0 / 3),
            new("a small volume change is three times the linear one", "/docs/termination-matches", Basis.Derived)),
        WallRatio = new("outside over bore of a socket of which the outside isn't given", Measure.Count(1.6), Source.CommonPractice),
        RadialStiffening = new("stiffness of a cone full of wires across its axis, over the compound's", Measure.Count(1.5), Elements),
        LipFactor = new("mean pressure over the first 5 mm by finite elements, over this model's", Measure.Count(1.4), Elements),
    };

    private static RuleLimit Factor(string ruleSet, double factor, Source source) =>
        new(ruleSet, "design factor, breaking force over working load", Measure.Count(factor), source);

    private static RuleLimit Hoisting(string text, double factor, string clause) =>
        new(InspectionRules.ConstructionCrane, text, Measure.Count(factor), new("29 CFR 1926.1414", clause, Basis.Law));

    private static RuleLimit Persons(string text, double factor) =>
        new(InspectionRules.ConstructionCrane, text, Measure.Count(factor), new("29 CFR 1926.1431", "(g)(3)", Basis.Law));

    /// <summary>
    /// The law names the rigging of a personnel platform; that other ropes with persons on them are worth no less is our own.
    /// </summary>
    private static RuleLimit PersonsElsewhere(string text, double factor) => new(text, Measure.Count(factor),
        new("29 CFR 1926.1431", "(g)(3), which speaks of the rigging of a personnel platform alone", Basis.Derived));
}
