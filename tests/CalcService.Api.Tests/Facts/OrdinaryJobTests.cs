using CalcService.Api.Capabilities.Audits;
using CalcService.Api.Capabilities.Curing;
using CalcService.Api.Capabilities.Inspection;
using CalcService.Api.Capabilities.Matching;
using CalcService.Api.Capabilities.Pouring;
using CalcService.Api.Capabilities.Proof;
using CalcService.Api.Capabilities.Reuse;
using CalcService.Api.Capabilities.Verifications;
using CalcService.Api.OpenApi;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Facts;

/// <summary>A finding is news: an ordinary whole job, with everything said and nothing wrong, has at most two besides the demonstration's.</summary>
public sealed class OrdinaryJobTests(Service service)
{
    private static readonly Dictionary<string, IReadOnlyList<RequestExample>> Examples = new(StringComparer.Ordinal)
    {
        [Plans.Path] = PourPlanExamples.All, ["/v1/cure-schedules"] = CureScheduleExamples.All, [Matches.Path] = TerminationMatchExamples.All,
        [Reuses.Path] = ReuseAssessmentExamples.All, [Inspections.Path] = ServiceInspectionExamples.All, [Proofs.Path] = ProofLoadEvaluationExamples.All,
        [TerminationRecords.Path] = RecordAuditExamples.All, ["/v1/record-verifications"] = RecordVerificationExamples.All,
    };

    /// <summary>Path and example; a socket's condition, a proof load and an archived answer leave nothing at all to say.</summary>
    public static TheoryData<string, string, int> Jobs => new()
    {
        { Plans.Path, "plan", 2 },
        { "/v1/cure-schedules", "table", 2 },
        { "/v1/cure-schedules", "schedule", 2 },
        { Matches.Path, "match", 2 },
        { Reuses.Path, "reuse", 0 },
        { Inspections.Path, "serve", 2 },
        { Proofs.Path, "before", 0 },
        { Proofs.Path, "after", 0 },
        { TerminationRecords.Path, "accepted", 2 },
        { "/v1/record-verifications", "match", 0 },
    };

    [Theory]
    [MemberData(nameof(Jobs))]
    public async Task Ordinary_job_with_everything_said_has_few_findings(string path, string example, int most)
    {
        var answer = await service.AnswerAsync(path, Examples[path].Single(one => one.Name == example).Json);
        Assert.InRange(Plans.Codes(answer).Count(code => code != "compound-demonstration"), 0, most);
        Assert.Contains((string?)answer["decision"], new[] { FactRow.Proceed, FactRow.Care });
    }

    [Fact]
    public void Each_path_has_an_ordinary_job() =>
        Assert.Equal(OperationExamples.All.Select(operation => operation.Path).Order(StringComparer.Ordinal),
            Jobs.Select(job => job.Data.Item1).Distinct().Order(StringComparer.Ordinal));
}
