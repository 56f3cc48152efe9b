using CalcService.Api.Calculations;
using CalcService.Api.Contract;

namespace CalcService.Api.Capabilities.Proof;

/// <summary>The room of proof loading: its services and its paths.</summary>
public static class ProofRoom
{
    public static void AddProof(this IServiceCollection services) => services.AddCalculation<ProofLoadEvaluationCapability>();

    public static void MapProof(this IEndpointRouteBuilder app) => app.MapCalculation<ProofLoadEvaluationCapability>(
        "evaluateProofLoad",
        "Plan or judge a proof load",
        "Before the test: the proof load, its steps, and how far the cone may be expected to seat. After it: the verdict on load, seating and what was seen. The decision follows the worst finding.",
        ProofLoadEvaluationExamples.All,
        new(
            (request, answer) => ProofLoadEvaluationSheet.Write((ProofLoadEvaluationRequest)request, (Answer<ProofLoadEvaluationResult>)answer),
            (_, answer) => ProofLoadEvaluationSheet.Picture((Answer<ProofLoadEvaluationResult>)answer)));
}
