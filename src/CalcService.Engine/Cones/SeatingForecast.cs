using CalcService.Engine.Findings;

namespace CalcService.Engine.Cones;

/// <summary>How far the cone may be expected to move.</summary>
public sealed record SeatingBand(double LowM, double HighM)
{
    /// <summary>What stands against a reading, with the end of the band that it is held against; no finding inside the band.</summary>
    internal (FindingDefinition? Against, Judged Judged) Judge(double readM) =>
        Judged.Length(readM, LowM) is { IsBelow: true } little ? (TestFindings.SeatingLittle, little)
        : Judged.Length(readM, HighM) is { IsAbove: true } much ? (TestFindings.SeatingMuch, much)
        : (null, Judged.Length(readM, LowM));
}

/// <summary>
/// How far the cone may be expected to move under a load: a band over friction and shrinkage, since neither is known well.
/// </summary>
internal sealed class SeatingForecast
{
    private readonly EndCone _end;
    private readonly SeatingPlace _readAt;
    private readonly Cone[] _corners;

    private SeatingForecast(EndCone end, SeatingPlace readAt, Cone[] corners) => (_end, _readAt, _corners) = (end, readAt, corners);

    /// <summary>The forecast for an end; null, and said, where what it needs is missing.</summary>
    /// <param name="end">The end.</param>
    /// <param name="spread">How far its shrinkage may be off.</param>
    /// <param name="readAt">Where the seating is read; the mouth where nobody says.</param>
    /// <param name="friction">Friction between cone and socket, where the request gives it.</param>
    /// <param name="frictionAt">The member that would give it.</param>
    public static SeatingForecast? Of(EndCone end, RuleNumber spread, SeatingPlace readAt, double? friction, string frictionAt)
    {
        var (scope, rules) = (end.Scope, end.Rules);
        if (end.Lacks is (var pointer, var why))
        {
            return Not(scope, pointer, why);
        }

        var shrinkage = end.ShrinkageAfterGel();
        scope.Assume("/compound/sheet/cured/shrinkageAfterGel", spread);
        var cone = end.With(friction: 0, shrinkage: 0);
        double[] frictions = friction is { } known ? [known] : [Assumed(rules.Friction.Low), Assumed(rules.Friction.High)];
        double[] shrinkages = [shrinkage * (1 - spread.Si), shrinkage * (1 + spread.Si)];
        return new(end, readAt,
            [.. frictions.SelectMany(_ => shrinkages, (one, other) => cone with { Friction = one, Shrinkage = other })]);

        double Assumed(RuleNumber rule)
        {
            scope.Assume(frictionAt, rule);
            return rule.Si;
        }
    }

    /// <summary>Low and high over the corners; null, and said, where the sizes don't belong together.</summary>
    public SeatingBand? At(double loadN, CancellationToken cancellationToken)
    {
        var seats = new List<double>();
        foreach (var cone in _corners)
        {
            if (ConeLoad.Solve(cone, loadN, _end.Scope.Budget, cancellationToken) is not { } state)
            {
                Not(_end.Scope, "/socket/basket", "the sizes do not belong together");
                return null;
            }

            seats.Add(_readAt == SeatingPlace.SmallEnd ? state.SeatAtSmallEndM : state.SeatAtMouthM);
        }

        return new(seats.Min(), seats.Max());
    }

    private static SeatingForecast? Not(CalculationScope scope, string pointer, string why)
    {
        scope.Find(TestFindings.SeatingNotComputed, pointer, words: new FindingWord("why", why));
        return null;
    }
}
