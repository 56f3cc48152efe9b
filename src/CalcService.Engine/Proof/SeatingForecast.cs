using CalcService.Engine.Cones;
using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;

namespace CalcService.Engine.Proof;

/// <summary>How far the cone may be expected to move under a load: a band over friction and shrinkage, since neither is known well.</summary>
internal sealed class SeatingForecast
{
    private readonly ProofScope _scope;
    private readonly Cone[] _corners;

    private SeatingForecast(ProofScope scope, Cone[] corners) => (_scope, _corners) = (scope, corners);

    /// <summary>The forecast for this end; null, and said, where what it needs is missing.</summary>
    public static SeatingForecast? Of(ProofScope scope, RopeFacts rope)
    {
        var (input, rules, cured) = (scope.Input, scope.Book.Matching, scope.Input.Compound.Cured);
        if (cured is not { ModulusPa: { } modulus, PoissonRatio: { } poisson } || (cured.ShrinkageAfterGel ?? cured.VolumetricShrinkage) is null)
        {
            return Not(scope, ProofPointers.Cured, "the sheet lacks modulus, Poisson's ratio or shrinkage of the cured compound");
        }

        if (rope.MetallicAreaM2 is not { } area || area >= Math.PI / 4 * input.Basket.SmallEndDiameterM * input.Basket.SmallEndDiameterM)
        {
            return Not(scope, "/rope/metallicArea", "the metallic area of the rope is not known, or does not go into the small end");
        }

        var shrinkage = cured.ShrinkageAfterGel ?? (cured.VolumetricShrinkage!.Value * rules.ShrinkageShare.Value!.Value.Si);
        if (cured.ShrinkageAfterGel is null)
        {
            scope.Assumptions.Add(new(ProofPointers.Cured + "/shrinkageAfterGel", rules.ShrinkageShare.Text, Measure.Fraction(shrinkage), AssumptionOrigin.RuleSet));
        }

        var spread = scope.Book.Proof.ShrinkageSpread;
        scope.Assumptions.Add(new(ProofPointers.Cured + "/shrinkageAfterGel", spread.Text, spread.Value, AssumptionOrigin.RuleSet));
        if (input.Friction is null)
        {
            scope.Assumptions.Add(new(ProofPointers.Friction, rules.Friction.Low.Text, rules.Friction.Low.Value, AssumptionOrigin.RuleSet));
            scope.Assumptions.Add(new(ProofPointers.Friction, rules.Friction.High.Text, rules.Friction.High.Value, AssumptionOrigin.RuleSet));
        }

        double Wall(double? given, double boreM, string pointer)
        {
            if (given is null)
            {
                scope.Assumptions.Add(new(pointer, rules.WallRatio.Text, Measure.Length(rules.WallRatio.Value!.Value.Si * boreM), AssumptionOrigin.RuleSet));
            }

            return given ?? (rules.WallRatio.Value!.Value.Si * boreM);
        }

        var cone = new Cone
        {
            Basket = input.Basket,
            OuterAtSmallEndM = Wall(input.OuterAtSmallEndM, input.Basket.SmallEndDiameterM, ProofPointers.OuterAtSmallEnd),
            OuterAtMouthM = Wall(input.OuterAtMouthM, input.Basket.LargeEndDiameterM, ProofPointers.OuterAtMouth),
            Friction = 0,
            Shrinkage = 0,
            CompoundModulusPa = modulus,
            RadialModulusPa = rules.RadialStiffening.Value!.Value.Si * modulus,
            PoissonRatio = poisson,
            WireAreaM2 = area,
        };
        double[] frictions = input.Friction is { } known ? [known] : [rules.Friction.Low.Value!.Value.Si, rules.Friction.High.Value!.Value.Si];
        double[] shrinkages = [shrinkage * (1 - spread.Value!.Value.Si), shrinkage * (1 + spread.Value.Value.Si)];
        return new(scope, [.. frictions.SelectMany(_ => shrinkages, (friction, one) => cone with { Friction = friction, Shrinkage = one })]);
    }

    /// <summary>Low and high over the corners; null where the sizes don't belong together.</summary>
    public SeatingBand? At(double loadN)
    {
        var seats = new List<double>();
        foreach (var cone in _corners)
        {
            if (ConeLoad.Solve(cone, loadN, _scope.Budget, _scope.CancellationToken) is not { } state)
            {
                Not(_scope, "/socket/basket", "the sizes do not belong together");
                return null;
            }

            seats.Add(_scope.Input.ReadAt == SeatingPlace.SmallEnd ? state.SeatAtSmallEndM : state.SeatAtMouthM);
        }

        return new(seats.Min(), seats.Max());
    }

    private static SeatingForecast? Not(ProofScope scope, string pointer, string why)
    {
        scope.Find(ProofFindings.SeatingNotComputed, pointer, words: new Findings.FindingWord("why", why));
        return null;
    }
}
