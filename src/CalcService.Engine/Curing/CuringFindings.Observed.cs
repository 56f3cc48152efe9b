using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;

namespace CalcService.Engine.Curing;

/// <content>Findings of gels that somebody saw.</content>
public static partial class CuringFindings
{
    private static IReadOnlyList<FindingDefinition> Observed => [CompoundFindings.GelOutOfFamily, CompoundFindings.GelSeenInCup, CompoundFindings.GelPlaceUnknown];
}
