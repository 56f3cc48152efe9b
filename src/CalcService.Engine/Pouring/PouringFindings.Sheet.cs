using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;

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

    public static FindingDefinition SheetOld => LongAgoFindings.SheetOld;

    public static FindingDefinition DoseContradictsSheet => CompoundFindings.DoseContradictsSheet;

    public static FindingDefinition DoseAboveMaximum => DoseFindings.DoseAboveMaximum;

    public static FindingDefinition DoseAfterHardener => DoseFindings.DoseAfterHardener;
}
