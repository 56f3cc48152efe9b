using CalcService.Api.Sheets;
using CalcService.Api.Units;

namespace CalcService.Api.Capabilities.Matching;

/// <summary>What the picture of a match shows, from its request and result.</summary>
internal static class ConeDrawings
{
    /// <summary>Only for the drawing, where nobody measured the outside.</summary>
    private const double AssumedWall = 1.6;

    public static ConeDrawing Of(TerminationMatchRequest request, TerminationMatchResult result)
    {
        var (socket, basket) = (request.Socket, request.Socket.Basket);
        var (outerSmall, outerMouth) = (socket.OuterAtSmallEnd ?? socket.OuterDiameter, socket.OuterAtMouth ?? socket.OuterDiameter);
        var cases = result.LoadTransfer?.Cases ?? [];
        return new(
            request.Rope.Diameter, basket.SmallEndDiameter, basket.LargeEndDiameter, basket.Length,
            outerSmall?.Si ?? (basket.SmallEndDiameter.Si * AssumedWall), outerMouth?.Si ?? (basket.LargeEndDiameter.Si * AssumedWall),
            outerSmall is null || outerMouth is null,
            // At the breaking force the confined compound yields at the lip: drawn, it would dwarf the loads in service.
            [.. cases.Where((one, i) => i == 0 || one.Case == "proofLoad").Select(Curve)],
            cases.Count > 0 && cases[0].CompoundUtilisation is { Si: > 0 } used ? cases[0].LipPressure.Si / used.Si : null,
            Says(cases));
    }

    private static ConeCurve Curve(LoadedCone one) => new(
        TerminationMatchSheet.NameOf(one.Case),
        one.Load,
        [one.Shares.Lower, one.Shares.Middle, one.Shares.Upper],
        one.ContactTo,
        [.. one.Profile.Select(place => new ConePoint(place.FromSmallEnd.Si, place.Pressure, place.ForceLeft.Si / one.Load.Si))]);

    private static List<string> Says(IReadOnlyList<LoadedCone> cases)
    {
        if (cases.Count == 0)
        {
            return ["How the cone hands its load over is not computed: see what was found."];
        }

        string Text(Quantity? quantity) => SheetText.Or(quantity);
        var first = cases[0];
        return
        [
            "The rope pulls the cone down into the taper. The wall pushes back, hardest at the small end, and takes the load over from "
                + "the wires bit by bit.",
            $"At the {TerminationMatchSheet.NameOf(first.Case)} the cone has moved {Text(first.SeatingAtMouth)} at the mouth and bears "
                + $"from the small end up to {Text(first.ContactTo)}.",
            $"Over the first 5 mm it presses {Text(first.LipPressure)}, {Text(first.CompoundUtilisation)} of the compound's strength "
                + $"(finite elements' factor for the edge counted in; the curve is without it).",
            "A model, held against other models and not against pull tests. It guides; it proves nothing.",
        ];
    }
}
