using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using static CalcService.Engine.Findings.FindingKinds;

namespace CalcService.Engine.Matching;

/// <content>Findings of rope and socket as a pair.</content>
public static partial class MatchingFindings
{
    public static FindingDefinition RopeStrengthMissing { get; } = Unknown("rope-strength-missing", "2026-12", Actor.Office,
        "The breaking force of the rope isn't known, neither by certificate nor by class and grade.",
        "The breaking force of the rope is not known: nothing can be compared with it.",
        "Give certificate.breakingForce. An estimate needs a class at /v1/rope-classes with its core and grade.");

    public static FindingDefinition RopeStrengthEstimated { get; } = Caution("rope-strength-estimated", "2026-12", Actor.Office,
        "The breaking force is estimated from the rope class; no certificate stands behind it.",
        "The breaking force of {measured} is an estimate from class and grade.",
        "Take the minimum breaking force from the rope's certificate before anything is loaded.",
        new("EN 12385, as tabulated in K. Feyrer, Wire Ropes", "Table 1.9", Basis.Published));

    public static FindingDefinition SocketStrengthUnknown { get; } = Unknown("socket-strength-unknown", "2026-12", Actor.Inspector,
        "Whether the socket is stronger than the rope can't be said without its strength.",
        "The breaking force of the socket is not given.",
        "Take it from the socket's maker or certificate.");

    public static FindingDefinition StandardMissing { get; } = Caution("socket-standard-missing", "2026-12", Actor.Office,
        "A socket that complies with no standard is used only after its maker was asked.",
        "No standard is named for the socket.",
        "Name the standard that the socket is made to, or ask its maker whether it may be poured with resin.",
        Source.CommonPractice);

    public static FindingDefinition WiresCrowded { get; } = Caution("wires-crowded", "2026-12", Actor.Crew,
        "In the lower third of the basket, where the most load passes, wires spread evenly would touch.",
        "At one third of the basket the wires have {measured} between them.",
        "Check wire count and outer wire; each wire needs compound all around it there.",
        Source.CommonPractice);

    public static FindingDefinition CoarseRope { get; } = Caution("coarse-rope", "2026-12", Actor.Lead,
        "A coarse rope, up to eight strands with one layer of wires over a king wire, has few thick wires: bond alone may not hold them.",
        "The {construction} rope is coarse: a wire needs a mean bond of {measured} over the basket's length to break before it slips.",
        "Compare the bond with the compound's; ask the makers of rope and compound about hooked wires. Hooks belong in coarse ropes only.",
        new("BS 7035:1989", "coarse ropes", Basis.Published));

    public static FindingDefinition SpiralBasketShort { get; } = Note("basket-short-for-spiral", "2026-12", Actor.Lead,
        "For spiral strand tradition wants a basket of many outer-wire diameters.",
        "Basket length is {measured} outer-wire diameters; tradition asks for {limit}.",
        "Check the socket against its maker's table for spiral strand.",
        limits: rules => [rules.Matching.SpiralLengthInWires]);
}
