using CalcService.Engine.Cones;
using CalcService.Engine.Ropes;

namespace CalcService.Engine.Reuse;

/// <summary>
/// The cone that will press on the wall, as a match computes it for the socket as drawn. A socket outlives the compounds in it,
/// so the compound is that of the rules, and without a rope that goes in the wires take their usual share.
/// </summary>
internal static class StrengthCone
{
    private const string Pointer = "/socket/nominal/basket";

    /// <summary>The cone; null where the drawing doesn't give the wall.</summary>
    public static Cone? Of(ReuseScope scope, RopeFacts? rope)
    {
        var (drawn, compound) = (scope.Socket.Nominal, scope.Rules.Compound);
        if (drawn is not { OuterAtSmallEndM: not null, OuterAtMouthM: not null })
        {
            return null;
        }

        foreach (var limit in new[] { compound.Modulus, compound.Poisson, compound.Shrinkage })
        {
            scope.Assume(Pointer, limit);
        }

        var bore = Math.PI / 4 * drawn.Basket.SmallEndDiameterM * drawn.Basket.SmallEndDiameterM;
        var wires = rope?.MetallicAreaM2 is { } area && area < bore ? area : Usual(scope, bore);
        return new EndCone(scope, scope.Book.Matching,
            new() { ModulusPa = compound.Modulus.Si, PoissonRatio = compound.Poisson.Si, VolumetricShrinkage = compound.Shrinkage.Si },
            drawn.Basket, wires)
        {
            CuredAt = _ => Pointer,
            OuterAtSmallEndM = drawn.OuterAtSmallEndM,
            OuterAtMouthM = drawn.OuterAtMouthM,
        }.Expected(friction: null, Pointer);
    }

    private static double Usual(ReuseScope scope, double boreM2)
    {
        var rule = scope.Rules.WireShare;
        scope.Assume(ReusePointers.IntendedRope, rule);
        return rule.Si * boreM2;
    }
}
