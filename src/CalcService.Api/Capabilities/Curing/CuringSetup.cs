using CalcService.Api.Calculations;
using CalcService.Api.Contract;
using CalcService.Engine.Curing;

namespace CalcService.Api.Capabilities.Curing;

/// <summary>Cure schedules: its services and its paths.</summary>
public static class CuringSetup
{
    private const string Operation = "cure-schedules";

    public static void AddCuring(this IServiceCollection services) =>
        services.AddCalculation<CureScheduleRequest, CureScheduleResult, Engine.Curing.CureScheduleResult>(
            Operation,
            (asked, budget, cancellationToken) =>
                CureSchedule.Calculate(CureScheduleMapping.ToEngine(asked.Request, asked.Sheet), asked.Rules, budget, cancellationToken),
            (_, result, units) => CureScheduleMapping.ToContract(result, units));

    public static void MapCuring(this IEndpointRouteBuilder app) => app.MapCalculation(
        Operation,
        "scheduleCure",
        "Schedule a cure",
        "When poured ends gel, may be moved, proof loaded and put to service, each with what set it. The decision follows the worst "
            + "finding.",
        new(
            (request, answer) => CureScheduleSheet.Write((CureScheduleRequest)request, (Answer<CureScheduleResult>)answer),
            (request, answer) => CureScheduleSheet.Picture((CureScheduleRequest)request, (Answer<CureScheduleResult>)answer)));
}
