using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Pouring;

/// <content>Findings of the day's readings.</content>
public static partial class PouringFindings
{
    private static IReadOnlyList<FindingDefinition> Readings =>
    [
        SteelAtDewPoint, SteelNearDewPoint, OutsidePouringRange, ReadingMissing, ReadingsOld, ReadAgain,
    ];

    public static FindingDefinition SteelAtDewPoint { get; } = Stop("steel-at-dew-point",
        "The steel is at or below the temperature at which water or frost settles on it.",
        "{reading} at {measured} is not above the {point} of {limit}: the steel is wet or frosted.",
        "Warm the steel and dry wires and basket; do not pour on wet steel.",
        new("WMO-No. 8, Guide to Instruments and Methods of Observation", "Annex 4.B", Basis.Published));

    public static FindingDefinition SteelNearDewPoint { get; } = Define("steel-near-dew-point", [Severity.Caution],
        "The steel is so little above the dew point that a small change wets it.",
        "{reading} is {measured} above the {point}; at least {limit} is asked for.",
        "Warm the steel or dry the air; read both again right before the pour.",
        Rules.DewMargin.Source, Rules.DewMargin);

    public static FindingDefinition OutsidePouringRange => CompoundFindings.OutsidePouringRange;

    public static FindingDefinition ReadingMissing => CompoundFindings.ReadingMissing;

    public static FindingDefinition ReadingsOld { get; } = Define("readings-old", [Severity.Caution],
        "Readings were taken so long before the pour that they may not hold any more.",
        "Read {measured} before the pour; a reading holds {limit}.",
        "Read air, steel, compound and humidity again right before mixing, and plan again.",
        Rules.ReadingsValidFor.Source, Rules.ReadingsValidFor);

    public static FindingDefinition ReadAgain { get; } = Define("read-again-during-pour", [Severity.Note],
        "The last mix starts after the readings have ceased to hold.",
        "Mix {mix} starts at {startsAt}; the readings hold until {validUntil}.",
        "Read air, steel, compound and humidity again before the mixes that start later, and plan the rest again.",
        Rules.ReadingsValidFor.Source, Rules.ReadingsValidFor);
}
