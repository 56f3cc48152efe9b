using CalcService.Engine.Findings;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Proof;

/// <summary>What the steps of one evaluation share: the question and the rules.</summary>
internal sealed record ProofScope(ProofInput Input, RuleBook Book, Budget Budget, CancellationToken CancellationToken)
    : CheckScope(Book, Budget)
{
    private readonly List<StatedFact> _facts = [];

    /// <summary>What was read at the test bed is work that was done, whatever the answer is for.</summary>
    public Purpose Purpose => Input.Measured is null ? Input.Purpose : Purpose.Pour;

    /// <summary>Asks for a fact behind a stop rule; where it isn't stated, its check stays open and false comes back.</summary>
    public bool Has(StatedFact fact, string checkId, FindingDefinition rule)
    {
        Ask(fact);
        if (fact.Stated != Stated.Known)
        {
            Write(checkId, CheckOutcome.Undetermined, rule, missing: [fact.Pointer]);
        }

        return fact.Stated == Stated.Known;
    }

    /// <summary>A fact whose check is written elsewhere.</summary>
    public void Ask(StatedFact fact) => _facts.Add(fact);

    /// <summary>Says in one finding which of the facts asked for nobody stated.</summary>
    public void CheckStated() => this.CheckStated(Purpose, _facts);
}

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
    public const string Hardness = "/test/hardness";
    public const string Friction = "/test/friction";
    public const string ReadAt = "/test/seatingReadAt";
    public const string UnderLoad = "/test/readUnderLoad";
    public const string Steps = "/measured/steps";
    public const string Slip = "/measured/wireSlip";
    public const string Cracks = "/measured/cracks";
    public const string Asymmetry = "/measured/asymmetry";
    public const string Creep = "/measured/creepUnderHold";
}
