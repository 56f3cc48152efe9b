using CalcService.Engine.Findings;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Cones;

/// <summary>What a test load has to lie between to count.</summary>
/// <param name="LeastN">Least that counts.</param>
/// <param name="MostN">Most that is meant.</param>
internal readonly record struct TestLoads(double LeastN, double MostN)
{
    public static TestLoads Of(double proofN, ProofRules rules) => new(proofN * (1 - rules.Under.Si), proofN * (1 + rules.Over.Si));

    /// <summary>What stands against a load, with the limit that it is held against; no finding where it counts.</summary>
    public (FindingDefinition? Against, double LimitN) Judge(double loadN) =>
        Judged.IsBelow(loadN, LeastN) ? (TestFindings.TestLoadShort, LeastN)
        : Judged.IsAbove(loadN, MostN) ? (TestFindings.TestLoadOver, MostN)
        : (null, LeastN);
}
