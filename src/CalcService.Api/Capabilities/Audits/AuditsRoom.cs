using CalcService.Api.Calculations;
using CalcService.Api.Contract;

namespace CalcService.Api.Capabilities.Audits;

/// <summary>The room of records: its services and its paths.</summary>
public static class AuditsRoom
{
    public static void AddAudits(this IServiceCollection services) => services.AddCalculation<RecordAuditCapability>();

    public static void MapAudits(this IEndpointRouteBuilder app) => app.MapCalculation<RecordAuditCapability>(
        "auditRecord",
        "Audit the record of an end",
        "Whether an inspector can rebuild from its record the decision that the end is safe, and whether what it tells holds: lots on the day, dose and pot life, gel and release, "
            + "proof load and seating, people. What is missing never passes.",
        RecordAuditExamples.All,
        new(
            (request, answer) => RecordAuditSheet.Write((RecordAuditRequest)request, (Answer<RecordAuditResult>)answer),
            (request, answer) => RecordAuditSheet.Picture((RecordAuditRequest)request, (Answer<RecordAuditResult>)answer)));
}
