using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Pouring;

/// <content>Findings of rope and socket.</content>
public static partial class PouringFindings
{
    private static IReadOnlyList<FindingDefinition> Fit =>
    [
        WiresDoNotFit, RopeDoesNotEnter, RopeAreaUnknown, WireFitUnknown, FitDependsOnTolerance, RopeLoose,
        RopeIdentityMissing, RopeFactMissing, HighGrade, Stainless, SocketWeaker, SocketStrengthMissing, BasketShort,
        ConeAngleUnusual, GeometryFromMemory, ServingShortensGrip, ServingFitUnknown, ServingDoesNotFit, VentSmallBasket,
    ];

    public static FindingDefinition WiresDoNotFit { get; } = Stop("wires-do-not-fit",
        "The wires take more of the small end than equal circles can fill, π/(2√3).",
        "At the small end the wires fill {measured} of the section; no more than {limit} can be filled.",
        "Check rope and socket against each other; this basket is too small for this rope.",
        Geometry);

    public static FindingDefinition RopeDoesNotEnter { get; } = Stop("rope-does-not-enter",
        "The rope is not thinner than the small end of the basket.",
        "Rope of {measured} does not enter a small end of {limit}.",
        "Check rope and socket against each other.",
        Geometry);

    public static FindingDefinition RopeAreaUnknown { get; } = Unknown("rope-area-unknown",
        "The metallic area of the rope isn't known, so the steel in the basket isn't either.",
        "No metallic area: neither a certificate's nor a rope class with its core.",
        "Give metallicArea from the certificate, or construction and core of a class at /v1/rope-classes. Kits are planned on a basket without steel.");

    public static FindingDefinition WireFitUnknown { get; } = Unknown("wire-fit-unknown",
        "Number or size of the wires isn't known, so nobody knows whether they fit the basket.",
        "The number or size of the wires is not known.",
        "Give wireCount and outerWireDiameter from the certificate, or construction and core.");

    public static FindingDefinition FitDependsOnTolerance { get; } = Define("fit-depends-on-tolerance", [Severity.Caution],
        "Rope or wires fit the basket as given, but not at the small end of its tolerance.",
        "At the smallest sizes that the tolerance allows, the {what} do not fit.",
        "Measure the basket more closely.",
        Geometry);

    public static FindingDefinition RopeLoose { get; } = Define("rope-loose", [Severity.Note],
        "The small end is more than twice as wide as the rope.",
        "Small end of {measured} for a rope of {limit}.",
        "Check the units of both sizes; seal and centre the rope.",
        Source.CommonPractice);

    public static FindingDefinition RopeIdentityMissing { get; } = Unknown("rope-identity-missing",
        "The construction or the core of the rope isn't known: a fibre core has to come out of the broom.",
        "The {what} of the rope is not given.",
        "Take it from the rope's certificate.");

    public static FindingDefinition RopeFactMissing { get; } = Define("rope-fact-missing", [Severity.Caution],
        "A fact of the rope that asks for precautions in some cases isn't given.",
        "The {what} of the rope is not given: {why}.",
        "Take it from the rope's certificate.",
        Prudence);

    public static FindingDefinition HighGrade { get; } = Define("grade-above-ordinary", [Severity.Caution],
        "The rope grade asks for special precautions.",
        "Rope grade {measured} is above {limit}.",
        "Ask the rope supplier what this grade needs.",
        Rules.HighestOrdinaryGrade.Source, Rules.HighestOrdinaryGrade);

    public static FindingDefinition Stainless { get; } = Define("stainless-rope", [Severity.Caution],
        "Stainless wires need their own cleaning and may not bond like carbon steel.",
        "The rope is stainless.",
        "Ask the rope and compound makers for their procedure with stainless wire.",
        Source.CommonPractice);

    public static FindingDefinition SocketWeaker { get; } = Stop("socket-weaker-than-rope",
        "The socket is not stronger than the rope.",
        "The socket breaks at {measured}; the rope at {limit}.",
        "Take a socket whose strength exceeds the rope's minimum breaking force.",
        new("ISO 17558", "scope", Basis.Published));

    public static FindingDefinition SocketStrengthMissing { get; } = Define("socket-strength-missing", [Severity.Caution],
        "The strength of socket or rope isn't known, so they are not compared.",
        "The {what} is not known: socket and rope are not compared.",
        "Give socket.breakingForce from the socket's maker, and the rope's certificate.",
        Prudence);

    public static FindingDefinition BasketShort { get; } = Define("basket-short", [Severity.Note],
        "The basket, without serving and above the wire ends, is shorter than tradition asks for.",
        "The compound grips over {measured} rope diameters; tradition asks for {limit}.",
        "Check the socket against its maker's table.",
        Rules.BasketLengthInDiameters.Source, Rules.BasketLengthInDiameters);

    public static FindingDefinition ConeAngleUnusual { get; } = Define("cone-angle-unusual", [Severity.Note],
        "The cone is steeper or slimmer than tradition has it.",
        "Included angle of the cone is {measured}; tradition has {minimum} to {maximum}.",
        "Check the measured sizes, and the socket against its maker's table.",
        Rules.ConeAngleLeast.Source, Rules.ConeAngleLeast, Rules.ConeAngleMost);

    public static FindingDefinition GeometryFromMemory { get; } = Define("geometry-from-memory", [Severity.Caution],
        "The sizes of the basket come from somebody's memory.",
        "The sizes of the basket are from memory.",
        "Measure this socket, or take the sizes from its maker's drawing.",
        Prudence);

    public static FindingDefinition ServingShortensGrip { get; } = Define("serving-shortens-grip", [Severity.Caution],
        "A serving stands inside the basket. The compound grips no wire that it covers, and the small end works hardest.",
        "With the serving in it the compound grips over {measured} of a basket of {limit}.",
        "End the serving at the small end unless the socket's maker says otherwise.",
        Geometry);

    public static FindingDefinition ServingFitUnknown { get; } = Unknown("serving-fit-unknown",
        "A serving stands in the small end and nobody says how thick it is.",
        "The diameter over the serving is not given.",
        "Measure over the serving and send servingDiameter.");

    public static FindingDefinition ServingDoesNotFit { get; } = Stop("serving-does-not-fit",
        "The serving is not thinner than the small end in which it is meant to stand.",
        "The serving of {measured} does not enter a small end of {limit}.",
        "Use thinner serving wire, or end the serving at the small end.",
        Geometry);

    public static FindingDefinition VentSmallBasket { get; } = Define("vent-small-basket", [Severity.Note],
        "In a small basket air stays caught at the small end unless the seal has a vent.",
        "Rope of {measured}: up to {limit} the seal gets a vent.",
        "Make a vent in the seal, and close it when compound comes out.",
        Rules.VentUpTo.Source, Rules.VentUpTo);
}
