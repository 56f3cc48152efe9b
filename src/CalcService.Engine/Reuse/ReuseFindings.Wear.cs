using CalcService.Engine.Findings;
using static CalcService.Engine.Findings.FindingKinds;

namespace CalcService.Engine.Reuse;

/// <content>Findings of measured wear.</content>
public static partial class ReuseFindings
{
    private static IReadOnlyList<FindingDefinition> Wear =>
    [
        LimitsMissing, MeasurementMissing, DrawingMissing, BoreWorn, BoreOval, TaperLost, PinHoleWorn, PinHoleOval, PinWorn, EarsSpread, EarThin, PitsDeep,
    ];

    public static FindingDefinition LimitsMissing { get; } = Unknown("wear-limits-missing", Actor.Inspector,
        "No public limit for the wear of sockets is known: the maker or the operator sets it and says where.",
        "Not given: {what}.",
        "Ask the maker, or take it from the operator's rules, and name them in limits.source.");

    public static FindingDefinition MeasurementMissing { get; } = Unknown("wear-measurement-missing", Actor.Inspector,
        "What was not measured is not sound.",
        "Not measured: {what}.",
        "Measure it.");

    public static FindingDefinition DrawingMissing { get; } = Unknown("drawing-size-missing", Actor.Inspector,
        "Wear is told against the size that the maker made.",
        "The maker's size is not given: {what}.",
        "Take it from the maker's drawing or table.");

    public static FindingDefinition BoreWorn { get; } = WornOut("bore-worn", Actor.Inspector, "The bore has grown beyond the limit.", "The bore has grown by {measured}; {limit} is allowed.");

    public static FindingDefinition BoreOval { get; } = WornOut("bore-oval", Actor.Inspector, "The bore is out of round beyond the limit.", "The bore is out of round by {measured}; {limit} is allowed.");

    public static FindingDefinition TaperLost { get; } = Stop("taper-lost", Actor.Inspector,
        "The bore no longer widens toward the mouth as it has to: the cone can't seat.",
        "Between two sections {measured} of the taper is gone; {limit} is allowed.",
        "Take the socket out of use.",
        Physics("taper"), OfRequest);

    public static FindingDefinition PinHoleWorn { get; } = WornOut("pin-hole-worn", Actor.Inspector, "The hole for the pin has grown beyond the limit.", "The pin hole has grown by {measured}; {limit} is allowed.");

    public static FindingDefinition PinHoleOval { get; } = WornOut("pin-hole-oval", Actor.Inspector, "The hole for the pin is stretched beyond the limit.", "The pin hole is out of round by {measured}; {limit} is allowed.");

    public static FindingDefinition PinWorn { get; } = Caution("pin-worn", Actor.Inspector,
        "The pin is worn beyond the limit. A pin can be had anew.",
        "The pin has lost {measured} of its diameter; {limit} is allowed.",
        "Replace the pin by one of the maker's, measure it, and inspect the holes for what wore the old one.",
        Stated, OfRequest);

    public static FindingDefinition EarsSpread { get; } = WornOut("ears-spread", Actor.Inspector, "The ears stand wider or closer than the limit allows: they have been bent.", "The gap between the ears is off by {measured}; {limit} is allowed.");

    public static FindingDefinition EarThin { get; } = WornOut("ear-thin", Actor.Inspector, "The ears are worn thinner than the limit allows.", "The ears have lost {measured} of their thickness; {limit} is allowed.");

    public static FindingDefinition PitsDeep { get; } = WornOut("pits-deep", Actor.Inspector, "Pits are deeper than the limit.", "Pits are {measured} deep; {limit} is allowed.");

    private static RuleLimit OfRequest => new(Engine.Rules.PouringRules.General, "the limit that the request states with its source", null, Stated);

    private static FindingDefinition WornOut(string code, Actor actor, string meaning, string message) =>
        Stop(code, actor, meaning, message, "Take the socket out of use. Material that is gone does not come back; nothing is welded on or bent back.", Stated, OfRequest);
}
