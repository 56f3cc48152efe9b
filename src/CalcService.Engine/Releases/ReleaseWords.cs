using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using System.Globalization;

namespace CalcService.Engine.Releases;

/// <summary>What has to be said about a release, the same wherever it is computed.</summary>
internal static class ReleaseWords
{
    /// <summary>So far below the coldest row the sheet's time is an assumption, beyond a guess.</summary>
    private const double NearRowK = 15;

    private const string FullStrength = "/compound/sheet/fullStrength", LowestCure = "/compound/sheet/lowestCure",
        Pouring = "/compound/sheet/pouring";

    /// <param name="scope">Takes the findings.</param>
    /// <param name="sheet">The sheet.</param>
    /// <param name="kinetics">Gel and cure by it.</param>
    /// <param name="release">The slowest end.</param>
    /// <param name="steelReadS">When the steel was last read, from mixing.</param>
    /// <param name="air">The air.</param>
    /// <param name="airPointer">The member that gives it.</param>
    /// <param name="steelPointer">The member that gives the steel.</param>
    public static void CheckRelease(this CalculationScope scope, CompoundSheet sheet, CureKinetics kinetics, ReleaseTimes release,
        double steelReadS,
        TemperatureHistory air, string airPointer, string steelPointer)
    {
        var pointer = air.Extremes(0, release.SheetS ?? air.EndS).LowestK <= release.ColdestK + ReleaseTimes.ResolutionK ? airPointer
            : steelPointer;
        var afterGel = kinetics.AfterGel;
        if (afterGel.IsOfOtherDose)
        {
            scope.Find(ReleaseFindings.OfOtherDose, FullStrength,
                words: new FindingWord("doses", kinetics.Doses.ToString(CultureInfo.InvariantCulture)));
        }

        if (release.ColdestK is { } coldest)
        {
            if (coldest < kinetics.Ceiling.LowestCureK - ReleaseTimes.ResolutionK)
            {
                var isMeasured = release.LoadS is { } load && steelReadS >= load;
                scope.Find(ReleaseFindings.BelowLowestCure, pointer, Judged.Temperature(coldest, kinetics.Ceiling.LowestCureK),
                    [sheet.LowestCureK is null ? Pouring : LowestCure], isMeasured ? Severity.Caution : Severity.Unknown);
            }

            CheckRows(scope, afterGel, release.ColdestAfterGelK!.Value, pointer);
        }

        if (release is { IsByOwnHeat: true, ModelS: { } model })
        {
            scope.Find(ReleaseFindings.ByOwnHeat, FullStrength, new(Measure.Duration(model), release.SheetS is { } alone
                ? Limit.Of(Measure.Duration(alone)) : null));
        }
    }

    /// <summary>What a gel that somebody saw says of the cone, by where it was seen.</summary>
    public static void CheckGelPlace(this CalculationScope scope, GelPlace place, string seenIn, string gelAt)
    {
        if (place is GelPlace.Cup or GelPlace.Vessel)
        {
            scope.Find(CompoundFindings.GelSeenInCup, seenIn, related: [gelAt],
                words: new FindingWord("place", place == GelPlace.Cup ? "cup" : "vessel"));
        }
        else if (place == GelPlace.Unknown)
        {
            scope.Find(CompoundFindings.GelPlaceUnknown, seenIn, related: [gelAt]);
        }
    }

    private static void CheckRows(CalculationScope scope, AfterGel afterGel, double coldestK, string pointer)
    {
        var row = afterGel.Coldest;
        if (coldestK < row.TemperatureK - NearRowK)
        {
            scope.Find(ReleaseFindings.Extrapolated, pointer, Judged.Temperature(coldestK, row.TemperatureK), [FullStrength]);
        }

        if (coldestK < row.TemperatureK - ReleaseTimes.ResolutionK)
        {
            scope.Assume(FullStrength, "time after gel at the coldest that it gets, beyond the sheet's coldest row",
                Measure.Duration(afterGel.TimeS(coldestK, scope.Trace)), AssumptionOrigin.Estimate);
            scope.Assume(FullStrength, "time after gel of the sheet's coldest row", Measure.Duration(row.AfterGelS),
                AssumptionOrigin.Estimate);
        }
    }
}
