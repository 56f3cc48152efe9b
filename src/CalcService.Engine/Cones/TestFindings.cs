using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using static CalcService.Engine.Findings.FindingKinds;

namespace CalcService.Engine.Cones;

/// <summary>Findings of a proof load that mean the same to whoever tests and to whoever reads the record.</summary>
public static class TestFindings
{
    /// <summary>What becomes of an end that lets go.</summary>
    internal const string Out = "Unload. The end is cut off and made again; find out why before the next pour.";

    internal static Source LetsGo { get; } = new("an end that lets go of its rope is none", "/docs/proof-load-evaluations", Basis.Derived);

    public static FindingDefinition WireSlipped { get; } = Stop("wire-slipped", "2026-12", Actor.Lead,
        "Single wires moved against the cone.", "Single wires slipped.", Out, LetsGo);

    public static FindingDefinition Cracked { get; } = Stop("cracked-under-proof", "2026-12", Actor.Lead,
        "Socket, pin or cone cracked under the test load.", "Something cracked under the test load.",
        Out + " A cracked socket is not used again.", LetsGo);

    public static FindingDefinition Creeps { get; } = Stop("creep-under-hold", "2026-12", Actor.Lead,
        "The cone went on moving while the load was held.", "The cone went on moving under the held load.", Out, LetsGo);

    public static FindingDefinition SeatedAskew { get; } = Stop("seated-askew", "2026-12", Actor.Lead,
        "The cone seated on one side: wires there carry more than their share.", "The cone did not seat straight.", Out, LetsGo);

    public static FindingDefinition TestLoadShort { get; } = Stop("test-load-short", "2026-12", Actor.Lead,
        "The test load stayed below what counts as the proof load: nothing is proven.",
        "{measured} was reached; at least {limit} counts.",
        "Where nothing else stands against the end, load it again, to the proof load.",
        limits: rules => [rules.Proof.Under]);

    public static FindingDefinition TestLoadOver { get; } = Caution("test-load-over", "2026-12", Actor.Lead,
        "The test load went above what was asked for.",
        "{measured} was reached; {limit} was the most.",
        "Look at socket and pin for lasting change, and at the gauge.",
        limits: rules => [rules.Proof.Over]);

    public static FindingDefinition SeatingNotRead { get; } = Caution("seating-not-read", "2026-12", Actor.Crew,
        "Seating shows whether the cone took the load.",
        "The seating of the cone was not read.",
        "Read it at the mouth under the next load.",
        Source.CommonPractice);

    public static FindingDefinition SeatingPlaceUnknown { get; } = Caution("seating-not-comparable", "2026-12", Actor.Crew,
        "The band of seating holds for one place and under load.",
        "Where the seating was read, or that it was read under load, is not given: it is not compared.",
        "Say where it was read, and read it under load.",
        Model);

    public static FindingDefinition SeatingLittle { get; } = Caution("seating-little", "2026-12", Actor.Lead,
        "The cone seated less than the model expects: it may stick on something, or the load may not have come through.",
        "The cone seated {measured}; at least {limit} is expected.",
        "Check the gauge, and look for resin over the edge of the mouth or a step in the bore.",
        Model, rules => [rules.Matching.Friction.Low, rules.Matching.Friction.High, rules.Proof.ShrinkageSpread]);

    public static FindingDefinition SeatingMuch { get; } = Caution("seating-much", "2026-12", Actor.Lead,
        "The cone seated more than the model expects: soft compound, a wide bore, or the beginning of a slip.",
        "The cone seated {measured}; at most {limit} is expected.",
        "Check hardness and bore before the next load, and watch under it whether the cone stops.",
        Model, rules => [rules.Matching.Friction.Low, rules.Matching.Friction.High, rules.Proof.ShrinkageSpread]);

    public static FindingDefinition SeatingContradicts { get; } = Unknown("seating-contradicts", "2026-12", Actor.Lead,
        "A cone moves toward the small end, and further under more load. A reading below zero, or one that falls while the load rises, is "
            + "a slip of sign, gauge or pen: it proves nothing.",
        "The seating of {measured} is less than {limit}, where it stood under less load or none.",
        "Check gauge and zero, and read again under load.",
        Moves);

    public static FindingDefinition SeatedThrough { get; } = Stop("seated-through", "2026-12", Actor.Lead,
        "The cone moved by more than the diameter of its rope: it is being drawn through the basket, or the rope out of the cone.",
        "The cone moved {measured}; the rope is {limit} thick.",
        "Unload and keep away. The end is cut off and made again, and the socket looked at; where the reading is a slip, correct it and "
            + "send it again.",
        Moves);

    public static FindingDefinition SeatingNotComputed { get; } = Caution("seating-not-computed", "2026-12", Actor.Lead,
        "How far the cone may be expected to seat could not be computed.",
        "The expected seating is not computed: {why}.",
        "Give what is missing; the answer otherwise stands.",
        Model, rules => [rules.Matching.Friction.Low, rules.Matching.Friction.High, rules.Matching.ShrinkageShare, rules.Matching.WallRatio,
            rules.Matching.RadialStiffening, rules.Proof.ShrinkageSpread, rules.Proof.Steps[0], rules.Proof.Steps[1], rules.Proof.Steps[2],
            rules.Proof.Steps[3]]);

    internal static IReadOnlyList<FindingDefinition> All =>
        [WireSlipped, Cracked, Creeps, SeatedAskew, TestLoadShort, TestLoadOver, SeatingNotRead, SeatingPlaceUnknown, SeatingLittle,
        SeatingMuch, SeatingContradicts, SeatedThrough, SeatingNotComputed];

    private static Source Moves => new("a cone moves toward its small end, by millimetres", "/docs/proof-load-evaluations", Basis.Derived);

    private static Source Model => new("load transfer in the cone", "/docs/termination-matches", Basis.Derived);
}
