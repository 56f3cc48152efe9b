using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Compounds;

/// <summary>Holds what was read, cleaned or issued against how long it holds.</summary>
internal static class LongAgo
{
    /// <summary>Readings that were taken longer before the mixing than they hold.</summary>
    internal static void CheckReadings(
        this CalculationScope scope, DateTimeOffset readAt, string pointer, DateTimeOffset mixedAt, string mixedPointer, Limit holds)
    {
        if (new Judged(Measure.Duration((mixedAt - readAt).TotalSeconds), holds) is { IsAbove: true } old)
        {
            scope.Find(LongAgoFindings.ReadingsOld, pointer, old, [mixedPointer]);
        }
    }

    /// <summary>A broom that was dry long before the mixing.</summary>
    internal static void CheckDried(
        this CalculationScope scope, DateTimeOffset driedAt, string pointer, DateTimeOffset mixedAt, string mixedPointer, RuleLimit limit)
    {
        if (limit.Judge(Measure.Duration((mixedAt - driedAt).TotalSeconds)) is { IsAbove: true } old)
        {
            scope.Find(LongAgoFindings.BroomDriedLongAgo, pointer, old, [mixedPointer]);
        }
    }

    /// <summary>A data sheet that is older than one may be before it is asked for again.</summary>
    internal static void CheckSheetAge(this CalculationScope scope, CompoundSheet sheet, DateOnly day, string dayPointer, RuleLimit limit)
    {
        if (sheet.IssuedOn is { } issued && issued < limit.MonthsFrom(day, -1))
        {
            scope.Find(LongAgoFindings.SheetOld, "/compound/sheet/issuedOn", limit.Judge(null), [dayPointer],
                words: new FindingWord("issuedOn", issued));
        }
    }
}
