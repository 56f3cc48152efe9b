using CalcService.Api.Calculations;
using CalcService.Api.Contract;

namespace CalcService.Api.Capabilities.Curing;

/// <summary>The room of cure schedules: its services and its paths.</summary>
public static class CuringRoom
{
    public static void AddCuring(this IServiceCollection services) => services.AddCalculation<CureScheduleCapability>();

    public static void MapCuring(this IEndpointRouteBuilder app) => app.MapCalculation<CureScheduleCapability>(
        "scheduleCure",
        "Schedule a cure",
        "When poured ends gel, may be moved, proof loaded and put to service, each with what set it. The decision follows the worst finding.",
        CureScheduleExamples.All,
        new(
            (request, answer) => CureScheduleSheet.Write((CureScheduleRequest)request, (Answer<CureScheduleResult>)answer),
            (request, answer) => CureScheduleSheet.Picture((CureScheduleRequest)request, (Answer<CureScheduleResult>)answer)));
}
