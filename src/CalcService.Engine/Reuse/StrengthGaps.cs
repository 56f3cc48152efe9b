using CalcService.Engine.Findings;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Reuse;

/// <summary>What a part's strength can't be computed without.</summary>
internal static class StrengthGaps
{
    /// <summary>Members of the drawing and of the measurement that each part needs.</summary>
    private static readonly Dictionary<string, (string[] Drawn, string[] Found)> Needs = new(StringComparer.Ordinal)
    {
        ["ear-bearing"] = (["earThickness", "pinDiameter"], ["earThickness", "pinDiameter", "pitDepth"]),
        ["ear-net-section"] = (["earThickness", "earWidth", "pinHoleDiameter"], ["earThickness", "pinHoleDiameters", "pitDepth"]),
        ["ear-shear-out"] = (["earThickness", "earEndDistance", "pinHoleDiameter"], ["earThickness", "pinHoleDiameters", "pitDepth"]),
        ["ear-block"] = (["earThickness", "earEndDistance", "earWidth", "pinHoleDiameter"],
            ["earThickness", "pinHoleDiameters", "pitDepth"]),
        ["pin-shear"] = (["pinDiameter"], ["pinDiameter"]),
        ["pin-bending"] = (["pinDiameter", "earThickness", "earGap"], ["pinDiameter", "earGap"]),
        ["basket-hoop"] = (["outerDiameter"], ["outerDiameter", "stations", "pitDepth"]),
    };

    private static readonly Dictionary<string, string> Names = new(StringComparer.Ordinal)
    {
        ["earThickness"] = "thickness of the ears", ["pinDiameter"] = "diameter of the pin",
            ["earWidth"] = "width of the ears beside the hole",
        ["pinHoleDiameter"] = "pin hole", ["pinHoleDiameters"] = "diameters of the pin hole",
            ["earEndDistance"] = "distance from the hole's centre to the end of the ear",
        ["earGap"] = "gap between the ears", ["outerDiameter"] = "outside of the basket", ["stations"] = "bore of the basket",
            ["pitDepth"] = "depth of the deepest pit, 0 where there is none",
    };

    public static IReadOnlyList<Gap> Of(ReuseScope scope, string id)
    {
        var socket = scope.Socket;
        List<Gap> gaps = [.. HistoryChecks.SteelGaps(socket)];
        if (socket.RatedLoadN is null && scope.Input.Intended.RatedLoadN is null)
        {
            gaps.Add(new(LoadFindings.RatedLoadMissing, ReusePointers.RatedLoad, ""));
        }

        gaps.AddRange(Needs[id].Drawn.Where(member => !IsDrawn(socket.Nominal, member))
            .Select(member => new Gap(ReuseFindings.DrawingMissing, ReusePointers.Nominal(member), Names[member])));
        gaps.AddRange(Needs[id].Found.Where(member => !IsFound(socket.Measured, member))
            .Select(member => new Gap(ReuseFindings.MeasurementMissing, ReusePointers.Measured(member), Names[member])));
        if (id == "basket-hoop" && gaps.Count == 0)
        {
            gaps.Add(new(ReuseFindings.DrawingMissing, ReusePointers.Nominal("basket"), "sizes of a basket that belong together"));
        }

        return gaps;
    }

    /// <summary>The measured size that a part's strength hangs on first.</summary>
    public static string PointerOf(string id) => ReusePointers.Measured(Needs[id].Found[0]);

    private static bool IsDrawn(NominalSizes drawn, string member) => member switch
    {
        "earThickness" => drawn.EarThicknessM is not null,
        "pinDiameter" => drawn.PinDiameterM is not null,
        "earWidth" => drawn.EarWidthM is not null,
        "pinHoleDiameter" => drawn.PinHoleDiameterM is not null,
        "earEndDistance" => drawn.EarEndDistanceM is not null,
        "earGap" => drawn.EarGapM is not null,
        _ => drawn is { OuterAtSmallEndM: not null, OuterAtMouthM: not null },
    };

    private static bool IsFound(MeasuredSizes found, string member) => member switch
    {
        "earThickness" => found.EarThicknessM is not null,
        "pinDiameter" => found.PinDiameterM is not null,
        "pinHoleDiameters" => found.PinHoleDiametersM.Count > 0,
        "earGap" => found.EarGapM is not null,
        "stations" => found.Stations.Any(station => station.DiametersM.Count > 0),
        "pitDepth" => found.PitDepthM is not null,
        _ => found is { OuterAtSmallEndM: not null, OuterAtMouthM: not null },
    };
}
