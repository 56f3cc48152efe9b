using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Reuse;

/// <summary>
/// How much of the drawing's metal is left where it bears. Below half of it what the maker says of the socket, its rated load, its
/// proof rating, its breaking force, is said of another one, whatever limits a request states and however little it is to carry.
/// </summary>
internal static class MetalLeftChecks
{
    private const string Id = "metal-left";

    public static void Check(ReuseScope scope, WearFacts wear)
    {
        var rule = ReuseFindings.HalfWornAway;
        Judged Hold(double left) => scope.Rules.LeastLeft.Judge(Measure.Fraction(Math.Max(0, left)));
        // A size that nobody gave is asked for elsewhere.
        var parts = Parts(scope, wear).Where(part => double.IsFinite(part.Left)).ToArray();
        if (parts.Length == 0)
        {
            scope.Skip(Id, rule);
            return;
        }

        var worn = parts.Where(part => Hold(part.Left).IsBelow).ToArray();
        foreach (var (pointer, what, left) in worn)
        {
            scope.Find(rule, pointer, Hold(left), words: new FindingWord("what", what));
        }

        scope.Write(Id, worn.Length > 0 ? CheckOutcome.Fail : CheckOutcome.Pass, rule, Hold(parts.Min(part => part.Left)));
    }

    private static IEnumerable<(string Pointer, string What, double Left)> Parts(ReuseScope scope, WearFacts wear)
    {
        var made = StrengthSizes.AsMade(scope.Socket);
        var found = StrengthSizes.AsMeasured(AsFarAsMeasured(scope.Socket), AsFarAsMeasured(wear));
        if (scope.HasEars)
        {
            yield return (ReusePointers.Measured("earThickness"), "thickness of the ears", found.ThicknessM / made.ThicknessM);
            yield return (ReusePointers.Measured("pinHoleDiameters"), "width of the ears beside the hole",
                found.BesideHoleM / made.BesideHoleM);
            yield return (ReusePointers.Measured("pinHoleDiameters"), "ears behind the hole", found.BehindHoleM / made.BehindHoleM);
        }

        var walls = made.Bores.Zip(found.Bores, (drawn, now) => found.WallM(now) / made.WallM(drawn)).Where(double.IsFinite).ToArray();
        yield return (ReusePointers.Measured("stations"), "wall of the basket", walls.Length > 0 ? walls.Min() : double.NaN);
    }

    /// <summary>What wasn't measured counts as drawn here: it is asked for elsewhere, and must not soften what was.</summary>
    private static UsedSocket AsFarAsMeasured(UsedSocket socket)
    {
        var (drawn, found) = (socket.Nominal, socket.Measured);
        return socket with
        {
            Measured = found with
            {
                OuterAtSmallEndM = found.OuterAtSmallEndM ?? drawn.OuterAtSmallEndM,
                OuterAtMouthM = found.OuterAtMouthM ?? drawn.OuterAtMouthM,
                EarThicknessM = found.EarThicknessM ?? drawn.EarThicknessM,
                PinHoleDiametersM = found.PinHoleDiametersM.Count == 0 && drawn.PinHoleDiameterM is { } hole ? [hole]
                    : found.PinHoleDiametersM,
                PitDepthM = found.PitDepthM ?? 0,
            },
        };
    }

    private static WearFacts AsFarAsMeasured(WearFacts wear) => wear.Stations.Count > 0 ? wear : new()
    {
        Stations = [new(0, 0, 0, 0, Growth: 0, Ovality: 0)],
    };
}
