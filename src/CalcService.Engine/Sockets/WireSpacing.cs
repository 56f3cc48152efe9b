using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;

namespace CalcService.Engine.Sockets;

/// <summary>Space for the compound around the wires at one section of the basket.</summary>
/// <param name="Place">smallEnd, oneThird or mouth.</param>
/// <param name="BasketDiameterM">Bore there.</param>
/// <param name="CentresM">Distance of the wires' centres when they are spread evenly.</param>
/// <param name="ClearM">Clear gap between two wires; negative where they can't fit.</param>
public sealed record WireSpacing(string Place, double BasketDiameterM, double CentresM, double ClearM)
{
    private static readonly (string Place, double Share)[] Sections = [("smallEnd", 0), ("oneThird", 1.0 / 3), ("mouth", 1)];

    /// <summary>From the small end to the mouth; none where number or size of the wires isn't known.</summary>
    public static IReadOnlyList<WireSpacing> Of(Basket basket, RopeFacts rope, Trace trace)
    {
        if (rope.WireCount is not { } wires || rope.WireDiameterM is not { } wire)
        {
            return [];
        }

        return [.. Sections.Select(section =>
        {
            var diameter = basket.DiameterAtM(section.Share);
            var centres = Broom.WireSpacingM(diameter, wires, trace);
            return new WireSpacing(section.Place, diameter, centres, centres - wire);
        })];
    }
}
