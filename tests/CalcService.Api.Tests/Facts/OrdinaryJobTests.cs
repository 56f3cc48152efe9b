using CalcService.Api.OpenApi;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Facts;

/// <summary>A finding is news: an ordinary whole job has at most two besides the demonstration's.</summary>
public sealed class OrdinaryJobTests(Service service)
{
    private static readonly Dictionary<string, IReadOnlyList<RequestExample>> Examples = new(StringComparer.Ordinal)
    {
        [Plans.Path] = RequestExamples.Of("pour-plans"),
        ["/v1/cure-schedules"] = RequestExamples.Of("cure-schedules"),
        [Matches.Path] = RequestExamples.Of("termination-matches"),
        [Reuses.Path] = RequestExamples.Of("reuse-assessments"),
        [Inspections.Path] = RequestExamples.Of("service-inspections"),
        [Proofs.Path] = RequestExamples.Of("proof-load-evaluations"),
        [TerminationRecords.Path] = RequestExamples.Of("record-audits"),
        ["/v1/record-verifications"] = RequestExamples.Of("record-verifications"),
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
