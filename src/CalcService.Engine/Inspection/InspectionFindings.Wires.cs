using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using static CalcService.Engine.Findings.FindingKinds;

namespace CalcService.Engine.Inspection;

/// <content>Findings of broken wires and of the rule set.</content>
public static partial class InspectionFindings
{
    private static IReadOnlyList<FindingDefinition> Wires => [RuleSetMissing, NotLookedAt, BrokenWires, WiresNotPlaced, StricterElsewhere, CoreBroken];

    public static FindingDefinition RuleSetMissing { get; } = Unknown("rule-set-missing", Actor.Integrator,
        "Which rule set holds decides the limits.",
        "No rule set is named; the strictest limit known of each kind is applied.",
        "Name the rule set that holds for the machine, or general where none does.");

    public static FindingDefinition NotLookedAt { get; } = Unknown("not-looked-at", Actor.Inspector,
        "The inspection doesn't say something that a safety rule asks for.",
        "The inspection doesn't say {what}.",
        "Look at the end, cleaned and without load, and send what is found.");

    public static FindingDefinition BrokenWires { get; } = StopOrBorrowed("broken-wires-reject", Actor.Inspector,
        "As many wires are broken as take the rope or the end out of service.",
        "{measured} found: {rule} ({limit}); {document}.",
        "Take the end out of service. Cut the damage off and socket again where enough rope is left; else replace the rope.",
        OfTheLimit, [.. Rules.BrokenWires.Select(rule => rule.Limit)]);

    public static FindingDefinition WiresNotPlaced { get; } = Define("broken-wires-not-placed", Actor.Inspector, [Severity.Unknown, Severity.Caution],
        "Whether the broken wires reject hangs on where they are, on the lay length or on what the rope does. A caution where the limit is borrowed from another rule set.",
        "Up to {measured} may count: {rule} ({limit}); {document}.",
        "Say where each broken wire is and in how many strands, and give lay length and function of the rope.",
        Prudence, [.. Rules.BrokenWires.Select(rule => rule.Limit)]);

    public static FindingDefinition StricterElsewhere { get; } = Note("stricter-rule-elsewhere", Actor.Inspector,
        "Another rule set would reject what the chosen one lets pass.",
        "{measured} found: {rule} ({limit}), by {document}, which was not named.",
        "Make sure that the named rule set is the one that holds, and look at these wires again soon.",
        OfTheLimit, [.. Rules.BrokenWires.Select(rule => rule.Limit)]);

    public static FindingDefinition CoreBroken { get; } = Caution("core-wires-broken", Actor.Inspector,
        "Broken wires of the core are seldom seen and point to more.",
        "Wires of the core are broken.",
        "Have the rope examined inside, or by a nondestructive test.",
        Source.CommonPractice);
}
