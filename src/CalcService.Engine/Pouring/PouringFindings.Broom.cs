using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using static CalcService.Engine.Findings.FindingKinds;

namespace CalcService.Engine.Pouring;

/// <content>Findings of the broom, the bore and how the rope stands in it.</content>
public static partial class PouringFindings
{
    public static FindingDefinition BroomNotDry { get; } = Stop("broom-not-dry", "2026-12", Actor.Crew,
        "The cleaned broom is not dry at the time of the pour.",
        "The broom is dry only after the pour is meant to start.",
        "Pour later, or dry the broom sooner.",
        new("solvent or water keeps the compound off the wires", "/docs/pour-plans", Basis.Derived));

    public static FindingDefinition ReleaseAgent { get; } = Note("release-agent", "2026-12", Actor.Crew,
        "A release agent in the basket is allowed with resin. On a wire it is not.",
        "There is release agent in the basket.",
        "Keep it off the wires: coat the basket before the broom is drawn in, thinly, and let it dry.",
        new("ISO 17558", "§4.3", Basis.Published));

    public static FindingDefinition BroomWide { get; } = Note("broom-too-wide", "2026-12", Actor.Crew,
        "The broom is opened wider than it should be: the wires are bent where they work hardest.",
        "The broom is opened to {measured} included; {limit} is the most.",
        "Close it by hand without pliers before it is drawn in, and look for kinked wires.",
        limits: rules => [rules.Pouring.BroomAngle]);

    public static FindingDefinition BroomNarrow { get; } = Caution("broom-too-narrow", "2026-12", Actor.Crew,
        "The broom is hardly opened: solvent and compound don't reach all wires.",
        "The broom is opened to {measured} included; at least {limit} is asked for.",
        "Open it further, wire from wire, before it is cleaned.",
        limits: rules => [rules.Pouring.Fit.NarrowBroom]);
}
