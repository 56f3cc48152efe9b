using CalcService.Engine.Cones;
using CalcService.Engine.Findings;
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
        var (input, rules, spread) = (scope.Input, scope.Book.Matching, scope.Book.Proof.ShrinkageSpread);
        var end = new EndCone(scope, rules, input.Compound.Cured, input.Basket, rope.MetallicAreaM2) { OuterAtSmallEndM = input.OuterAtSmallEndM, OuterAtMouthM = input.OuterAtMouthM };
        if (end.Lacks is (var pointer, var why))
        {
            return Not(scope, pointer, why);
        }

        var shrinkage = end.ShrinkageAfterGel();
        scope.Assume(ProofPointers.Cured + "/shrinkageAfterGel", spread.Text, spread.Value, AssumptionOrigin.RuleSet);
        var cone = end.With(friction: 0, shrinkage: 0);
        double[] frictions = input.Friction is { } known ? [known] : [Assumed(rules.Friction.Low), Assumed(rules.Friction.High)];
        double[] shrinkages = [shrinkage * (1 - spread.Si), shrinkage * (1 + spread.Si)];
        return new(scope, [.. frictions.SelectMany(_ => shrinkages, (friction, one) => cone with { Friction = friction, Shrinkage = one })]);

        double Assumed(RuleLimit rule)
        {
            scope.Assume(ProofPointers.Friction, rule.Text, rule.Value, AssumptionOrigin.RuleSet);
            return rule.Si;
        }
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
        scope.Find(ProofFindings.SeatingNotComputed, pointer, words: new FindingWord("why", why));
        return null;
    }
}
