using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Releases;

namespace CalcService.Engine.Audits;

/// <summary>The gel that was seen, beside the one to be expected.</summary>
internal static class GelCheck
{
    public static AuditedGel Check(AuditScope scope, CureKinetics kinetics, UniformTimes times, CurePath path, SeenGel? seen)
    {
        var input = scope.Input;
        var isMix = input.GelSeenIn is GelPlace.Cup or GelPlace.Vessel;
        if (isMix || input.Times.GelAt is not null)
        {
            scope.CheckGelPlace(input.GelSeenIn, AuditPointers.GelSeenIn, AuditPointers.Time("gelAt"));
        }

        var inCup = kinetics.Model.At(Math.Max(input.Readings.CompoundK ?? 0, times.Air.At(0)), scope.Trace);
        var (earliest, expected) = (times.Earliest(), times.Expected());
        var latest = GelAge.Along(kinetics.Latest, path.BeforeGel, kinetics.Ceiling, 1);
        GelBand? band = isMix ? inCup
            : expected.TimeOf(1) is { } at ? new(earliest.TimeOf(1) ?? at, at, latest.TimeOf(1) ?? at) : null;
        if (seen is not { Seconds: var seconds })
        {
            WriteOpen(scope, times);
            return new(band, null, null);
        }

        var family = GelFamily.Of(scope.Book.Curing);
        var age = isMix ? seen.MiddleS / inCup.LatestS : Release.AgeSeen(kinetics, path, seen) ?? 1;
        var isFamily = family.Holds(seconds, seen.StillSoftS is not null, age, isMix ? inCup.EarliestS : earliest.TimeOf(1));
        var judged = new Judged(Measure.Duration(seconds), band is { } known ? Limit.Of(Measure.Duration(known.ExpectedS)) : null);
        if (!isFamily)
        {
            scope.Find(CompoundFindings.GelOutOfFamily, AuditPointers.Time("gelAt"), judged, [AuditPointers.SheetGelTimes],
                words: new FindingWord("end", input.End ?? "The end"));
        }

        scope.Judge("gel", isFamily ? null : Severity.Caution, CompoundFindings.GelOutOfFamily, CureDayChecks.Basis(scope).Gaps, judged);
        var ratio = isMix ? seconds / inCup.ExpectedS : expected.At(seconds);
        return new(band, seconds, ratio > 0 ? ratio : null);
    }

    /// <summary>
    /// No gel is told of, or one that the recorded air doesn't reach, or one before the mixing, which the order of times finds.
    /// </summary>
    private static void WriteOpen(AuditScope scope, UniformTimes times)
    {
        var input = scope.Input;
        var asked = CureDayChecks.Basis(scope).Time(input.Times.GelAt, "gelAt", "when the compound was seen gelled");
        if (scope.IsOpen("gel", CompoundFindings.GelOutOfFamily, asked.Gaps))
        {
            return;
        }

        var isBeyond = (input.Times.GelAt - input.Times.MixedAt)?.TotalSeconds > times.Air.EndS;
        if (isBeyond)
        {
            scope.Find(AuditFindings.CureNotFollowed, AuditPointers.AirSeries);
        }

        scope.Write("gel", CheckOutcome.Undetermined, CompoundFindings.GelOutOfFamily,
            missing: [isBeyond ? AuditPointers.AirSeries : AuditPointers.Time("gelAt")]);
    }
}
