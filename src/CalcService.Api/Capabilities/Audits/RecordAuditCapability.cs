using CalcService.Api.Calculations;
using CalcService.Api.Catalogues;
using CalcService.Api.Contract;
using CalcService.Api.Units;
using CalcService.Api.Writing;
using CalcService.Engine;
using CalcService.Engine.Audits;
using CalcService.Engine.Rules;
using FluentValidation;

namespace CalcService.Api.Capabilities.Audits;

/// <summary>POST /v1/record-audits.</summary>
public sealed class RecordAuditCapability(CompoundCatalogue compounds, IValidator<RecordAuditRequest> validator, TimeProvider clock,
    Editions editions)
    : Capability<RecordAuditRequest, RecordAuditResult, AuditResult>(validator, clock, editions)
{
    public override string Operation => "record-audits";

    public override ISummaryCollector NewCollector() => new RecordCollector(Editions.Current);

    protected override IKnownParts Known => compounds;

    protected override RecordAuditRequest Resolve(RecordAuditRequest request) =>
        request with { Units = null, Compound = new Compound { Sheet = compounds.SheetOf(request.Compound) } };

    protected override CompoundProvenance? CompoundOf(RecordAuditRequest request) => compounds.ProvenanceOf(request.Compound);

    protected override Outcome<AuditResult> Calculate(RecordAuditRequest request, RuleBook rules, Budget budget, CancellationToken cancellationToken) =>
        RecordAudit.Calculate(RecordAuditMapping.ToEngine(request, compounds.EngineSheetOf(request.Compound)), rules, budget, cancellationToken);

    protected override RecordAuditResult ToContract(RecordAuditRequest request, AuditResult result, UnitSystem units) =>
        RecordAuditMapping.ToContract(result, units);
}
