using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using static CalcService.Engine.Findings.FindingKinds;

namespace CalcService.Engine.Sockets;

/// <summary>Findings about a rope in a basket that mean the same in every calculation.</summary>
public static class FitFindings
{
    public static FindingDefinition WiresDoNotFit { get; } = Stop("wires-do-not-fit", "2026-12", Actor.Crew,
        "The wires take more of the small end than equal circles can fill, π/(2√3).",
        "At the small end the wires fill {measured} of the section; no more than {limit} can be filled.",
        "Check rope and socket against each other; this basket is too small for this rope.",
        Geometry);

    public static FindingDefinition RopeDoesNotEnter { get; } = Stop("rope-does-not-enter", "2026-12", Actor.Crew,
        "The rope is not thinner than the small end of the basket.",
        "Rope of {measured} does not enter a small end of {limit}.",
        "Check rope and socket against each other.",
        Geometry);

    public static FindingDefinition WireFitUnknown { get; } = Unknown("wire-fit-unknown", "2026-12", Actor.Lead,
        "Number or size of the wires isn't known, so nobody knows whether they fit the basket.",
        "The number or size of the wires is not known.",
        "Give wireCount and outerWireDiameter from the certificate, or construction and core.");

    public static FindingDefinition FitDependsOnTolerance { get; } = Caution("fit-depends-on-tolerance", "2026-12", Actor.Crew,
        "Rope or wires fit the basket as given, but not at the small end of its tolerance.",
        "At the smallest sizes that the tolerance allows, there is no room for the {what}.",
        "Measure the basket more closely.",
        Geometry);

    public static FindingDefinition RopeLoose { get; } = Define("rope-loose", "2026-12", Actor.Crew, [Severity.Note, Severity.Stop],
        "The small end is more than twice as wide as the rope; from three times on, a stop, nothing leads the rope and the cone is mostly "
            + "resin.",
        "Small end of {measured} for a rope of {limit}.",
        "Check the units of both sizes; seal and centre the rope.",
        limits: rules => [rules.Pouring.Fit.LooseSmallEnd, rules.Pouring.Fit.WidestSmallEnd]);

    public static FindingDefinition RopeIdentityMissing { get; } = Unknown("rope-identity-missing", "2026-12", Actor.Office,
        "The construction or the core of the rope isn't known: a fibre core has to come out of the broom.",
        "Not given of the rope: {what}.",
        "Take it from the rope's certificate.");

    public static FindingDefinition RopeFactMissing { get; } = Caution("rope-fact-missing", "2026-12", Actor.Office,
        "A fact of the rope that asks for precautions in some cases isn't given: above the ordinary grades special ones hold, and the "
            + "finish decides how the wires are cleaned.",
        "Not given of the rope: {what}.",
        "Take it from the rope's certificate.",
        Prudence);

    public static FindingDefinition HighGrade { get; } = Caution("grade-above-ordinary", "2026-12", Actor.Lead,
        "The rope grade asks for special precautions.",
        "Rope grade {measured} is above {limit}.",
        "Ask the rope supplier what this grade needs.",
        limits: rules => [rules.Pouring.HighestOrdinaryGrade]);

    public static FindingDefinition Stainless { get; } = Caution("stainless-rope", "2026-12", Actor.Lead,
        "Stainless wires need their own cleaning and may not bond like carbon steel.",
        "The rope is stainless.",
        "Ask the rope and compound makers for their procedure with stainless wire.",
        Source.CommonPractice);

    public static FindingDefinition SocketWeaker { get; } = Stop("socket-weaker-than-rope", "2026-12", Actor.Office,
        "The socket is not stronger than the rope.",
        "The socket breaks at {measured}, the rope at {limit}: the socket has to be stronger than the rope, as strong is not enough.",
        "Take a socket whose strength exceeds the rope's minimum breaking force.",
        new("ISO 17558", "scope", Basis.Published));

    public static FindingDefinition BasketShort { get; } = Note("basket-short", "2026-12", Actor.Lead,
        "The basket, without serving and above the wire ends, is shorter than tradition asks for.",
        "The compound grips over {measured} rope diameters; tradition asks for {limit}.",
        "Check the socket against its maker's table.",
        limits: rules => [rules.Pouring.BasketLengthInDiameters]);

    public static FindingDefinition GeometryFromMemory { get; } = Caution("geometry-from-memory", "2026-12", Actor.Lead,
        "The sizes of the basket come from somebody's memory.",
        "The sizes of the basket are from memory.",
        "Measure this socket, or take the sizes from its maker's drawing.",
        Prudence);

    public static FindingDefinition ConeAngleUnusual { get; } = Note("cone-angle-unusual", "2026-12", Actor.Lead,
        "The cone is steeper or slimmer than tradition has it.",
        "Included angle of the cone is {measured}; tradition has {minimum} to {maximum}.",
        "Check the measured sizes, and the socket against its maker's table.",
        limits: rules => [rules.Pouring.ConeAngleLeast, rules.Pouring.ConeAngleMost]);

    public static FindingDefinition PlasticFilled { get; } = Caution("plastic-filled-rope", "2026-12", Actor.Crew,
        "The rope is filled with plastic, and nobody says that it is out of the broom.",
        "The rope is filled with plastic.",
        "Take the plastic out of the broom down to the seizing, wire by wire, and say so.",
        Prudence);

    public static FindingDefinition UsedRope { get; } = Caution("used-rope", "2026-12", Actor.Lead,
        "The rope has been in use: its certificate tells the strength that it had.",
        "The rope is used.",
        "Cut back to sound rope, inspect it, and have a competent person say what it may carry.",
        Prudence);

    private static Source Prudence => Source.NotGiven("/docs/pour-plans");

    internal static Source Geometry => new("geometry of the broom in the basket", "/docs/pour-plans", Basis.Derived);

    private static FindingDefinition Unknown(string code, string since, Actor actor, string meaning, string message, string action) =>
        FindingKinds.Unknown(code, since, actor, meaning, message, action, Prudence);
}
