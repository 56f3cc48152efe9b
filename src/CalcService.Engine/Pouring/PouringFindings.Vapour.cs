using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using static CalcService.Engine.Findings.FindingKinds;

namespace CalcService.Engine.Pouring;

/// <content>Findings of the vapour and the place.</content>
public static partial class PouringFindings
{
    private static IReadOnlyList<FindingDefinition> Vapour =>
    [
        VapourAboveLaw, VapourMayExceedLaw, VapourAboveRecommended, VapourNotComputed, RoomMissing, Outdoors,
        ConfinedSpace, IgnitionSource, VapourAboveOwnLimit, RoomMeanOnly,
    ];

    public static FindingDefinition VapourAboveLaw { get; } = Stop("vapour-above-law", Actor.Lead,
        "The vapour in the room exceeds a legal limit even if the air mixes perfectly.",
        "In the room {substance} reaches {measured} ({which}); the law allows {limit}.",
        "Ventilate more, or pour less at a time.",
        Rules.Air[0].LegalCeiling.Source, [.. Rules.Air.SelectMany(air => new[] { air.LegalCeiling, air.LegalTimeWeighted })]);

    public static FindingDefinition VapourMayExceedLaw { get; } = Caution("vapour-may-exceed-law", Actor.Lead,
        "The vapour near the work may exceed a legal limit where the air mixes badly.",
        "Near the work {substance} may reach {measured} ({which}); the law allows {limit}.",
        "Ventilate more and measure the air where people breathe.",
        Rules.Air[0].LegalCeiling.Source, [Rules.MixingFactor, .. Rules.Air.SelectMany(air => new[] { air.LegalCeiling, air.LegalTimeWeighted })]);

    public static FindingDefinition VapourAboveRecommended { get; } = Caution("vapour-above-recommended", Actor.Lead,
        "The vapour in the room would exceed a recommended limit.",
        "Near the work {substance} may reach {measured} ({which}); {limit} is recommended.",
        "Ventilate more; keep vessels closed and the pour short.",
        Rules.Air[0].RecommendedTimeWeighted.Source, [.. Rules.Air.SelectMany(air => new[] { air.RecommendedShortTerm, air.RecommendedTimeWeighted })]);

    public static FindingDefinition VapourNotComputed { get; } = Unknown("vapour-not-computed", Actor.Lead,
        "Whether the vapour of this compound stays within its limits can't be computed.",
        "Vapour not computed: {why}.",
        "Go by the safety data sheet of the compound, and give what is missing.");

    public static FindingDefinition RoomMissing { get; } = Unknown("room-missing", Actor.Lead,
        "Without room and air changes nobody knows whether the vapour stays within its limits.",
        "The room is not given: vapour not computed.",
        "Give conditions.room, or conditions.place where the pour is outdoors.");

    public static FindingDefinition Outdoors { get; } = Caution("outdoors", Actor.Crew,
        "Outdoors no vapour is computed, and wind, sun and rain change the readings.",
        "The pour is outdoors: vapour not computed.",
        "Stand upwind, keep sun and rain off steel and compound, and read again right before the pour.",
        Source.CommonPractice);

    public static FindingDefinition IgnitionSource { get; } = Stop("ignition-source", Actor.Crew,
        "Something near the work can light the vapour. However cold the day, the reaction heats the compound above its flash point.",
        "There is an ignition source near {substance}, which can burn from {limit} on.",
        "Take away every flame, spark, hot surface and running engine before a kit is opened.",
        new("NIOSH Pocket Guide to Chemical Hazards", "styrene, flash point", Basis.Published), Rules.Air[0].FlashPoint);

    public static FindingDefinition ConfinedSpace { get; } = Caution("confined-space", Actor.Lead,
        "The pour is in a confined space: vapour gathers, and people need a way out and somebody outside.",
        "The pour is in a confined space.",
        "Work by the local rules for confined spaces; measure the air.",
        new("29 CFR 1910.146", "", Basis.FromMemory));

    public static FindingDefinition VapourAboveOwnLimit { get; } = Define("vapour-above-own-limit", Actor.Lead, [Severity.Stop, Severity.Caution],
        "The vapour exceeds the limit that the request brings along. A stop where it does so even if the air mixes perfectly, else a caution.",
        "In the room {substance} reaches {measured} ({which}); {from} allows {limit}.",
        "Ventilate more, or pour less at a time.",
        new("the limit of the request", "conditions.airLimits", Basis.Derived));

    public static FindingDefinition RoomMeanOnly { get; } = Caution("room-mean-only", Actor.Lead,
        "The vapour is computed as a mean of the room. Over the mouths and the vessel, where people breathe, it is higher.",
        "The vapour near the work is guessed from the room's mean.",
        "Measure the air where people breathe; give mixingFactor where it is known for this room.",
        Rules.MixingFactor.Source, Rules.MixingFactor);
}
