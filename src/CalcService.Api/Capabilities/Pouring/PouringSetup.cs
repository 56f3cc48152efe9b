using CalcService.Api.Calculations;
using CalcService.Api.Contract;
using CalcService.Engine.Pouring;

namespace CalcService.Api.Capabilities.Pouring;

/// <summary>Pour plans: its services and its paths.</summary>
public static class PouringSetup
{
    private const string Operation = "pour-plans";

    public static void AddPouring(this IServiceCollection services) =>
        services.AddCalculation<PourPlanRequest, PourPlanResult, Engine.Pouring.PourPlanResult>(
            Operation,
            (asked, budget, cancellationToken) =>
                PourPlan.Calculate(PourPlanMapping.ToEngine(asked.Request, asked.Sheet), asked.Rules, budget, cancellationToken),
            (asked, result, units) => PourPlanMapping.ToContract(result, asked.Compound!.Sheet.Currency, units));

    public static void MapPouring(this IEndpointRouteBuilder app) => app.MapCalculation(
        Operation,
        "planPour",
        "Plan a pour",
        "Volumes, dose, pot life, whole kits by lot, and whether today's air and steel allow it. Without stock it is a quote. The "
            + "decision follows the worst finding.",
        new(
            (request, answer) => PourPlanSheet.Write((PourPlanRequest)request, (Answer<PourPlanResult>)answer),
            (request, answer) => PourPlanSheet.Picture((PourPlanRequest)request, (Answer<PourPlanResult>)answer)));
}
