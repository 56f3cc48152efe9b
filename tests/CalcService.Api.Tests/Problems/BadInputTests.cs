using System.Text;
using System.Text.Json.Nodes;
using CalcService.Api.Tests.Batches;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Problems;

/// <summary>Every bad input against every calculation, sheet and batch that the service documents.</summary>
public sealed class BadInputTests(Service service, DocumentedRoutes routes) : IClassFixture<DocumentedRoutes>
{
    private const int LineBytes = 64 << 10;

    public static TheoryData<string> Names => [.. BadInput.All.Keys];

    public static TheoryData<string> BatchNames => [.. BadInput.All.Values.Where(row => row.NoLine is null).Select(row => row.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public async Task BadInput_to_every_calculation_and_sheet_is_refused_and_the_next_request_served(string name)
    {
        var row = BadInput.All[name];
        using var client = service.CreateClient();
        foreach (var (route, bad) in Made(row, routes.Calculations))
        {
            await AssertRefusedAsync(client, route, bad, row.Status);
        }
    }

    /// <summary>What is wrong with the whole request refuses the batch; what is wrong with a body refuses its line.</summary>
    [Theory]
    [MemberData(nameof(BatchNames))]
    public async Task BadInput_to_every_batch_is_refused_where_it_stands_and_its_neighbours_answered(string name)
    {
        var row = BadInput.All[name];
        using var client = service.CreateClient();
        foreach (var (route, bad) in Made(row, routes.Batches))
        {
            if (row.IsWhole)
            {
                await AssertRefusedAsync(client, route, bad, row.Status);
            }
            else
            {
                await AssertLineRefusedAsync(client, route, bad, row.Status);
            }
        }
    }

    private static (CalculationRoute Route, BadRequest Bad)[] Made(BadInput row, IReadOnlyList<CalculationRoute> routes)
    {
        var made = routes.Select(route => (Route: route, Bad: row.Make(route))).Where(made => made.Bad is not null)
            .Select(made => (made.Route, made.Bad!)).ToArray();
        Assert.True(made.Length > 0, $"{row.Name} reaches nothing.");
        return made;
    }

    private static async Task AssertRefusedAsync(HttpClient client, CalculationRoute route, BadRequest bad, int status)
    {
        using var request = bad.ToMessage(route.Path);
        var reply = await Reply.SendAsync(client, request);

        ProblemAssert.IsProblem(reply, status);
        Check(bad, reply.Json);
        if (status == 405)
        {
            Assert.Equal(["POST"], reply.ContentHeaders.Allow);
        }

        using var good = (BadRequest.Of(Good(route)) with { ContentType = route.MediaType }).ToMessage(route.Path);
        Assert.Equal(200, (await Reply.SendAsync(client, good)).Status);
    }

    private static async Task AssertLineRefusedAsync(HttpClient client, CalculationRoute route, BadRequest bad, int status)
    {
        var good = Encoding.UTF8.GetBytes(Good(route));
        byte[] lines = [.. good, (byte)'\n', .. bad.Body, (byte)'\n', .. good];
        using var request = (bad with { Body = lines, ContentType = route.MediaType }).ToMessage(route.Path);
        var reply = await Reply.SendAsync(client, request);

        Assert.True(reply.Status == 200, reply.Text);
        var batch = BatchOutput.Parse(reply.Status, mode: null, reply.Text);
        if (batch.Aborted is not null)
        {
            // Only what expands as nothing honest does ends the whole batch.
            Assert.True(bad.Packing is not null && bad.Body.Length == 256 << 20);
            Assert.Equal([200], batch.Lines.Select(line => (int)line["status"]!));
            ProblemAssert.IsProblem(batch.Aborted, 413);
            return;
        }

        // A line has a limit of its own, which comes before what is in it.
        var isTooLong = bad.Body.Length > LineBytes;
        Assert.Equal([200, isTooLong ? 413 : status, 200], batch.Lines.Select(line => (int)line["status"]!));
        Assert.Equal([1, 2, 3], batch.Lines.Select(line => (int)line["line"]!));
        batch.AssertSummary(3, 2, lines);
        var problem = batch.Lines[1]["problem"]!.AsObject();
        ProblemAssert.IsProblem(problem, isTooLong ? 413 : status);
        if (!isTooLong)
        {
            Check(bad, problem);
        }
    }

    private static string Good(CalculationRoute route) => route.Examples[0].Body.ToJsonString();

    private static void Check(BadRequest bad, JsonObject problem)
    {
        var errors = problem["errors"]!.AsArray();
        Assert.All(bad.Pointers, pointer => Assert.True(
            errors.Any(error => (string?)error!["pointer"] == pointer && (bad.Code is null || (string?)error["code"] == bad.Code)),
            $"No {bad.Code} at \"{pointer}\": {problem.ToJsonString()}"));
        if (bad.Code is not null)
        {
            Assert.Contains(errors, error => (string?)error!["code"] == bad.Code);
        }

        if (bad.Says is not null)
        {
            Assert.Contains(errors, error => ((string)error!["detail"]!).Contains(bad.Says, StringComparison.Ordinal));
        }
    }
}
