using CalcService.Api.Calculations;
using CalcService.Api.Catalogues;
using CalcService.Api.Contract;
using CalcService.Api.Units;
using CalcService.Api.Writing;
using CalcService.Engine;
using CalcService.Engine.Curing;
using CalcService.Engine.Rules;
using FluentValidation;

namespace CalcService.Api.Capabilities.Curing;

/// <summary>POST /v1/cure-schedules.</summary>
public sealed class CureScheduleCapability(CompoundCatalogue compounds, IValidator<CureScheduleRequest> validator, TimeProvider clock,
    Editions editions)
    : Capability<CureScheduleRequest, CureScheduleResult, Engine.Curing.CureScheduleResult>(validator, clock, editions)
{
    public override string Operation => "cure-schedules";

    protected override IKnownParts Known => compounds;

    protected override CureScheduleRequest Resolve(CureScheduleRequest request) =>
        request with { Units = null, Compound = new Compound { Sheet = compounds.SheetOf(request.Compound) } };

    protected override CompoundProvenance? CompoundOf(CureScheduleRequest request) => compounds.ProvenanceOf(request.Compound);

    protected override Outcome<Engine.Curing.CureScheduleResult> Calculate(
        CureScheduleRequest request, RuleBook rules, Budget budget, CancellationToken cancellationToken) =>
        CureSchedule.Calculate(CureScheduleMapping.ToEngine(request, compounds.EngineSheetOf(request.Compound)), rules, budget, cancellationToken);

    protected override CureScheduleResult ToContract(CureScheduleRequest request, Engine.Curing.CureScheduleResult result, UnitSystem units) =>
        CureScheduleMapping.ToContract(result, units);
}
