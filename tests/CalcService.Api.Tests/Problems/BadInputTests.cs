using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Problems;

/// <summary>Every bad input against every calculation that the service documents.</summary>
public sealed class BadInputTests(Service service)
{
    public static TheoryData<string> Names => [.. BadInput.All.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public async Task BadInput_to_every_calculation_is_refused_and_the_next_request_served(string name)
    {
        var row = BadInput.All[name];
        using var client = service.CreateClient();
        foreach (var route in (await ServedContract.ReadAsync(service)).Calculations)
        {
            var bad = row.Make(route);
            // The pour plan has members of every kind, so no row is skipped everywhere.
            Assert.True(bad is not null || route.Path != Plans.Path, $"{name} reaches nothing of {route.Path}.");
            if (bad is null)
            {
                continue;
            }

            using var request = bad.ToMessage(route.Path);
            var reply = await Reply.SendAsync(client, request);

            ProblemAssert.IsProblem(reply, row.Status);
            Check(bad, reply, row.Status);
            using var good = BadRequest.Of(route.Examples[0].Body.ToJsonString()).ToMessage(route.Path);
            Assert.Equal(200, (await Reply.SendAsync(client, good)).Status);
        }
    }

    private static void Check(BadRequest bad, Reply reply, int status)
    {
        var errors = reply.Json["errors"]!.AsArray();
        Assert.All(bad.Pointers, pointer => Assert.True(
            errors.Any(error => (string?)error!["pointer"] == pointer && (bad.Code is null || (string?)error["code"] == bad.Code)),
            $"No {bad.Code} at \"{pointer}\": {reply.Text}"));
        if (bad.Code is not null)
        {
            Assert.Contains(errors, error => (string?)error!["code"] == bad.Code);
        }

        if (bad.Says is not null)
        {
            Assert.Contains(errors, error => ((string)error!["detail"]!).Contains(bad.Says, StringComparison.Ordinal));
        }

        if (status == 405)
        {
            Assert.Equal(["POST"], reply.ContentHeaders.Allow);
        }
    }
}
