using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Reuse;

/// <summary>One kind of wear on one part.</summary>
/// <param name="Check">Name of the check.</param>
/// <param name="Rule">The finding where it is beyond its limit.</param>
/// <param name="What">The wear in words.</param>
/// <param name="Found">How much there is; null where it can't be told.</param>
/// <param name="Limit">What maker or operator allows; null where nobody says.</param>
/// <param name="Most">How much it may be where the reading is off, of the same kind.</param>
/// <param name="Allowance">What drawing and reading leave, of the same kind, and who grants it.</param>
/// <param name="LimitMember">The member that gives the limit.</param>
/// <param name="MeasuredMember">The member that was measured.</param>
/// <param name="Gaps">What it can't be told without.</param>
internal sealed record WearReading(
    string Check, FindingDefinition Rule, string What, Measure? Found, Measure? Limit, Measure? Most, Limit Allowance,
        string LimitMember, string MeasuredMember, IReadOnlyList<Gap> Gaps);

/// <summary>The one way in which wear is judged: by its limit, and where nobody gave one by what drawing and reading leave.</summary>
internal static class WearJudge
{
    public static void Judge(this ReuseScope scope, WearReading one)
    {
        var measuredAt = ReusePointers.Measured(one.MeasuredMember);
        if (one.Limit is { } stated)
        {
            var judged = new Judged(one.Found, Limit.Of(stated, StatedBy(scope)));
            scope.MustNotExceed(one.Check, judged, measuredAt, one.Rule,
                [.. one.Gaps, .. SourceGaps(scope), .. DoubtGaps(scope, one.What, judged, one.Most, measuredAt)]);
            return;
        }

        var limitAt = ReusePointers.Limit(one.LimitMember);
        var left = new Judged(one.Found, one.Allowance);
        if (left.IsAbove)
        {
            scope.Find(ReuseFindings.WornWithoutLimit, limitAt, left, [measuredAt],
                words: new FindingWord("what", one.What));
        }

        if (scope.IsOpen(one.Check, one.Rule, one.Gaps, left) || left.IsAbove)
        {
            scope.Checks.RemoveAll(check => check.Id == one.Check);
            string[] missing = [.. one.Gaps.Select(gap => gap.Pointer).Distinct(StringComparer.Ordinal),
                .. left.IsAbove ? [limitAt] : Array.Empty<string>()];
            scope.Write(one.Check, CheckOutcome.Undetermined, one.Rule, left, missing);
            return;
        }

        scope.Write(one.Check, CheckOutcome.Pass, one.Rule, left);
    }

    /// <summary>
    /// Of several places the one to judge: the one worn most, or without a limit the one furthest beyond what is left to it. The most
    /// that any of them may be by its reading comes with it.
    /// </summary>
    public static (double? Found, double Allowed, double? Most) Worst(double? limit,
        IReadOnlyList<(double Found, double Allowed, double Doubt)> places)
    {
        if (places.Count == 0)
        {
            return (null, 0, null);
        }

        var worst = places.MaxBy(place => limit is null ? place.Found - place.Allowed : place.Found);
        return (worst.Found, worst.Allowed, places.Max(place => place.Found + place.Doubt));
    }

    /// <summary>
    /// Within its limit by the reading, and beyond it where the reading is off: nobody knows. Beyond by the reading is beyond.
    /// </summary>
    public static Gap[] DoubtGaps(ReuseScope scope, string what, Judged read, Measure? most, string pointer)
    {
        if (read.Measured is null || most is not { } worst || read.IsAbove || !new Judged(worst, read.Limit).IsAbove)
        {
            return [];
        }

        // Said here with its numbers; as a gap it only keeps the check open.
        scope.Find(ReuseFindings.ReadingTooCoarse, pointer, read, [ReusePointers.Measured("uncertainty")],
            words: [new("what", what), new("most", worst)]);
        return [new(ReuseFindings.ReadingTooCoarse, pointer, what)];
    }

    /// <summary>Who set the limits of the request.</summary>
    public static Source StatedBy(ReuseScope scope) => new(scope.Input.Limits.Source ?? "not said", "limits", Basis.DataSheet);

    public static Gap[] SourceGaps(ReuseScope scope) =>
        string.IsNullOrWhiteSpace(scope.Input.Limits.Source) ? [new(ReuseFindings.LimitsMissing, ReusePointers.LimitsSource,
            "where the limits stand")] : [];
}
