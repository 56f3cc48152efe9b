using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Cones;

/// <summary>What a test load has to lie between to count. Every room that knows a proof load asks here for its limits.</summary>
/// <param name="LeastN">Least that counts.</param>
/// <param name="MostN">Most that is meant.</param>
public readonly record struct TestLoads(double LeastN, double MostN)
{
    public static TestLoads Of(double proofN, ProofRules rules) => new(proofN * (1 - rules.Under.Si), proofN * (1 + rules.Over.Si));

    /// <summary>What stands against a load, with the limit that it is held against; no finding where it counts.</summary>
    public (FindingDefinition? Against, double LimitN) Judge(double loadN) =>
        Judged.IsBelow(loadN, LeastN) ? (TestFindings.TestLoadShort, LeastN)
        : Judged.IsAbove(loadN, MostN) ? (TestFindings.TestLoadOver, MostN)
        : (null, LeastN);

    /// <summary>P = k·W: the rated load, pulled straight, times the factor of the rule set; in N.</summary>
    [Formula("required-proof-load", "NAVEDTRA 14080", "chapter 3, proof testing slings", Basis.Published, Symbol = "P", Name = "required proof load",
        Expression = "k·W", Kind = QuantityKind.Force, Range = "one leg, pulled straight")]
    public static double RequiredN(double ratedLoadN, double factor, Trace trace) =>
        trace.Step("required-proof-load", factor * ratedLoadN, new("k", Measure.Count(factor)), new("W", Measure.Force(ratedLoadN)));

    /// <summary>What stands against a proof load that is meant where a rule asks for at least so much.</summary>
    internal static FindingDefinition? AgainstRule(double loadN, double requiredN) => Judged.IsBelow(loadN, requiredN) ? LoadFindings.ProofBelowRule : null;

    /// <summary>What stands against a proof load below the rated load, where no rule set says how much it has to be.</summary>
    internal static FindingDefinition? AgainstRated(double loadN, double? ratedN) =>
        ratedN is { } rated && Judged.IsBelow(loadN, rated) ? LoadFindings.ProofBelowRated : null;

    /// <summary>What stands against a proof load, meant or read, in a socket with this rating.</summary>
    internal static FindingDefinition? AgainstRating(double loadN, double ratingN) =>
        Judged.IsAbove(loadN, ratingN) ? LoadFindings.ProofAboveRating : null;

    /// <summary>
    /// What stands against a proof load, meant or read, on a rope with this breaking force: found in the same words in every room. A rope may
    /// break at its breaking force, so that much is too much.
    /// </summary>
    internal static FindingDefinition? CheckRope(RoomScope scope, double loadN, double breakingN, MatchingRules rules, string pointer, string breakingAt)
    {
        var shareN = ShareN(breakingN, rules);
        (FindingDefinition Against, double LimitN)? found = !Judged.IsBelow(loadN, breakingN) ? (LoadFindings.ProofBreaks, breakingN)
            : Judged.IsAbove(loadN, shareN) ? (LoadFindings.ProofAboveShare, shareN)
            : null;
        if (found is var (against, limitN))
        {
            scope.Find(against, pointer, Measure.Force(loadN), Measure.Force(limitN), [breakingAt], words: new FindingWord("excess", Measure.Force(loadN - limitN)));
        }

        return found?.Against;
    }

    /// <summary>The share of the rope's breaking force that a proof load is meant to keep within.</summary>
    internal static double ShareN(double breakingN, MatchingRules rules) => rules.ProofShare.Si * breakingN;
}
