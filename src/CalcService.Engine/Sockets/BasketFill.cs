using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;

namespace CalcService.Engine.Sockets;

/// <summary>What one basket takes. Low and high hold over the tolerance band of every measured size.</summary>
/// <param name="BasketM3">Gross volume.</param>
/// <param name="SteelM3">Metal of the broom; null where the rope's area isn't known.</param>
/// <param name="LowM3">Least resin: the smallest basket with the most metal.</param>
/// <param name="NominalM3">Resin at the sizes as given.</param>
/// <param name="HighM3">Most resin: the largest basket; without an area no metal is counted on. Kits are planned on this. Each is null
/// where the steel leaves no room.</param>
public sealed record BasketFill(double BasketM3, double? SteelM3, double? LowM3, double? NominalM3, double? HighM3)
{
    /// <param name="basket">The basket.</param>
    /// <param name="rope">The rope in it.</param>
    /// <param name="belowMouthM">How far the ends of the wires stay below the mouth.</param>
    /// <param name="trace">Takes the formulas.</param>
    public static BasketFill Of(Basket basket, RopeFacts rope, double belowMouthM, Trace trace)
    {
        var gross = Gross(basket, trace);
        var largest = basket.GrownBy(basket.ToleranceM);
        if (rope.MetallicAreaM2 is not { } area)
        {
            return new(gross, null, null, null, Gross(largest, trace));
        }

        var smallest = basket.GrownBy(-basket.ToleranceM);
        var steel = Steel(basket, area, belowMouthM, trace);
        // The mass bounds the metal for wires up to the mouth, wherever they end.
        var mostSteel = rope.MassKgPerM is { } mass
            ? Math.Max(Broom.SteelVolumeByMassM3(mass, smallest.LengthM, trace), Steel(smallest, area, belowMouthM, trace))
            : Steel(smallest, area, belowMouthM, trace);
        return new(
            gross,
            steel,
            IfAny(Resin(Gross(smallest, trace), mostSteel, trace)),
            IfAny(Resin(gross, steel, trace)),
            IfAny(Resin(Gross(largest, trace), Steel(largest, area, belowMouthM, trace), trace)));
    }

    /// <summary>V_r = V − V_s; in m³.</summary>
    [Formula("resin-volume", "what the basket holds besides the steel", "/docs/pour-plans", Basis.Derived, Symbol = "V_r",
        Name = "resin in one basket",
        Expression = "V − V_s", Kind = QuantityKind.Volume, Range = "basket filled to the mouth")]
    public static double Resin(double basketM3, double steelM3, Trace trace) =>
        trace.Step("resin-volume", basketM3 - steelM3, new("V", Measure.Volume(basketM3)), new("V_s", Measure.Volume(steelM3)));

    /// <summary>Where the steel takes it all there is no volume of resin, rather than one of 0.</summary>
    private static double? IfAny(double resinM3) => resinM3 > 0 ? resinM3 : null;

    private static double Gross(Basket basket, Trace trace) =>
        Basket.VolumeM3(basket.SmallEndDiameterM, basket.LargeEndDiameterM, basket.LengthM, trace);

    private static double Steel(Basket basket, double area, double belowMouthM, Trace trace) =>
        Broom.SteelVolumeM3(area, Math.Max(0, basket.LengthM - belowMouthM), Broom.Obliquity(basket.Taper, trace), trace);
}
