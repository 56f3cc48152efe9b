using CalcService.Api.Validation;
using CalcService.Engine.Rules;
using FluentValidation;

namespace CalcService.Api.Capabilities.Proof;

/// <summary>What the request of an evaluation may be. What is wrong with test or end is a finding, not an error.</summary>
public sealed class ProofLoadEvaluationValidator : Contradictions<ProofLoadEvaluationRequest>
{
    private static readonly string[] RuleSets =
        [.. Editions.Known.Current.Matching.Duties.Select(duty => duty.DesignFactor!.RuleSet), PouringRules.General];

    protected override void Check(ProofLoadEvaluationRequest request, ValidationContext<ProofLoadEvaluationRequest> context) =>
        context.MustKnow(nameof(ProofLoadEvaluationRequest.RuleSet), request.RuleSet, RuleSets, "rule-set");
}

/// <summary>What a socket's numbers may be.</summary>
public sealed class ProofedSocketValidator : Contradictions<ProofedSocket>
{
    protected override void Check(ProofedSocket socket, ValidationContext<ProofedSocket> context)
    {
        if (socket.OuterAtSmallEnd?.Si <= socket.Basket.SmallEndDiameter.Si)
        {
            context.Contradict(nameof(ProofedSocket.OuterAtSmallEnd), "Basket.SmallEndDiameter",
                "The outside is not larger than the bore: the socket has no wall.");
        }

        if (socket.OuterAtMouth?.Si <= socket.Basket.LargeEndDiameter.Si)
        {
            context.Contradict(nameof(ProofedSocket.OuterAtMouth), "Basket.LargeEndDiameter",
                "The outside is not larger than the bore: the socket has no wall.");
        }
    }
}
