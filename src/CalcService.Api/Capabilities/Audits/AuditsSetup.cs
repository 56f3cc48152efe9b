using CalcService.Api.Calculations;
using CalcService.Api.Contract;
using CalcService.Engine.Audits;

namespace CalcService.Api.Capabilities.Audits;

/// <summary>Record audits: its services and its paths.</summary>
public static class AuditsSetup
{
    private const string Operation = "record-audits";

    public static void AddAudits(this IServiceCollection services) =>
        services.AddCalculation<RecordAuditRequest, RecordAuditResult, AuditResult>(
            Operation,
            (asked, budget, cancellationToken) =>
                RecordAudit.Calculate(RecordAuditMapping.ToEngine(asked.Request, asked.Sheet), asked.Rules, budget, cancellationToken),
            (_, result, units) => RecordAuditMapping.ToContract(result, units),
            rules => new RecordCollector(rules));

    public static void MapAudits(this IEndpointRouteBuilder app) => app.MapCalculation(
        Operation,
        "auditRecord",
        "Audit the record of an end",
        "Whether an inspector can rebuild from its record the decision that the end is safe, and whether what it tells holds: lots on the "
            + "day, dose and pot life, gel and release, "
            + "proof load and seating, people. What is missing never passes.",
        new(
            (request, answer) => RecordAuditSheet.Write((RecordAuditRequest)request, (Answer<RecordAuditResult>)answer),
            (request, answer) => RecordAuditSheet.Picture((RecordAuditRequest)request, (Answer<RecordAuditResult>)answer)));
}
