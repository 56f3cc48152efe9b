using CalcService.Api.Calculations;
using CalcService.Api.Catalogues;
using CalcService.Api.Contract;
using CalcService.Api.Units;
using CalcService.Api.Writing;
using CalcService.Engine;
using CalcService.Engine.Matching;
using CalcService.Engine.Rules;
using FluentValidation;

namespace CalcService.Api.Capabilities.Matching;

/// <summary>POST /v1/termination-matches.</summary>
public sealed class TerminationMatchCapability(CompoundCatalogue compounds, IValidator<TerminationMatchRequest> validator,
    TimeProvider clock, Editions editions)
    : Capability<TerminationMatchRequest, TerminationMatchResult, MatchResult>(validator, clock, editions)
{
    public override string Operation => "termination-matches";

    protected override IKnownParts Known => compounds;

    protected override TerminationMatchRequest Resolve(TerminationMatchRequest request) =>
        request with { Units = null, Compound = new Compound { Sheet = compounds.SheetOf(request.Compound) } };

    protected override CompoundProvenance? CompoundOf(TerminationMatchRequest request) => compounds.ProvenanceOf(request.Compound);

    protected override Outcome<MatchResult> Calculate(
        TerminationMatchRequest request, RuleBook rules, Budget budget, CancellationToken cancellationToken) =>
        TerminationMatch.Calculate(TerminationMatchMapping.ToEngine(request, compounds.EngineSheetOf(request.Compound)), rules, budget, cancellationToken);

    protected override TerminationMatchResult ToContract(TerminationMatchRequest request, MatchResult result, UnitSystem units) =>
        TerminationMatchMapping.ToContract(result, units);
}
