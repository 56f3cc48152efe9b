using CalcService.Api.Calculations;
using CalcService.Api.Catalogues;
using CalcService.Api.Contract;
using CalcService.Api.Units;
using CalcService.Api.Writing;
using CalcService.Engine;
using CalcService.Engine.Inspection;
using CalcService.Engine.Rules;
using FluentValidation;

namespace CalcService.Api.Capabilities.Inspection;

/// <summary>POST /v1/service-inspections.</summary>
public sealed class ServiceInspectionCapability(CompoundCatalogue compounds, IValidator<ServiceInspectionRequest> validator,
    TimeProvider clock, Editions editions)
    : Capability<ServiceInspectionRequest, ServiceInspectionResult, InspectionResult>(validator, clock, editions)
{
    public override string Operation => "service-inspections";

    protected override IKnownParts Known => compounds;

    protected override ServiceInspectionRequest Resolve(ServiceInspectionRequest request) => request with
    {
        Units = null,
        Compound = request.Compound is { } compound ? new Compound { Sheet = compounds.SheetOf(compound) } : null,
    };

    protected override CompoundProvenance? CompoundOf(ServiceInspectionRequest request) =>
        request.Compound is { } compound ? compounds.ProvenanceOf(compound) : null;

    protected override Outcome<InspectionResult> Calculate(
        ServiceInspectionRequest request, RuleBook rules, Budget budget, CancellationToken cancellationToken) =>
        ServiceInspection.Calculate(
            ServiceInspectionMapping.ToEngine(request, request.Compound is { } compound ? compounds.EngineSheetOf(compound) : null), rules, budget, cancellationToken);

    protected override ServiceInspectionResult ToContract(ServiceInspectionRequest request, InspectionResult result, UnitSystem units) =>
        ServiceInspectionMapping.ToContract(result, units);
}
