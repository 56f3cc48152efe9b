using CalcService.Engine.Findings;
using static CalcService.Engine.Findings.FindingKinds;

namespace CalcService.Engine.Reuse;

/// <content>Findings of measured wear.</content>
public static partial class ReuseFindings
{
    public static FindingDefinition LimitsMissing { get; } = Unknown("wear-limits-missing", "2026-12", Actor.Inspector,
        "Limits of wear are the maker's or the operator's: a limit of which nobody says where it stands is anybody's.",
        "Not given: {what}.",
        "Ask the maker, or take it from the operator's rules, and name them in limits.source.");

    public static FindingDefinition WornWithoutLimit { get; } = Unknown("worn-without-limit", "2026-12", Actor.Inspector,
        "A part has changed by more than its drawing and the reading leave, and nobody says how much it may. No public limit for the wear "
            + "of sockets is known.",
        "The {what} is {measured}, of which drawing and reading explain {limit}; no limit is given.",
        "Ask the maker, or take the limit from the operator's rules, and name them in limits.source; give the drawing's tolerance and the "
            + "uncertainty of the reading.",
        rules => [.. rules.Reuse.GeneralTolerances.Select(one => one.Tolerance)]);

    public static FindingDefinition ReadingTooCoarse { get; } = Unknown("reading-too-coarse", "2026-12", Actor.Inspector,
        "By the reading the part is within its limit, and by as much as the reading may be off it is beyond. Nobody knows which.",
        "The {what} is {measured} and may be {most}; {limit} is allowed.",
        "Measure again with a finer instrument, and give its uncertainty.");

    public static FindingDefinition LimitImplausible { get; } = Unknown("limit-implausible", "2026-12", Actor.Inspector,
        "A limit of the request allows what no rule known here does: a slip of units, or a limit made to pass this socket.",
        "A limit of {measured} is given; {limit} is as far as one can be meant to go.",
        "Read the limit again where it stands, and ask the socket's maker.",
        rules => [rules.Reuse.MostAllowed, rules.Reuse.HottestAllowed, rules.Reuse.DesignFactor]);

    public static FindingDefinition MeasurementMissing { get; } = Unknown("wear-measurement-missing", "2026-12", Actor.Inspector,
        "What was not measured is not sound.",
        "Not measured: {what}.",
        "Measure it.");

    public static FindingDefinition DrawingMissing { get; } = Unknown("drawing-size-missing", "2026-12", Actor.Inspector,
        "Wear is told against the size that the maker made.",
        "The maker's size is not given: {what}.",
        "Take it from the maker's drawing or table.");

    public static FindingDefinition NotAsDrawn { get; } = Unknown("size-not-as-drawn", "2026-12", Actor.Inspector,
        "A size has more metal than the drawing's. Steel does not grow: it is another socket's drawing, a socket that isn't bare, or a "
            + "slip.",
        "Measured {measured} for {what}; the drawing has {limit}.",
        "Clean to bare metal, measure again, and compare the mark with the drawing.",
        rules => [rules.Reuse.FarOffDrawing]);

    public static FindingDefinition PinThickerThanHole { get; } = Unknown("pin-thicker-than-hole", "2026-12", Actor.Inspector,
        "A pin that is thicker than its hole was never in it: it is another socket's pin, or one of the two sizes is a slip.",
        "The pin measures {measured}, its hole {limit}.",
        "Measure both again, and compare the pin's mark with the socket's.");

    public static FindingDefinition HalfWornAway { get; } = Stop("half-worn-away", "2026-12", Actor.Inspector,
        "Less than half of the drawing's metal is left in a part that bears: what the maker says of the socket is said of another one.",
        "Of the {what} {measured} is left; {limit} is the least.",
        "Take the socket out of use. Material that is gone does not come back.",
        Physics("half-gone"), rules => [rules.Reuse.LeastLeft]);

    public static FindingDefinition BoreWorn { get; } = WornOut("bore-worn", "2026-12", Actor.Inspector,
        "The bore has grown beyond the limit.", "The bore has grown by {measured}; {limit} is allowed.");

    public static FindingDefinition BoreOval { get; } = WornOut("bore-oval", "2026-12", Actor.Inspector,
        "The bore is out of round beyond the limit.", "The bore is out of round by {measured}; {limit} is allowed.");

    public static FindingDefinition TaperLost { get; } = Stop("taper-lost", "2026-12", Actor.Inspector,
        "The bore no longer widens toward the mouth as it has to: the cone can't seat.",
        "Between two sections {measured} of the taper is gone; {limit} is allowed.",
        "Take the socket out of use.",
        Physics("taper"), rules => [OfRequest]);

    public static FindingDefinition OutsideWorn { get; } = WornOut("outside-worn", "2026-12", Actor.Inspector,
        "The outside of the basket is worn beyond the limit.", "The outside of the basket has lost {measured}; {limit} is allowed.");

    public static FindingDefinition PinHoleWorn { get; } = WornOut("pin-hole-worn", "2026-12", Actor.Inspector,
        "The hole for the pin has grown beyond the limit.", "The pin hole has grown by {measured}; {limit} is allowed.");

    public static FindingDefinition PinHoleOval { get; } = WornOut("pin-hole-oval", "2026-12", Actor.Inspector,
        "The hole for the pin is stretched beyond the limit.", "The pin hole is out of round by {measured}; {limit} is allowed.");

    public static FindingDefinition PinWorn { get; } = Caution("pin-worn", "2026-12", Actor.Inspector,
        "The pin is worn beyond the limit. A pin can be had anew.",
        "The pin has lost {measured} of its diameter; {limit} is allowed.",
        "Replace the pin by one of the maker's, measure it, and inspect the holes for what wore the old one.",
        Stated, rules => [OfRequest]);

    public static FindingDefinition EarsSpread { get; } = WornOut("ears-spread", "2026-12", Actor.Inspector,
        "The ears stand wider or closer than the limit allows: they have been bent.",
        "The gap between the ears is off by {measured}; {limit} is allowed.");

    public static FindingDefinition EarThin { get; } = WornOut("ear-thin", "2026-12", Actor.Inspector,
        "The ears are worn thinner than the limit allows.", "The ears have lost {measured} of their thickness; {limit} is allowed.");

    public static FindingDefinition EarNarrow { get; } = WornOut("ear-narrow", "2026-12", Actor.Inspector,
        "The ears are worn narrower than the limit allows.", "The ears have lost {measured} of their width; {limit} is allowed.");

    public static FindingDefinition EarEndWorn { get; } = WornOut("ear-end-worn", "2026-12", Actor.Inspector,
        "The ends of the ears are worn beyond the limit.",
        "The ears have lost {measured} between the hole's centre and their end; {limit} is allowed.");

    public static FindingDefinition PitsDeep { get; } = WornOut("pits-deep", "2026-12", Actor.Inspector,
        "Pits are deeper than the limit.", "Pits are {measured} deep; {limit} is allowed.");

    private static RuleLimit OfRequest =>
        new(Engine.Rules.PouringRules.General, "the limit that the request states with its source", null, Stated);

    private static FindingDefinition WornOut(string code, string since, Actor actor, string meaning, string message) =>
        Stop(code, since, actor, meaning, message,
            "Take the socket out of use. Material that is gone does not come back; nothing is welded on or bent back.", Stated, _ =>
                [OfRequest]);
}
