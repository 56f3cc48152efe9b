using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Cones;

/// <summary>What a test load has to lie between to count. Every calculation that knows a proof load asks here for its limits.</summary>
/// <param name="Least">Least that counts.</param>
/// <param name="Most">Most that is meant.</param>
public readonly record struct TestLoads(Limit Least, Limit Most)
{
    public static TestLoads Of(double proofN, ProofRules rules) => new(rules.Under.Below(Measure.Force(proofN)),
        rules.Over.Above(Measure.Force(proofN)));

    /// <summary>What stands against a load, with the limit that it is held against; no finding where it counts, or isn't known.</summary>
    public (FindingDefinition? Against, Judged Judged) Judge(Measure? load) =>
        new Judged(load, Least) is { IsBelow: true } less ? (TestFindings.TestLoadShort, less)
        : new Judged(load, Most) is { IsAbove: true } more ? (TestFindings.TestLoadOver, more)
        : (null, new(load, Least));

    /// <summary>P = k·W: the rated load, pulled straight, times the factor of the rule set; in N.</summary>
    [Formula("required-proof-load", "NAVEDTRA 14080", "chapter 3, proof testing slings", Basis.Published, Symbol = "P",
        Name = "required proof load",
        Expression = "k·W", Kind = QuantityKind.Force, Range = "one leg, pulled straight")]
    public static double RequiredN(double ratedLoadN, double factor, Trace trace) =>
        trace.Step("required-proof-load", factor * ratedLoadN, new("k", Measure.Count(factor)), new("W", Measure.Force(ratedLoadN)));

    /// <summary>
    /// What stands against a proof load, meant or read, on a rope with this breaking force: found in the same words in every calculation. A
    /// rope may break at its breaking force, so that much is too much.
    /// </summary>
    internal static (FindingDefinition? Against, Judged Judged) CheckRope(CalculationScope scope, double loadN, double breakingN,
        MatchingRules rules, string pointer, string breakingAt)
    {
        var share = new Judged(Measure.Force(loadN), rules.ProofShare.Times(Measure.Force(breakingN)));
        var (against, judged) = Judged.Force(loadN, breakingN) is { IsBelow: false } breaks ? (LoadFindings.ProofBreaks, breaks)
            : (share.IsAbove ? LoadFindings.ProofAboveShare : null, share);
        if (against is not null)
        {
            scope.Find(against, pointer, judged, [breakingAt], words: new FindingWord("excess", judged.Excess));
        }

        return (against, judged);
    }
}
