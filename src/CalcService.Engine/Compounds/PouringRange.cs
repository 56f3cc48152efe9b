using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Compounds;

/// <summary>Readings against the pouring range of the sheet, the same in every room.</summary>
internal static class PouringRange
{
    private const string Range = "/compound/sheet/pouring";

    /// <summary>Whether a reading lies in the range; a stop where it doesn't. True too where the sheet has none.</summary>
    public static bool CheckPouringRange(this RoomScope scope, CompoundSheet sheet, string reading, double kelvins, string pointer)
    {
        if (sheet.Pouring is not { } range || range.Contains(kelvins))
        {
            return true;
        }

        var (minimum, maximum) = (Measure.Temperature(range.MinimumK), Measure.Temperature(range.MaximumK));
        scope.Find(CompoundFindings.OutsidePouringRange, pointer, Measure.Temperature(kelvins), kelvins < range.MinimumK ? minimum : maximum,
            [Range], words: [new("reading", reading), new("minimum", minimum), new("maximum", maximum)]);
        return false;
    }
}
