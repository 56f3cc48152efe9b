using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Compounds;

/// <summary>Holds what was read, cleaned or issued against how long it holds.</summary>
internal static class LongAgo
{
    /// <summary>Readings that were taken longer before the mixing than they hold.</summary>
    internal static void CheckReadings(this RoomScope scope, DateTimeOffset readAt, string pointer, DateTimeOffset mixedAt, string mixedPointer, double holdsS)
    {
        if ((mixedAt - readAt).TotalSeconds is var since && Judged.IsAbove(since, holdsS))
        {
            scope.Find(LongAgoFindings.ReadingsOld, pointer, Measure.Duration(since), Measure.Duration(holdsS), [mixedPointer]);
        }
    }

    /// <summary>A broom that was dry long before the mixing.</summary>
    internal static void CheckDried(this RoomScope scope, DateTimeOffset driedAt, string pointer, DateTimeOffset mixedAt, string mixedPointer, RuleLimit limit)
    {
        if ((mixedAt - driedAt).TotalSeconds is var since && Judged.IsAbove(since, limit.Si))
        {
            scope.Find(LongAgoFindings.BroomDriedLongAgo, pointer, Measure.Duration(since), limit.Value, [mixedPointer]);
        }
    }

    /// <summary>A data sheet that is older than one may be before it is asked for again.</summary>
    internal static void CheckSheetAge(this RoomScope scope, CompoundSheet sheet, DateOnly day, string dayPointer, RuleLimit limit)
    {
        if (sheet.IssuedOn is { } issued && issued < day.AddMonths(-(int)limit.Si))
        {
            scope.Find(LongAgoFindings.SheetOld, "/compound/sheet/issuedOn", limit: limit.Value, related: [dayPointer],
                words: new FindingWord("issuedOn", issued));
        }
    }
}
