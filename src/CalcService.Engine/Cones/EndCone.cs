using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Cones;

/// <summary>The cone of one end, from its sizes and its compound's sheet; what neither says the rules fill in, and it is said.</summary>
internal sealed record EndCone(CalculationScope Scope, MatchingRules Rules, CuredCompound Cured, Basket Basket, double? WireAreaM2)
{
    private const string Sheet = "/compound/sheet/cured";

    /// <summary>Where a property of the cured compound is asked for.</summary>
    public Func<string, string> CuredAt { get; init; } = member => $"{Sheet}/{member}";

    public double? OuterAtSmallEndM { get; init; }

    public double? OuterAtMouthM { get; init; }

    /// <summary>Said where the thickness of the wall is taken from the rules.</summary>
    public FindingDefinition? WallAssumed { get; init; }

    /// <summary>The member that the computation lacks, and why; null where nothing is lacking.</summary>
    public (string Pointer, string Why)? Lacks =>
        Cured is not { ModulusPa: not null, PoissonRatio: not null } || (Cured.ShrinkageAfterGel ?? Cured.VolumetricShrinkage) is null
            ? (Sheet, "the sheet lacks modulus, Poisson's ratio or shrinkage of the cured compound")
            : WireAreaM2 is not { } area || area >= Math.PI / 4 * Basket.SmallEndDiameterM * Basket.SmallEndDiameterM
                ? ("/rope/metallicArea", "the metallic area of the rope is not known, or does not go into the small end")
                : null;

    /// <summary>Shrinkage of the compound after it has gelled: the sheet's, or a share of the whole.</summary>
    public double ShrinkageAfterGel()
    {
        var afterGel = Cured.ShrinkageAfterGel ?? (Cured.VolumetricShrinkage!.Value * Rules.ShrinkageShare.Si);
        if (Cured.ShrinkageAfterGel is null)
        {
            Scope.Assume(CuredAt("shrinkageAfterGel"), Rules.ShrinkageShare.Text, Measure.Fraction(afterGel), AssumptionOrigin.RuleSet);
        }

        return afterGel;
    }

    /// <summary>
    /// The cone as it is to be expected, for every calculation that asks what load transfer does to the socket. Only where nothing is
    /// lacking.
    /// </summary>
    /// <param name="friction">Friction, where the request gives it.</param>
    /// <param name="frictionAt">The member that would give it.</param>
    /// <param name="coolingK">Cooling from the peak.</param>
    public Cone Expected(double? friction, string frictionAt, double coolingK = 0)
    {
        var rule = Rules.Friction.Expected;
        if (friction is null)
        {
            Scope.Assume(frictionAt, rule);
        }

        return With(friction ?? rule.Si, ConeFormulas.Shrinkage(ShrinkageAfterGel(), Cured.ExpansionPerK ?? 0, coolingK, Scope.Trace));
    }

    /// <summary>The cone with this friction and shrinkage. Only where nothing is lacking.</summary>
    public Cone With(double friction, double shrinkage)
    {
        Scope.Assume(CuredAt("modulus"), Rules.RadialStiffening);
        return new()
        {
            Basket = Basket,
            OuterAtSmallEndM = OuterAtSmallEndM ?? Assumed("/socket/outerAtSmallEnd", Basket.SmallEndDiameterM),
            OuterAtMouthM = OuterAtMouthM ?? Assumed("/socket/outerAtMouth", Basket.LargeEndDiameterM),
            Friction = friction,
            Shrinkage = shrinkage,
            CompoundModulusPa = Cured.ModulusPa!.Value,
            RadialModulusPa = Rules.RadialStiffening.Si * Cured.ModulusPa.Value,
            PoissonRatio = Cured.PoissonRatio!.Value,
            WireAreaM2 = WireAreaM2!.Value,
        };
    }

    private double Assumed(string pointer, double boreM)
    {
        var rule = Rules.WallRatio;
        if (WallAssumed is not null)
        {
            Scope.Find(WallAssumed, pointer, rule.Value);
        }

        var outer = rule.Si * boreM;
        Scope.Assume(pointer, rule.Text, Measure.Length(outer), AssumptionOrigin.RuleSet);
        return outer;
    }
}
