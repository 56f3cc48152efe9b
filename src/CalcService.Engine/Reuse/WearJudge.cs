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
/// <param name="Allowance">What drawing and reading leave, of the same kind.</param>
/// <param name="Granted">Who grants the allowance.</param>
/// <param name="LimitMember">The member that gives the limit.</param>
/// <param name="MeasuredMember">The member that was measured.</param>
/// <param name="Gaps">What it can't be told without.</param>
internal sealed record WearReading(
    string Check, FindingDefinition Rule, string What, Measure? Found, Measure? Limit, Measure? Most, Measure Allowance, Source Granted,
        string LimitMember, string MeasuredMember, IReadOnlyList<Gap> Gaps);

/// <summary>The one way in which wear is judged: by its limit, and where nobody gave one by what drawing and reading leave.</summary>
internal static class WearJudge
{
    public static void Judge(this ReuseScope scope, WearReading one)
    {
        var measuredAt = ReusePointers.Measured(one.MeasuredMember);
        if (one.Limit is { } limit)
        {
            scope.MustNotExceed(one.Check, one.Found, limit, measuredAt, one.Rule, StatedBy(scope),
                [.. one.Gaps, .. SourceGaps(scope), .. DoubtGaps(scope, one.What, one.Found, one.Most, limit, measuredAt)]);
            return;
        }

        var limitAt = ReusePointers.Limit(one.LimitMember);
        var isBeyond = one.Found is { } found && Judged.IsAbove(found.Si, one.Allowance.Si);
        if (isBeyond)
        {
            scope.Find(ReuseFindings.WornWithoutLimit, limitAt, one.Found, one.Allowance, [measuredAt],
                words: new FindingWord("what", one.What));
        }

        if (scope.IsOpen(one.Check, one.Rule, one.Gaps, one.Found, one.Allowance, one.Granted) || isBeyond)
        {
            scope.Checks.RemoveAll(check => check.Id == one.Check);
            string[] missing = [.. one.Gaps.Select(gap => gap.Pointer).Distinct(StringComparer.Ordinal),
                .. isBeyond ? [limitAt] : Array.Empty<string>()];
            scope.Write(one.Check, CheckOutcome.Undetermined, one.Rule, one.Found, one.Allowance, one.Granted, missing);
            return;
        }

        scope.Write(one.Check, CheckOutcome.Pass, one.Rule, one.Found, one.Allowance, one.Granted);
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

    /// <summary>Within its limit by the reading, and beyond it where the reading is off: nobody knows. Beyond by the reading is beyond.</summary>
    public static Gap[] DoubtGaps(ReuseScope scope, string what, Measure? found, Measure? most, Measure limit, string pointer)
    {
        if (found is not { } read || most is not { } worst || Judged.IsAbove(read.Si, limit.Si) || !Judged.IsAbove(worst.Si, limit.Si))
        {
            return [];
        }

        // Said here with its numbers; as a gap it only keeps the check open.
        scope.Find(ReuseFindings.ReadingTooCoarse, pointer, read, limit, [ReusePointers.Measured("uncertainty")],
            words: [new("what", what), new("most", worst)]);
        return [new(ReuseFindings.ReadingTooCoarse, pointer, what)];
    }

    /// <summary>Who set the limits of the request.</summary>
    public static Source StatedBy(ReuseScope scope) => new(scope.Input.Limits.Source ?? "not said", "limits", Basis.DataSheet);

    public static Gap[] SourceGaps(ReuseScope scope) =>
        string.IsNullOrWhiteSpace(scope.Input.Limits.Source) ? [new(ReuseFindings.LimitsMissing, ReusePointers.LimitsSource,
            "where the limits stand")] : [];
}
