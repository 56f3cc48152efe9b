using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using static CalcService.Engine.Findings.FindingKinds;

namespace CalcService.Engine.Reuse;

/// <content>Findings of what the socket is and what it went through.</content>
public static partial class ReuseFindings
{
    public static FindingDefinition IdentityMissing { get; } = Unknown("socket-identity-missing", "2026-12", Actor.Inspector,
        "A socket that nobody can tell from others has no history and no certificate.",
        "The {what} of the socket is not given.",
        "Read it from the socket; without a mark, ask its owner and maker, or take it out of use.");

    public static FindingDefinition SteelUnknown { get; } = Unknown("socket-steel-unknown", "2026-12", Actor.Inspector,
        "What is left of a socket can't be recomputed without its steel.",
        "The {what} is not known.",
        "Find the certificate by the marks, or have the steel analysed and its hardness tested by a competent laboratory.");

    public static FindingDefinition HistoryMissing { get; } = Unknown("socket-history-missing", "2026-12", Actor.Inspector,
        "Some things that end the life of a socket leave no trace that an inspection is sure to find.",
        "It is not known {what}.",
        "Look it up in the socket's record. Where there is none, a competent person decides.");

    public static FindingDefinition Welded { get; } = Stop("socket-welded", "2026-12", Actor.Inspector,
        "A weld on a forging or casting leaves hard, cracked and stressed steel beside it.",
        "The socket has been welded.",
        "Take the socket out of use; grinding the weld off does not undo it.",
        Physics("weld, arc and straightening"));

    public static FindingDefinition Straightened { get; } = Stop("socket-straightened", "2026-12", Actor.Inspector,
        "Ears that were bent and bent back have used up ductility and may hide cracks at their roots.",
        "The socket has been straightened.",
        "Take the socket out of use.",
        Physics("weld, arc and straightening"));

    public static FindingDefinition ArcStruck { get; } = Stop("socket-arc-struck", "2026-12", Actor.Inspector,
        "Where an arc struck, a spot of steel was melted and quenched: it is hard and often cracked.",
        "An arc has struck the socket.",
        "Take the socket out of use.",
        Physics("weld, arc and straightening"));

    public static FindingDefinition Overloaded { get; } = Stop("socket-overloaded", "2026-12", Actor.Inspector,
        "A socket that carried more than its proof load may have yielded where nobody sees it.",
        "The socket has been overloaded.",
        "Take the socket out of use.",
        Physics("overload"));

    public static FindingDefinition MediumChanged { get; } = Note("socket-medium-changed", "2026-12", Actor.Inspector,
        "The last cone was metal: zinc keys itself to a bore and hides in it.",
        "The socket was last poured with metal.",
        "Clean the bore to bare steel before resin goes in, and ask the maker whether the socket is meant for resin.",
        Source.CommonPractice);

    public static FindingDefinition RemovalUnknown { get; } = Unknown("cone-removal-unknown", "2026-12", Actor.Inspector,
        "How the old cone came out decides whether heat has changed the steel.",
        "The {what} of the cone's removal is not known.",
        "Ask who took the cone out. Where nobody knows, have hardness and structure tested and a competent person decide.");

    public static FindingDefinition BurntOut { get; } = Stop("cone-burnt-out", "2026-12", Actor.Inspector,
        "A flame in the basket heats the steel as far as it happens to; nothing on its surface tells how far.",
        "The old cone was burnt out.",
        "Take the socket out of use. Press the cones of other sockets out cold.",
        Physics("heat"), rules => [rules.Reuse.RemovalHot]);

    public static FindingDefinition Overheated { get; } = Define("socket-overheated", "2026-12", Actor.Inspector,
        [Severity.Stop, Severity.Unknown],
        "The socket got hotter than its maker allows, which ends it, or hotter than steels of its kind are known to bear, which only "
            + "tests of its own steel can clear.",
        "While the cone came out the socket reached {measured}; no more than {limit} is allowed.",
        "Set the socket aside. Beyond its maker's limit it stays out of use; without one ask him for it, or have hardness and structure "
            + "compared with the certificate.",
        Physics("heat"), rules => [rules.Reuse.RemovalHot]);

    public static FindingDefinition Warmed { get; } = Caution("socket-warmed", "2026-12", Actor.Crew,
        "The socket got warm enough that a quenched steel might have changed.",
        "While the cone came out the socket reached {measured}, above {limit}.",
        "Have its hardness compared with its certificate before it is used.",
        limits: rules => [rules.Reuse.RemovalWarm]);
}
