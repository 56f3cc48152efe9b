using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using static CalcService.Engine.Findings.FindingKinds;

namespace CalcService.Engine.Sockets;

/// <summary>Findings about an end that can't be as it is stated, or can't hold so. They mean the same in every calculation.</summary>
public static class BoundFindings
{
    /// <summary>Those that rope and basket alone can raise.</summary>
    public static IReadOnlyList<FindingDefinition> OfRopeAndBasket => [NoCone, BasketTooShort, StrengthImplausible, RopeThin, RopeThick];

    public static FindingDefinition NoCone { get; } = Stop("basket-no-cone", "2026-12", Actor.Lead,
        "The basket is no cone: nothing in it seats under load, and only bond would hold the rope.",
        "The included angle of the basket is {measured}; below {limit} it is no cone.",
        "Measure both bores and the length again; look for a size in another unit.",
        limits: rules => [rules.Pouring.Fit.LeastCone]);

    public static FindingDefinition BasketTooShort { get; } = Define("basket-too-short", "2026-12", Actor.Lead,
        [Severity.Stop, Severity.Unknown],
        "The basket is so short against the rope that the cone can't hold it, or that only a type test of rope, socket and compound "
            + "together can tell.",
        "The compound grips over {measured} rope diameters; it takes {limit}.",
        "Check the sizes and the socket's maker's table; where this end was type tested, say so in basket.typeTested.",
        limits: rules => [rules.Pouring.Fit.ShortestBasket, rules.Pouring.Fit.ShortBasket]);

    public static FindingDefinition StrengthImplausible { get; } = Unknown("breaking-force-implausible", "2026-12", Actor.Office,
        "The breaking force on the certificate and the rope's class, grade and diameter don't go together: one of them is a slip, most "
            + "often of units.",
        "Certified at {measured}; a rope of this class, grade and diameter breaks at about {limit}. The limit is a difference of {spread}.",
        "Read certificate, diameter and grade again, with their units.",
        limits: rules => [rules.Pouring.Fit.StrengthSpread]);

    public static FindingDefinition RopeThin { get; } = Unknown("rope-thin", "2026-12", Actor.Inspector,
        "The rope measures much thinner than it is called: worn, corroded, broken inside, or another rope.",
        "The rope measures {measured}; at least {limit} is asked for.",
        "Measure again; have a competent person say what this rope is and what it may carry.",
        limits: rules => [rules.Pouring.Fit.Thinning]);

    public static FindingDefinition RopeThick { get; } = Unknown("rope-thick", "2026-12", Actor.Inspector,
        "The rope measures much thicker than it is called: opened, twisted or rusted inside, measured wrongly, or another rope.",
        "The rope measures {measured}; at most {limit} is asked for.",
        "Measure again over the strands; have a competent person say what this rope is and what it may carry.",
        limits: rules => [rules.Pouring.Fit.Thickening]);

    public static FindingDefinition StraightRopeShort { get; } = Caution("straight-rope-short", "2026-12", Actor.Crew,
        "So little rope hangs straight below the socket that nothing holds the broom in the axis of the basket.",
        "{measured} of rope is straight below the socket; the least is {limit}, and the socket's maker may ask for more.",
        "Hang the rope so that it stands straight below the socket as far as the socket's maker asks for.",
        limits: rules => [rules.Pouring.Fit.StraightRope]);

    public static FindingDefinition NoStraightRope { get; } = Stop("no-straight-rope", "2026-12", Actor.Crew,
        "No rope hangs straight below the socket: the cone sets askew and loads the wires of one side.",
        "The rope is not straight below the socket at all.",
        "Hang the rope so that it stands straight below the socket as far as the socket's maker asks for.",
        FitFindings.Geometry);

    public static FindingDefinition RopeTilted { get; } = Define("rope-tilted", "2026-12", Actor.Crew, [Severity.Caution, Severity.Unknown],
        "The rope leans: the broom leaves the axis of the basket by more than the gap between two wires, or so far that nobody knows how "
            + "the cone sets.",
        "The rope leans by {measured}; up to {limit} it is in line.",
        "Plumb rope and basket again.",
        FitFindings.Geometry, rules => [rules.Pouring.Fit.ReadTilt, rules.Pouring.Fit.MostTilt]);

    public static FindingDefinition RopeOutsideRange { get; } = Caution("rope-outside-socket-range", "2026-12", Actor.Lead,
        "The rope is thinner or thicker than the socket's maker states. Whether it enters, fits and holds is judged by itself.",
        "Rope of {measured}; the socket is made for {minimum} to {maximum}.",
        "Take the size of socket that its maker gives for this rope, or ask its maker.",
        new("the socket maker's table, as the request states it", "ropeRange", Basis.DataSheet));

    public static FindingDefinition SocketMetalUnfit { get; } = Define("socket-metal-unfit", "2026-12", Actor.Lead,
        [Severity.Stop, Severity.Unknown],
        "The seated cone spreads the socket. Grey cast iron breaks under tension without warning; of another metal than steel only the "
            + "socket's maker knows what it stands.",
        "The socket is of {metal}.",
        "Take a socket of steel. Where its maker states another metal for poured ends, have a competent person decide.",
        new("hoop tension from the wedging cone, in a metal without ductility", "/docs/pour-plans", Basis.Derived));
}
