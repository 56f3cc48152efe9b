using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using static CalcService.Engine.Findings.FindingKinds;

namespace CalcService.Engine.Pouring;

/// <content>Findings of the compound's sheet, and of a crew that means to do otherwise.</content>
public static partial class PouringFindings
{
    private static IReadOnlyList<FindingDefinition> Sheet =>
    [
        SheetSilent, Demonstration, SheetOld, DoseContradictsSheet, DoseAboveMaximum, DoseAfterHardener,
    ];

    public static FindingDefinition SheetSilent => CompoundFindings.SheetSilent;

    public static FindingDefinition Demonstration => CompoundFindings.Demonstration;

    public static FindingDefinition SheetOld { get; } = Caution("sheet-old", Actor.Office,
        "The data sheet was issued long ago; a newer edition may say otherwise.",
        "The sheet was issued on {issuedOn}; one older than {limit} is asked for again.",
        "Ask the compound's maker whether this edition still holds.",
        Rules.SheetAge.Source, Rules.SheetAge);

    public static FindingDefinition DoseContradictsSheet => CompoundFindings.DoseContradictsSheet;

    public static FindingDefinition DoseAboveMaximum => DoseFindings.DoseAboveMaximum;

    public static FindingDefinition DoseAfterHardener => DoseFindings.DoseAfterHardener;
}
