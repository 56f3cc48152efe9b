using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Sockets;
using static CalcService.Engine.Findings.FindingKinds;

namespace CalcService.Engine.Proof;

/// <content>Findings from before the load.</content>
public static partial class ProofFindings
{
    public static FindingDefinition ProofLoadUnknown { get; } = Unknown("proof-load-unknown", "2026-12", Actor.Lead,
        "Which proof load is asked for is not known: no rule set is named, or it sets none and the request gives none.",
        "The rule set of the proof load, or the proof load itself, is not given.",
        "Name the rule set; for one that sets no proof load give the load that its code asks for.",
        Prudence, rules => LoadFindings.ProofFactors(rules));

    public static FindingDefinition NotCured { get; } = Stop("not-cured-for-proof", "2026-12", Actor.Lead,
        "The test is before the time from which on the cure allows it.",
        "The test is at {at}; the cure allows the load from {from} on.",
        "Wait, or warm the end as the sheet allows.",
        new("proof before the least cured place reaches its degree", "/docs/cure-schedules", Basis.Derived));

    public static FindingDefinition ZoneOpen { get; } = Stop("no-exclusion-zone", "2026-12", Actor.Crew,
        "A rope that lets go under a test load sweeps what is near and in line with it.",
        "People are not kept away from the test.",
        "Do not load. Close off the length of the rope and both ends in line with it first.",
        new("a stretched rope that parts sets free what the load stored in it", "/docs/proof-load-evaluations", Basis.Derived));
}
