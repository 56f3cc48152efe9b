using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Audits;

/// <summary>The gel that was seen, beside the one to be expected.</summary>
internal static class GelCheck
{
    public static AuditedGel Check(AuditScope scope, CureKinetics kinetics, UniformTimes times)
    {
        var input = scope.Input;
        double? seen = input.Times is { MixedAt: { } mixed, GelAt: { } gelled } && gelled > mixed ? (gelled - mixed).TotalSeconds : null;
        var isCup = input.GelSeenIn == GelPlace.Cup;
        var pointer = AuditPointers.GelSeenIn;
        if (isCup)
        {
            scope.Find(CompoundFindings.GelSeenInCup, pointer, related: [AuditPointers.Time("gelAt")]);
        }
        else if (input.GelSeenIn == GelPlace.Unknown)
        {
            scope.Find(CompoundFindings.GelPlaceUnknown, pointer, related: [AuditPointers.Time("gelAt")]);
        }

        var inCup = kinetics.Model.At(Math.Max(input.Readings.CompoundK ?? 0, times.Air.At(0)), scope.Trace);
        var (earliest, expected, latest) = (times.Earliest(), times.Expected(), times.Latest());
        GelBand? band = isCup ? inCup
            : UniformTimes.GelOf(expected) is { } at ? new(UniformTimes.GelOf(earliest) ?? at, at, UniformTimes.GelOf(latest) ?? at) : null;
        if (seen is not { } seconds)
        {
            var asked = CureDayChecks.Basis(scope).Time(input.Times.GelAt, "gelAt", "when the compound was seen gelled");
            if (!scope.IsOpen("gel", CompoundFindings.GelOutOfFamily, asked.Gaps))
            {
                // A gel before the mixing is a slip of the pen, which the order of times finds.
                scope.Write("gel", CheckOutcome.Undetermined, CompoundFindings.GelOutOfFamily, missing: [AuditPointers.Time("gelAt")]);
            }

            return new(band, null, null);
        }

        if (!isCup && seconds > times.Air.EndS)
        {
            scope.Find(AuditFindings.CureNotFollowed, AuditPointers.AirSeries);
            scope.Write("gel", CheckOutcome.Undetermined, CompoundFindings.GelOutOfFamily, Measure.Duration(seconds), missing: [AuditPointers.AirSeries]);
            return new(band, seconds, null);
        }

        var ratio = isCup ? seconds / inCup.ExpectedS : expected.At(seconds);
        // What the readings leave open is no reason to doubt the lot.
        var (soonest, slowest) = isCup ? (seconds / inCup.EarliestS, seconds / inCup.LatestS) : (earliest.At(seconds), latest.At(seconds));
        var strays = slowest > 1 ? Math.Log(slowest) : soonest < 1 ? Math.Log(soonest) : 0;
        var isFamily = GelFamily.Of(scope.Book.Curing).Contains(strays);
        Measure? limit = band is { } known ? Measure.Duration(known.ExpectedS) : null;
        if (!isFamily)
        {
            scope.Find(CompoundFindings.GelOutOfFamily, AuditPointers.Time("gelAt"), Measure.Duration(seconds), limit, [AuditPointers.SheetGelTimes],
                words: new FindingWord("end", input.End ?? "The end"));
        }

        scope.Judge("gel", !isFamily, CompoundFindings.GelOutOfFamily, CureDayChecks.Basis(scope).Gaps, Measure.Duration(seconds), limit);
        return new(band, seconds, ratio > 0 ? ratio : null);
    }
}
