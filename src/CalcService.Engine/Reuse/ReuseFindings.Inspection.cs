using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using static CalcService.Engine.Findings.FindingKinds;

namespace CalcService.Engine.Reuse;

/// <content>Findings of the inspection.</content>
public static partial class ReuseFindings
{
    public static FindingDefinition Cracked { get; } = Stop("socket-cracked", "2026-12", Actor.Inspector,
        "A crack ends the life of a socket. It is never ground, welded or worked away.",
        "There is a crack or a linear indication: {what}.",
        "Take the socket out of use and mark it so that nobody pours it again.",
        Physics("inspection"));

    public static FindingDefinition CrackSearchMissing { get; } = Unknown("crack-search-missing", "2026-12", Actor.Inspector,
        "Cracks that end a socket are too fine for the eye: a surface method has to search each part for them.",
        "No search for cracks is known: {what}.",
        "Clean the socket and search all of it with magnetic particles or penetrant.");

    public static FindingDefinition VisualMissing { get; } = Unknown("visual-inspection-missing", "2026-12", Actor.Inspector,
        "The look by eye belongs to every assessment.",
        "It is not known {what}.",
        "Clean the socket, look at all of it in good light, and say what you see.");

    public static FindingDefinition IndicationUnclear { get; } = Unknown("indication-unclear", "2026-12", Actor.Inspector,
        "An indication that nobody has judged may be a crack.",
        "The indication is neither called round nor linear, or nobody says where it is.",
        "Have it judged by whoever is qualified for the method.");

    public static FindingDefinition RoundedIndication { get; } = Caution("rounded-indication", "2026-12", Actor.Inspector,
        "A round indication is no crack, and yet a place where one can begin.",
        "There is a round indication.",
        "Have a competent person judge the round indication against the socket's drawing and record it, so that the next inspection can "
            + "compare.",
        Source.CommonPractice);

    public static FindingDefinition InspectionOld { get; } = Caution("crack-search-old", "2026-12", Actor.Inspector,
        "The search for cracks is old.",
        "The search for cracks is {measured} old; {limit} is the most.",
        "Search again before the socket is used.",
        limits: rules => [rules.Reuse.InspectionAge]);

    public static FindingDefinition SurfaceCovered { get; } = Unknown("socket-surface-covered", "2026-12", Actor.Inspector,
        "Nothing can be said about steel under old compound, metal or paint.",
        "The surface is covered: {what}.",
        "Clean the socket to bare metal, without heat, and inspect it again.");

    public static FindingDefinition CorrodedSevere { get; } = Stop("socket-corroded", "2026-12", Actor.Inspector,
        "Rust has taken more of the steel than anybody can measure.",
        "The socket is severely corroded.",
        "Take the socket out of use.",
        Physics("inspection"));

    public static FindingDefinition CorrodedLight { get; } = Caution("socket-rusty", "2026-12", Actor.Crew,
        "Rust keeps the compound off the steel and hides what is under it.",
        "The socket is rusty.",
        "Clean the socket to bare metal, without heat, and look again; measure the pits that show.",
        Source.CommonPractice);
}
