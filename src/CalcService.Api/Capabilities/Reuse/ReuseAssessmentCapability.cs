using CalcService.Api.Calculations;
using CalcService.Api.Contract;
using CalcService.Api.Units;
using CalcService.Engine;
using CalcService.Engine.Reuse;
using CalcService.Engine.Rules;
using FluentValidation;

namespace CalcService.Api.Capabilities.Reuse;

/// <summary>POST /v1/reuse-assessments.</summary>
public sealed class ReuseAssessmentCapability(IValidator<ReuseAssessmentRequest> validator, TimeProvider clock, Editions editions)
    : Capability<ReuseAssessmentRequest, ReuseAssessmentResult, ReuseResult>(validator, clock, editions)
{
    public override string Operation => "reuse-assessments";

    protected override ReuseAssessmentRequest Resolve(ReuseAssessmentRequest request) => request with { Units = null };

    protected override CompoundProvenance? CompoundOf(ReuseAssessmentRequest request) => null;

    protected override Outcome<ReuseResult> Calculate(ReuseAssessmentRequest request, RuleBook rules, Budget budget, CancellationToken cancellationToken) =>
        ReuseAssessment.Calculate(ReuseAssessmentMapping.ToEngine(request), rules, budget, cancellationToken);

    protected override ReuseAssessmentResult ToContract(ReuseAssessmentRequest request, ReuseResult result, UnitSystem units) =>
        ReuseAssessmentMapping.ToContract(result, units);
}
