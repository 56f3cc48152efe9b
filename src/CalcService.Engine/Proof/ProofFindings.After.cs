using CalcService.Engine.Cones;
using CalcService.Engine.Findings;
using static CalcService.Engine.Findings.FindingKinds;

namespace CalcService.Engine.Proof;

/// <content>Findings of the test.</content>
public static partial class ProofFindings
{
    private static IReadOnlyList<FindingDefinition> After => [SeatedAskew];

    public static FindingDefinition SeatedAskew { get; } = Stop("seated-askew", Actor.Lead,
        "The cone seated on one side: wires there carry more than their share.", "The cone did not seat straight.", TestFindings.Out, TestFindings.LetsGo);
}
