using CalcService.Api.Calculations;
using CalcService.Api.Contract;

namespace CalcService.Api.Capabilities.Reuse;

/// <summary>The room of used sockets: its services and its paths.</summary>
public static class ReuseRoom
{
    public static void AddReuse(this IServiceCollection services) => services.AddCalculation<ReuseAssessmentCapability>();

    public static void MapReuse(this IEndpointRouteBuilder app) => app.MapCalculation<ReuseAssessmentCapability>(
        "assessReuse",
        "Assess a used socket",
        "Whether a socket may be used again after its old cone is out: history, inspection, wear against the limits of the request, strength with what is left. "
            + "What is missing never passes; a crack is never worked away.",
        ReuseAssessmentExamples.All,
        new(
            (request, answer) => ReuseAssessmentSheet.Write((ReuseAssessmentRequest)request, (Answer<ReuseAssessmentResult>)answer),
            (request, answer) => ReuseAssessmentSheet.Picture((ReuseAssessmentRequest)request, (Answer<ReuseAssessmentResult>)answer)));
}
