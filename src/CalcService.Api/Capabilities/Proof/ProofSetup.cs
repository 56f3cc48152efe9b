using CalcService.Api.Calculations;
using CalcService.Api.Contract;
using CalcService.Engine.Proof;

namespace CalcService.Api.Capabilities.Proof;

/// <summary>Proof loads: its services and its paths.</summary>
public static class ProofSetup
{
    private const string Operation = "proof-load-evaluations";

    public static void AddProof(this IServiceCollection services) =>
        services.AddCalculation<ProofLoadEvaluationRequest, ProofLoadEvaluationResult, ProofResult>(
            Operation,
            (asked, budget, cancellationToken) =>
                ProofLoadEvaluation.Calculate(ProofLoadEvaluationMapping.ToEngine(asked.Request, asked.Sheet),
                    asked.Rules, budget, cancellationToken),
            (_, result, units) => ProofLoadEvaluationMapping.ToContract(result, units));

    public static void MapProof(this IEndpointRouteBuilder app) => app.MapCalculation(
        Operation,
        "evaluateProofLoad",
        "Plan or judge a proof load",
        "Before the test: the proof load, its steps, and how far the cone may be expected to seat. After it: the verdict on load, seating "
            + "and what was seen. The decision follows the worst finding.",
        new(
            (request, answer) =>
            ProofLoadEvaluationSheet.Write((ProofLoadEvaluationRequest)request, (Answer<ProofLoadEvaluationResult>)answer),
            (_, answer) => ProofLoadEvaluationSheet.Picture((Answer<ProofLoadEvaluationResult>)answer)));
}
