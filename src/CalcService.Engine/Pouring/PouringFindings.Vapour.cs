using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;
using static CalcService.Engine.Findings.FindingKinds;

namespace CalcService.Engine.Pouring;

/// <content>Findings of the vapour and the place.</content>
public static partial class PouringFindings
{
    private static IReadOnlyList<Rule> LawLimits(RuleBook rules) => [.. rules.Pouring.Air.SelectMany(air => air.Laws).SelectMany(law =>
        law.Limits)];

    public static FindingDefinition VapourAboveLaw { get; } = Stop("vapour-above-law", "2026-12", Actor.Lead,
        "The vapour in the room exceeds a legal limit even if the air mixes perfectly.",
        "In the room {substance} reaches {measured} ({which}); the law allows {limit} ({law}).",
        "Ventilate more, or pour less at a time.",
        limits: LawLimits);

    public static FindingDefinition VapourMayExceedLaw { get; } = Caution("vapour-may-exceed-law", "2026-12", Actor.Lead,
        "The vapour near the work may exceed a legal limit where the air mixes badly.",
        "Near the work {substance} may reach {measured} ({which}); the law allows {limit} ({law}).",
        "Ventilate more and measure the air where people breathe.",
        limits: rules => [rules.Pouring.MixingFactor, .. LawLimits(rules)]) with { SourceIn = rules => LawLimits(rules)[0].Source };

    public static FindingDefinition VapourAboveStricterLaw { get; } = Caution("vapour-above-stricter-law", "2026-12", Actor.Lead,
        "It is not said in which kind of workplace or under which law the pour is, and the vapour may exceed a limit of one that is "
            + "stricter.",
        "Near the work {substance} may reach {measured} ({which}); {limit} is allowed in: {law}.",
        "Give conditions.workplace and conditions.jurisdiction; keep the strictest limit that may hold.",
        limits: rules => [rules.Pouring.MixingFactor, .. LawLimits(rules)]) with { SourceIn = rules => LawLimits(rules)[0].Source };

    public static FindingDefinition VapourAboveRecommended { get; } = Caution("vapour-above-recommended", "2026-12", Actor.Lead,
        "The vapour in the room would exceed a recommended limit.",
        "Near the work {substance} may reach {measured} ({which}); {limit} is recommended.",
        "Ventilate more; keep vessels closed and the pour short.",
        limits: rules => [.. rules.Pouring.Air.SelectMany(air => new[] { air.RecommendedShortTerm, air.RecommendedTimeWeighted })]);

    public static FindingDefinition VapourNotComputed { get; } = Unknown("vapour-not-computed", "2026-12", Actor.Lead,
        "Whether the vapour of this compound stays within its limits can't be computed.",
        "Vapour not computed: {why}.",
        "Go by the safety data sheet of the compound, and give what is missing.");

    public static FindingDefinition RoomMissing { get; } = Unknown("room-missing", "2026-12", Actor.Lead,
        "Without room and air changes nobody knows whether the vapour stays within its limits.",
        "The room is not given: vapour not computed.",
        "Give conditions.room, or conditions.place where the pour is outdoors.");

    public static FindingDefinition IgnitionSource { get; } = Define("ignition-source", "2026-12", Actor.Crew,
        [Severity.Stop, Severity.Unknown],
        "Something near the work can light the vapour. However cold the day, the reaction heats the compound above its flash point; of a "
            + "vapour that isn't known here nobody can say that it doesn't burn.",
        "There is an ignition source near {substance}.",
        "Take away every flame, spark, hot surface and running engine before a kit is opened.",
        limits: rules => [rules.Pouring.Air[0].FlashPoint]);

    public static FindingDefinition ConfinedSpace { get; } = Caution("confined-space", "2026-12", Actor.Lead,
        "The pour is in a confined space: vapour gathers, and people need a way out and somebody outside.",
        "The pour is in a confined space.",
        "Work by the local rules for confined spaces; measure the air.",
        new("29 CFR 1910.146", "", Basis.FromMemory));

    public static FindingDefinition VapourAboveOwnLimit { get; } = Define("vapour-above-own-limit", "2026-12", Actor.Lead,
        [Severity.Stop, Severity.Caution],
        "The vapour exceeds the limit that the request brings along. A stop where it does so even if the air mixes perfectly, else a "
            + "caution.",
        "In the room {substance} reaches {measured} ({which}); {from} allows {limit}.",
        "Ventilate more, or pour less at a time.",
        new("the limit of the request", "conditions.airLimits", Basis.Derived));
}
