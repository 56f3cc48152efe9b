using CalcService.Api.Calculations;
using CalcService.Api.Contract;
using CalcService.Engine.Inspection;

namespace CalcService.Api.Capabilities.Inspection;

/// <summary>Inspections: its services and its paths.</summary>
public static class InspectionSetup
{
    private const string Operation = "service-inspections";

    public static void AddInspection(this IServiceCollection services) =>
        services.AddCalculation<ServiceInspectionRequest, ServiceInspectionResult, InspectionResult>(
            Operation,
            (asked, budget, cancellationToken) =>
                ServiceInspection.Calculate(ServiceInspectionMapping.ToEngine(asked.Request, asked.Compound?.EngineSheet),
                    asked.Rules, budget, cancellationToken),
            (_, result, units) => ServiceInspectionMapping.ToContract(result, units));

    public static void MapInspection(this IEndpointRouteBuilder app) => app.MapCalculation(
        Operation,
        "inspectService",
        "Judge an end in service",
        "Whether a socketed end may go on serving under the rule set that is named, where to cut, and whether enough rope is left. The "
            + "decision follows the worst finding.",
        new(
            (request, answer) => ServiceInspectionSheet.Write((ServiceInspectionRequest)request, (Answer<ServiceInspectionResult>)answer),
            (request, answer) =>
            ServiceInspectionSheet.Picture((ServiceInspectionRequest)request, (Answer<ServiceInspectionResult>)answer)));
}
