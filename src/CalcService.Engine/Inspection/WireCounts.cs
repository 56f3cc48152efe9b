using CalcService.Engine.Findings;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Inspection;

/// <summary>How many broken wires lie in one window: at least and at most, since places, lay length and strands may not be known.</summary>
/// <param name="Low">As many as are certain to lie together.</param>
/// <param name="High">As many as may.</param>
public readonly record struct WireCount(int Low, int High)
{
    /// <param name="wires">Wires found broken.</param>
    /// <param name="window">Over what they are counted.</param>
    /// <param name="diameterM">Diameter of the rope.</param>
    /// <param name="layM">Its length of lay; null where it isn't known.</param>
    public static WireCount Of(IReadOnlyList<BrokenWires> wires, WireWindow window, double diameterM, double? layM)
    {
        var (least, most) = window switch
        {
            WireWindow.SixDiameters => (6 * diameterM, 6 * diameterM),
            WireWindow.ThirtyDiameters => (30 * diameterM, 30 * diameterM),
            _ => (layM ?? 0, layM ?? double.PositiveInfinity),
        };
        return window switch
        {
            WireWindow.EndLay => new(
                Sum(wires, one => one.Place == WirePlace.Mouth || (PlaceM(one) is { } at && !Judged.Length(at, least).IsAbove)),
                Sum(wires, one => one.Place == WirePlace.Mouth || PlaceM(one) is not { } at || !Judged.Length(at, most).IsAbove)),
            WireWindow.Valley => Together([.. wires.Where(one => one.Place == WirePlace.Valley)],
                [.. wires.Where(one => one.Place is WirePlace.Valley or WirePlace.Unknown)], least, most),
            WireWindow.LayBeyondEnds => Together([.. wires.Where(one => one.Place is not (WirePlace.Mouth or WirePlace.Unknown))],
                [.. wires.Where(one => one.Place != WirePlace.Mouth)], least, most),
            WireWindow.Strand => new(
                wires.Select(one => one.InOneStrand ?? Math.Min(1, one.Count)).DefaultIfEmpty().Max(),
                Together([], [.. wires.Select(one => one with { Count = one.InOneStrand ?? one.Count })], least, most).High),
            _ => Together(wires, wires, least, most),
        };
    }

    /// <summary>Where wires are broken: at the mouth, or where the request says.</summary>
    public static double? PlaceM(BrokenWires wires) => wires.FromMouthM ?? (wires.Place == WirePlace.Mouth ? 0 : null);

    private static WireCount Together(IReadOnlyList<BrokenWires> certain, IReadOnlyList<BrokenWires> possible, double least, double most) =>
        new(Math.Max(Densest(certain, least), certain.Select(one => one.Count).DefaultIfEmpty().Max()),
            Densest(possible, most) + Sum(possible, one => PlaceM(one) is null));

    /// <summary>Most wires of known place in any stretch of this length.</summary>
    private static int Densest(IReadOnlyList<BrokenWires> wires, double lengthM) =>
        wires.Select(PlaceM).OfType<double>().Select(from => Sum(wires, one => PlaceM(one) is { } at && at >= from
            && !Judged.Length(at - from, lengthM).IsAbove)).DefaultIfEmpty().Max();

    private static int Sum(IEnumerable<BrokenWires> wires, Func<BrokenWires, bool> isIn) => wires.Where(isIn).Sum(one => one.Count);
}
