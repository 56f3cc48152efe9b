using CalcService.Api.Calculations;
using CalcService.Api.Contract;

namespace CalcService.Api.Capabilities.Inspection;

/// <summary>The room of inspections: its services and its paths.</summary>
public static class InspectionRoom
{
    public static void AddInspection(this IServiceCollection services) => services.AddCalculation<ServiceInspectionCapability>();

    public static void MapInspection(this IEndpointRouteBuilder app) => app.MapCalculation<ServiceInspectionCapability>(
        "inspectService",
        "Judge an end in service",
        "Whether a socketed end may go on serving under the rule set that is named, where to cut, and whether enough rope is left. The decision follows the worst finding.",
        ServiceInspectionExamples.All,
        new(
            (request, answer) => ServiceInspectionSheet.Write((ServiceInspectionRequest)request, (Answer<ServiceInspectionResult>)answer),
            (request, answer) => ServiceInspectionSheet.Picture((ServiceInspectionRequest)request, (Answer<ServiceInspectionResult>)answer)));
}
