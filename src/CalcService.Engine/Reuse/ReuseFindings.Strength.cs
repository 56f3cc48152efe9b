using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using static CalcService.Engine.Findings.FindingKinds;

namespace CalcService.Engine.Reuse;

/// <content>Findings of strength with what is left.</content>
public static partial class ReuseFindings
{
    public static FindingDefinition YieldsAtProof { get; } = Define("yields-at-proof-load", "2026-12", Actor.Lead,
        [Severity.Stop, Severity.Unknown],
        "With what is left of it, a part of the socket yields under the proof load. Where that rests on a steel that was only assumed, "
            + "the steel has to be known first.",
        "Under the proof load the part is used to {measured} of its strength: {what}.",
        "Take the socket out of use for this load. Where the pin's steel was assumed, take it from the pin's mark or certificate.",
        Physics("strength"));

    public static FindingDefinition PinYields { get; } = Stop("pin-yields-at-proof-load", "2026-12", Actor.Inspector,
        "The pin as it is yields under the proof load, or presses into the ears. A pin can be had anew: the socket is not withdrawn for "
            + "it.",
        "Under the proof load this pin uses the part to {measured} of its strength: {what}.",
        "Replace the pin by one of the maker's, measure it, and assess the socket with it.",
        Physics("strength"));

    public static FindingDefinition HighlyStressed { get; } = Caution("stress-above-design", "2026-12", Actor.Inspector,
        "At the rated load a part has less reserve than its design factor asks for.",
        "At the rated load, with the design factor, the part is used to {measured}: {what}.",
        "Ask the maker to confirm the rated load for the sizes as measured, or rate the socket lower.",
        limits: rules => [rules.Reuse.DesignFactor]);

    public static FindingDefinition PinSteelAssumed { get; } = Note("pin-steel-assumed", "2026-12", Actor.Inspector,
        "The steel of the pin isn't given and was taken to be as strong as the socket's.",
        "The strength of the pin's steel is not given.",
        "Take it from the pin's mark or certificate.",
        Source.CommonPractice);

    public static FindingDefinition BailNotComputed { get; } = Unknown("bail-not-computed", "2026-12", Actor.Inspector,
        "This service does not compute the bail of a closed socket.",
        "What is left of the bail's strength is not computed.",
        "Have a competent person judge the bail by the maker's sizes and limits.");

    public static FindingDefinition IntendedAboveRating { get; } = Stop("intended-load-above-rating", "2026-12", Actor.Inspector,
        "The socket is meant to carry more than its maker rated it for.",
        "The intended rated load is {measured}; the socket is rated for {limit}.",
        "Take a larger socket.",
        new("the socket maker's rated load, as the request states it", "socket", Basis.DataSheet));

    public static FindingDefinition BreakingForceMissing { get; } = Unknown("socket-breaking-force-missing", "2026-12", Actor.Inspector,
        "A socket is chosen to be stronger than its rope; this socket's breaking force isn't known.",
        "The breaking force of the socket is not given.",
        "Take it from the socket maker's table.");

    public static FindingDefinition MayBeWeaker { get; } = Unknown("remaining-strength-unsure", "2026-12", Actor.Inspector,
        "By its sizes as read the worn socket is stronger than the rope, and by as much as they may be off it isn't. Nobody knows which.",
        "The socket may have no more than {measured} left; the rope breaks at {limit}.",
        "Measure again with a finer instrument, and give its uncertainty.");

    public static FindingDefinition RopeStrengthUnknown { get; } = Unknown("intended-rope-strength-missing", "2026-12", Actor.Inspector,
        "A socket is chosen to be stronger than its rope; this rope's breaking force isn't known.",
        "The breaking force of the rope that is going to be socketed is not known.",
        "Give certificate.breakingForce, or class, core and grade.");
}
