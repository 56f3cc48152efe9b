using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Compounds;

/// <summary>Readings against the pouring range of the sheet, the same in every calculation.</summary>
internal static class PouringRange
{
    private const string Range = "/compound/sheet/pouring";

    /// <summary>
    /// Whether all readings lie in the range; a stop where they are too cold, another where they are too warm. True too where the sheet has
    /// none.
    /// </summary>
    public static bool CheckPouringRange(this CalculationScope scope, CompoundSheet sheet, params IReadOnlyList<Reading> readings)
    {
        if (sheet.Pouring is not { } range)
        {
            return true;
        }

        var isInside = true;
        foreach (var outside in OutsideRange.Of(readings, range))
        {
            isInside = false;
            scope.Find(CompoundFindings.OutsidePouringRange, outside.Farthest.Pointer, outside.Judged,
                [.. outside.Others, Range], words:
                [
                    new("reading", outside.Farthest.Name), new("minimum", Measure.Temperature(range.MinimumK)),
                        new("maximum", Measure.Temperature(range.MaximumK)),
                ]);
        }

        return isInside;
    }
}
