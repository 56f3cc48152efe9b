using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Pouring;

/// <content>Findings of the day's readings and the sheet.</content>
public static partial class PouringFindings
{
    private static IReadOnlyList<FindingDefinition> Readings =>
    [
        SteelAtDewPoint, SteelNearDewPoint, OutsidePouringRange, ReadingMissing, SheetSilent, Demonstration,
    ];

    public static FindingDefinition SteelAtDewPoint { get; } = Stop("steel-at-dew-point",
        "The steel is at or below the temperature at which water or frost settles on it.",
        "Steel at {measured} is not above the {point} of {limit}: the wires and the basket are wet or frosted.",
        "Warm the steel and dry wires and basket; do not pour on wet steel.",
        new("WMO-No. 8, Guide to Instruments and Methods of Observation", "Annex 4.B", Basis.Published));

    public static FindingDefinition SteelNearDewPoint { get; } = Define("steel-near-dew-point", [Severity.Caution],
        "The steel is so little above the dew point that a small change wets it.",
        "Steel is {measured} above the {point}; at least {limit} is asked for.",
        "Warm the steel or dry the air; read both again right before the pour.",
        Rules.DewMargin.Source, Rules.DewMargin);

    public static FindingDefinition OutsidePouringRange => CompoundFindings.OutsidePouringRange;

    public static FindingDefinition ReadingMissing => CompoundFindings.ReadingMissing;

    public static FindingDefinition SheetSilent => CompoundFindings.SheetSilent;

    public static FindingDefinition Demonstration => CompoundFindings.Demonstration;
}
