using CalcService.Api.Sheets;

namespace CalcService.Api.Capabilities.Reuse;

/// <summary>What the picture of a used socket shows, from its request and result.</summary>
internal static class WornBaskets
{
    /// <summary>Only for the drawing, where the drawing of the maker gives no outside.</summary>
    private const double AssumedWall = 1.6;

    public static WornBasket Of(ReuseAssessmentRequest request, ReuseAssessmentResult result)
    {
        var drawn = request.Socket.Nominal;
        var (small, mouth) = (drawn.OuterAtSmallEnd ?? drawn.OuterDiameter, drawn.OuterAtMouth ?? drawn.OuterDiameter);
        return new(
            drawn.Basket.SmallEndDiameter, drawn.Basket.LargeEndDiameter, drawn.Basket.Length,
            small?.Si ?? (drawn.Basket.SmallEndDiameter.Si * AssumedWall), mouth?.Si ?? (drawn.Basket.LargeEndDiameter.Si * AssumedWall),
            small is null || mouth is null,
            [.. result.Wear.Stations.Select(one =>
            new WornSection(one.FromSmallEnd, one.Nominal, one.Smallest, one.Largest, one.Growth, one.Ovality))],
            request.Limits?.BoreGrowth, request.Limits?.Ovality,
            Says(result));
    }

    private static List<string> Says(ReuseAssessmentResult result)
    {
        List<string> says = ["Left: the basket to scale, grey as drawn; each red line is a section as found. Right: the same sections, "
            + "growth and ovality against their limits."];
        says.Add(result.Wear.Stations.Count == 0
            ? "The bore has not been measured."
            : $"The bore has grown by {ReuseAssessmentSheet.Or(result.Wear.BoreGrowth)} where it is worn most and is out of round by "
                + $"{ReuseAssessmentSheet.Or(result.Wear.Ovality)}.");
        return says;
    }
}
