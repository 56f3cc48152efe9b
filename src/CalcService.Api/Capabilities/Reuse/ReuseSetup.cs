using CalcService.Api.Calculations;
using CalcService.Api.Contract;
using CalcService.Engine.Reuse;

namespace CalcService.Api.Capabilities.Reuse;

/// <summary>Used sockets: its services and its paths.</summary>
public static class ReuseSetup
{
    private const string Operation = "reuse-assessments";

    public static void AddReuse(this IServiceCollection services) =>
        services.AddCalculation<ReuseAssessmentRequest, ReuseAssessmentResult, ReuseResult>(
            Operation,
            (asked, budget, cancellationToken) =>
                ReuseAssessment.Calculate(ReuseAssessmentMapping.ToEngine(asked.Request), asked.Rules, budget, cancellationToken),
            (_, result, units) => ReuseAssessmentMapping.ToContract(result, units));

    public static void MapReuse(this IEndpointRouteBuilder app) => app.MapCalculation(
        Operation,
        "assessReuse",
        "Assess a used socket",
        "Whether a socket may be used again after its old cone is out: history, inspection, wear against the limits of the request, "
            + "strength with what is left. "
            + "What is missing never passes; a crack is never worked away.",
        new(
            (request, answer) => ReuseAssessmentSheet.Write((ReuseAssessmentRequest)request, (Answer<ReuseAssessmentResult>)answer),
            (request, answer) => ReuseAssessmentSheet.Picture((ReuseAssessmentRequest)request, (Answer<ReuseAssessmentResult>)answer)));
}
