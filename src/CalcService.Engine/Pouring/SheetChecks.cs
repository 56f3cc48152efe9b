using CalcService.Engine.Compounds;

namespace CalcService.Engine.Pouring;

/// <summary>Whether the sheet may be worked from, and whether the crew means to dose as it says.</summary>
internal static class SheetChecks
{
    public static void Check(PourScope scope, SheetDose? dose)
    {
        var sheet = scope.Input.Compound;
        if (sheet.Demonstration)
        {
            scope.Find(CompoundFindings.Demonstration, PourPointers.Sheet);
        }

        if (sheet.Pouring is null)
        {
            scope.SheetSilent(PourPointers.PouringRange, "pouring range");
        }

        scope.CheckSheetAge(sheet, DateOnly.FromDateTime(scope.Input.PourAt.DateTime), PourPointers.PourAt, scope.Rules.SheetAge);
        CheckOrder(scope, sheet);
        CheckDose(scope, dose);
    }

    private static void CheckOrder(PourScope scope, CompoundSheet sheet)
    {
        scope.CheckMixingOrder(sheet);
        if (scope.Input.IntendedDose?.Added == DoseMoment.AfterHardener)
        {
            scope.Find(DoseFindings.DoseAfterHardener, PourPointers.DoseAdded);
        }
    }

    /// <summary>Whether the crew means to give the dose of the sheet, and no more than the sheet allows.</summary>
    public static void CheckDose(PourScope scope, SheetDose? dose) =>
        SheetDose.Check(scope, scope.Input.Compound, dose, scope.Input.IntendedDose?.PerKit, PourPointers.DosePerKit);
}
