using CalcService.Engine.Compounds;
using CalcService.Engine.Releases;

namespace CalcService.Engine.Curing;

/// <summary>The end whose compound follows the air: its gel with what governs it, and its curve.</summary>
internal static class UniformCure
{
    /// <summary>Points of a curve.</summary>
    private const int CurvePoints = 49;

    /// <param name="scope">The schedule.</param>
    /// <param name="kinetics">Gel and cure by the sheet.</param>
    /// <param name="times">Gel along the air.</param>
    /// <param name="lot">How much slower the lot is.</param>
    /// <param name="release">When it may be loaded; null where the readings aren't there.</param>
    public static EndCure Of(CureScope scope, CureKinetics kinetics, UniformTimes times, double lot, ReleaseTimes? release)
    {
        var expected = times.Expected(lot);
        var cure = new EndCure { ExpectedGelS = expected.TimeOf(1) };
        if (release is null)
        {
            return cure with { Curve = Curve(scope, kinetics, times, expected, null, times.Air.EndS) };
        }

        var earliest = times.Earliest();
        var (steel, compound) = (scope.Input.Conditions.SteelK, scope.Input.Conditions.CompoundK);
        return cure with
        {
            EarliestGelS = earliest.TimeOf(1),
            LatestGelS = release.GelS,
            GelGovernor = compound < release.Path.AfterGel.At(0) ? Governor.Compound : steel < times.Air.At(0) ? Governor.Steel
            : Governor.Air,
            Curve = Curve(scope, kinetics, times, expected, earliest, release.LoadS ?? times.Air.EndS, release),
        };
    }

    private static List<CurvePoint> Curve(CureScope scope, CureKinetics kinetics, UniformTimes times, GelAge expected, GelAge? earliest,
        double untilS, ReleaseTimes? release = null)
    {
        var latest = release is null ? null
            : GelAge.Along(kinetics.Latest.Slower(release.Slower), release.Path.BeforeGel, kinetics.Ceiling);
        var points = new List<CurvePoint>(CurvePoints);
        for (var i = 0; i < CurvePoints; i++)
        {
            var seconds = Math.Round(untilS * i / (CurvePoints - 1));
            var kelvins = times.Air.At(Math.Min(seconds, times.Air.EndS));
            var degree = kinetics.Shape.DegreeAt(expected.At(seconds));
            points.Add(new(CureClock.At(scope.Input.MixedAt, seconds), kelvins, kelvins, kelvins, degree, degree)
            {
                CureEarliest = earliest is null ? null : kinetics.Shape.DegreeAt(earliest.At(seconds)),
                CureLatest = latest is null ? null : kinetics.Shape.DegreeAt(latest.At(seconds)),
                SheetShare = release?.ShareAt(seconds),
            });
        }

        return points;
    }
}
