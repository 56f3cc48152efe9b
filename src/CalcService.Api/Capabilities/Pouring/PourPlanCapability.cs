using CalcService.Api.Calculations;
using CalcService.Api.Catalogues;
using CalcService.Api.Contract;
using CalcService.Api.Units;
using CalcService.Api.Writing;
using CalcService.Engine;
using CalcService.Engine.Pouring;
using CalcService.Engine.Rules;
using FluentValidation;

namespace CalcService.Api.Capabilities.Pouring;

/// <summary>POST /v1/pour-plans.</summary>
public sealed class PourPlanCapability(CompoundCatalogue compounds, IValidator<PourPlanRequest> validator, TimeProvider clock,
    Editions editions)
    : Capability<PourPlanRequest, PourPlanResult, Engine.Pouring.PourPlanResult>(validator, clock, editions)
{
    public override string Operation => "pour-plans";

    protected override IKnownParts Known => compounds;

    protected override PourPlanRequest Resolve(PourPlanRequest request) =>
        request with { Units = null, Compound = new Compound { Sheet = compounds.SheetOf(request.Compound) } };

    protected override CompoundProvenance? CompoundOf(PourPlanRequest request) => compounds.ProvenanceOf(request.Compound);

    protected override Outcome<Engine.Pouring.PourPlanResult> Calculate(
        PourPlanRequest request, RuleBook rules, Budget budget, CancellationToken cancellationToken) =>
        PourPlan.Calculate(PourPlanMapping.ToEngine(request, compounds.EngineSheetOf(request.Compound)), rules, budget, cancellationToken);

    protected override PourPlanResult ToContract(PourPlanRequest request, Engine.Pouring.PourPlanResult result, UnitSystem units) =>
        PourPlanMapping.ToContract(result, compounds.SheetOf(request.Compound)?.Currency, units);
}
