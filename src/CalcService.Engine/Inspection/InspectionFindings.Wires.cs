using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using static CalcService.Engine.Findings.FindingKinds;

namespace CalcService.Engine.Inspection;

/// <content>Findings of broken wires and of the rule set.</content>
public static partial class InspectionFindings
{
    public static FindingDefinition RuleSetMissing { get; } = Unknown("rule-set-missing", "2026-12", Actor.Integrator,
        "Which rule set holds decides the limits.",
        "No rule set is named; the strictest limit known of each kind is applied.",
        "Name the rule set that holds for the machine, or general where none does.");

    public static FindingDefinition NotLookedAt { get; } = Unknown("not-looked-at", "2026-12", Actor.Inspector,
        "The inspection doesn't say something that a safety rule asks for.",
        "The inspection doesn't say {what}.",
        "Look at the end, cleaned and without load, and send what is found.");

    public static FindingDefinition BrokenWires { get; } = Stop("broken-wires-reject", "2026-12", Actor.Inspector,
        "As many wires are broken as take the rope or the end out of service.",
        "{measured} found: {rule} ({limit}); {document}.",
        "Take the end out of service. Cut the damage off and socket again where enough rope is left; else replace the rope.",
        OfTheLimit, rules => [.. rules.Inspection.BrokenWires.Select(rule => rule.Limit)]);

    public static FindingDefinition WiresNotPlaced { get; } = Unknown("broken-wires-not-placed", "2026-12", Actor.Inspector,
        "Whether the broken wires reject hangs on where they are, on the lay length, or on what the rope is and does. A lay shorter than "
            + "3 diameters or longer than 15 is a slip of units.",
        "Up to {measured} may count: {rule} ({limit}); {document}.",
        "Say where each broken wire is and in how many strands, and give lay length, construction and function of the rope.",
        rules => [.. rules.Inspection.BrokenWires.Select(rule => rule.Limit)]);

    public static FindingDefinition LimitElsewhere { get; } = Unknown("limit-of-another-rule-set", "2026-12", Actor.Inspector,
        "A limit is exceeded that the named rule set doesn't have and another has. Whether it holds for this machine is for a person to "
            + "say: until then the end doesn't pass.",
        "{measured} found: {rule} ({limit}), by {document}, {clause}. The named rule set has no limit of its own for it.",
        "Leave the end unloaded. Have a competent person read that clause and the code that holds for the machine and decide, or name the "
            + "rule set that holds.",
        rules => [.. rules.Inspection.BrokenWires.Select(rule => rule.Limit), rules.Inspection.NominalDiameterLoss,
            rules.Inspection.BaselineDiameterLoss, rules.Inspection.StrengthLoss, rules.Inspection.DrumTurns,
            rules.Inspection.ResocketAfter,
            rules.Matching.MineAttachment]);

    public static FindingDefinition CoreBroken { get; } = Caution("core-wires-broken", "2026-12", Actor.Inspector,
        "Broken wires of the core are seldom seen and point to more.",
        "Wires of the core are broken.",
        "Have the rope examined inside, or by a nondestructive test.",
        Source.CommonPractice);
}
