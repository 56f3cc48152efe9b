using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using static CalcService.Engine.Findings.FindingKinds;

namespace CalcService.Engine.Pouring;

/// <content>Findings of the day's readings.</content>
public static partial class PouringFindings
{
    private static IReadOnlyList<FindingDefinition> Readings =>
    [
        SteelAtDewPoint, SteelNearDewPoint, OutsidePouringRange, ReadingMissing, ReadingsOld, ReadAgain,
    ];

    public static FindingDefinition SteelAtDewPoint => SteelFindings.SteelAtDewPoint;

    public static FindingDefinition SteelNearDewPoint => SteelFindings.SteelNearDewPoint;

    public static FindingDefinition OutsidePouringRange => CompoundFindings.OutsidePouringRange;

    public static FindingDefinition ReadingMissing => CompoundFindings.ReadingMissing;

    public static FindingDefinition ReadingsOld { get; } = Caution("readings-old", Actor.Crew,
        "Readings were taken so long before the pour that they may not hold any more.",
        "Read {measured} before the pour; a reading holds {limit}.",
        "Read air, steel, compound and humidity again right before mixing, and plan again.",
        Rules.ReadingsValidFor.Source, Rules.ReadingsValidFor);

    public static FindingDefinition ReadAgain { get; } = Note("read-again-during-pour", Actor.Crew,
        "The last mix starts after the readings have ceased to hold.",
        "Mix {mix} starts at {startsAt}; the readings hold until {validUntil}.",
        "Read air, steel, compound and humidity again before the mixes that start later, and plan the rest again.",
        Rules.ReadingsValidFor.Source, Rules.ReadingsValidFor);
}
