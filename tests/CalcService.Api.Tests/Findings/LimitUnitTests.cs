using System.Text.Json.Nodes;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Findings;

/// <summary>What was found and what it is held against are read side by side, so they are told in one unit.</summary>
public sealed class LimitUnitTests(Service service)
{
    public static TheoryData<string> Paths => [.. OperationExamples.All.Select(operation => operation.Path)];

    [Theory]
    [MemberData(nameof(Paths))]
    public async Task Measured_and_limit_of_a_finding_and_of_a_check_have_one_unit(string path)
    {
        var pairs = 0;
        foreach (var request in OperationExamples.All.Single(operation => operation.Path == path).Requests)
        {
            var answer = await service.AnswerAsync(path, request);
            var checks = (answer["result"] as JsonObject)?["checks"] as JsonArray ?? [];
            foreach (var one in answer["findings"]!.AsArray().Concat(checks).OfType<JsonObject>().Where(one => one["measured"] is not null
                && one["limit"] is not null))
            {
                pairs++;
                Assert.True((string?)one.At("/measured/unit") == (string?)one.At("/limit/unit"), one.ToJsonString());
            }
        }

        Assert.True(pairs > 0 || path == ArchivedAnswers.Path, path);
    }
}
