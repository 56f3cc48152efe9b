using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using static CalcService.Engine.Findings.FindingKinds;

namespace CalcService.Engine.Matching;

/// <content>Findings of the load transfer in the cone. A model stands behind them, no pull test: none of them stops.</content>
public static partial class MatchingFindings
{
    private static Source Model => new("load transfer in the cone", "/docs/termination-matches", Basis.Derived);

    public static FindingDefinition TransferNotComputed { get; } = Caution("load-transfer-not-computed", "2026-12", Actor.Lead,
        "How the cone hands its load over could not be computed.",
        "The load transfer is not computed: {why}.",
        "Give what is missing; the answer otherwise stands.",
        Model);

    public static FindingDefinition CompoundOverstressed { get; } = Caution("compound-overstressed", "2026-12", Actor.Lead,
        "At the working or proof load the pressure at the small end is above the compound's compressive strength.",
        "At the {load} the cone presses {measured} at the small end; the sheet gives a compressive strength of {limit}.",
        "Take a longer or wider basket for this load, or ask the compound's maker.",
        Model, rules => [rules.Matching.LipFactor]);

    public static FindingDefinition WallAssumed { get; } = Note("socket-wall-assumed", "2026-12", Actor.Inspector,
        "The outside of the socket isn't given, so its wall is assumed and its hoop stress not told.",
        "The wall of the socket is taken as {measured} of the bore.",
        "Measure the outside of the socket at the small end and at the mouth.",
        limits: rules => [rules.Matching.WallRatio]);

    public static FindingDefinition NotSelfLocking { get; } = Note("cone-not-self-locking", "2026-12", Actor.Lead,
        "Friction is below the taper, so the cone lets go when the load does.",
        "Friction {measured} is not above the taper {limit}: the cone loosens when it is unloaded.",
        "Keep the rope under tension, and look at the cone after each unloading.",
        new("balance of a wedge", "/docs/termination-matches", Basis.Derived));
}
