using CalcService.Engine.Findings;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Proof;

/// <summary>What the steps of one evaluation share: the question and the rules.</summary>
internal sealed record ProofScope(ProofInput Input, RuleBook Book, Budget Budget, CancellationToken CancellationToken) : CheckScope(Budget);

/// <summary>Names of the members that findings of an evaluation point to.</summary>
internal static class ProofPointers
{
    public const string RuleSet = "/ruleSet";
    public const string Cured = "/compound/sheet/cured";
    public const string Certificate = "/rope/certificate/breakingForce";
    public const string ProofRating = "/socket/proofRating";
    public const string OuterAtSmallEnd = "/socket/outerAtSmallEnd";
    public const string OuterAtMouth = "/socket/outerAtMouth";
    public const string RatedLoad = "/test/ratedLoad";
    public const string ProofLoad = "/test/proofLoad";
    public const string ProofLoadFrom = "/test/proofLoadFrom";
    public const string Zone = "/test/exclusionZone";
    public const string Friction = "/test/friction";
    public const string ReadAt = "/test/seatingReadAt";
    public const string UnderLoad = "/test/readUnderLoad";
    public const string Steps = "/measured/steps";
    public const string Slip = "/measured/wireSlip";
    public const string Cracks = "/measured/cracks";
    public const string Asymmetry = "/measured/asymmetry";
    public const string Creep = "/measured/creepUnderHold";
}
