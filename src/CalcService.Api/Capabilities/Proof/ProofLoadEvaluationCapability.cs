using CalcService.Api.Calculations;
using CalcService.Api.Catalogues;
using CalcService.Api.Contract;
using CalcService.Api.Units;
using CalcService.Api.Writing;
using CalcService.Engine;
using CalcService.Engine.Proof;
using CalcService.Engine.Rules;
using FluentValidation;

namespace CalcService.Api.Capabilities.Proof;

/// <summary>POST /v1/proof-load-evaluations.</summary>
public sealed class ProofLoadEvaluationCapability(CompoundCatalogue compounds, IValidator<ProofLoadEvaluationRequest> validator,
    TimeProvider clock, Editions editions)
    : Capability<ProofLoadEvaluationRequest, ProofLoadEvaluationResult, ProofResult>(validator, clock, editions)
{
    public override string Operation => "proof-load-evaluations";

    protected override IKnownParts Known => compounds;

    protected override ProofLoadEvaluationRequest Resolve(ProofLoadEvaluationRequest request) =>
        request with { Units = null, Compound = new Compound { Sheet = compounds.SheetOf(request.Compound) } };

    protected override CompoundProvenance? CompoundOf(ProofLoadEvaluationRequest request) => compounds.ProvenanceOf(request.Compound);

    protected override Outcome<ProofResult> Calculate(ProofLoadEvaluationRequest request, RuleBook rules, Budget budget, CancellationToken cancellationToken) =>
        ProofLoadEvaluation.Calculate(ProofLoadEvaluationMapping.ToEngine(request, compounds.EngineSheetOf(request.Compound)), rules, budget, cancellationToken);

    protected override ProofLoadEvaluationResult ToContract(ProofLoadEvaluationRequest request, ProofResult result, UnitSystem units) =>
        ProofLoadEvaluationMapping.ToContract(result, units);
}
