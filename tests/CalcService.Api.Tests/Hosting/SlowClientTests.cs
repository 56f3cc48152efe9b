using System.Text.Json.Nodes;
using CalcService.Api.Batches;
using CalcService.Api.Calculations;
using CalcService.Api.Hosting;
using CalcService.Api.Tests.Batches;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Hosting;

/// <summary>Clients that don't go on are told so and let go.</summary>
public sealed class SlowClientTests
{
    [Fact]
    public async Task Head_that_does_not_arrive_gets_408()
    {
        await using var service = new Service((ServiceSettings.HeaderSeconds.Key, "1"));
        using var connection = new RawConnection(service.Address);
        await connection.SendAsync($"POST {Plans.Path} HTTP/1.1\r\nHost: here\r\nContent-Ty");

        var reply = await connection.ReadToEndAsync();

        // The server refuses it by itself; see ServerRefusalTests.
        Assert.Equal(408, reply.Status);
        Assert.Empty(reply.Text);
        Assert.Equal(200, (await service.PostAsync(Plans.Path, Plans.Plan)).Status);
    }

    [Fact]
    public async Task Body_that_does_not_arrive_in_its_time_gets_a_408_problem_on_every_calculation()
    {
        await using var service = new Service((ServiceSettings.BodySeconds.Key, "1"));
        // All at once: the server waits some seconds for the rest of each before it closes.
        await Task.WhenAll((await ServedContract.ReadAsync(service)).Calculations.Select(async route =>
        {
            using var connection = new RawConnection(service.Address);
            await connection.SendHeadAsync(route.Path, CalculationEndpoint.MediaType, 1000);
            await connection.SendAsync("{");

            AssertTimedOut(await connection.ReadToEndAsync());
        }));

        Assert.Empty(service.Escaped);
    }

    /// <summary>A client's slowness is no error of the service.</summary>
    [Fact]
    public async Task Body_that_does_not_arrive_leaves_no_error_in_the_log()
    {
        await using var service = await ServiceProcess.StartAsync([(ServiceSettings.BodySeconds.Key, "1")]);
        await Task.WhenAll(new (long? Length, string Head, string Body)[] { (1000, "", "{"), (null, "", "1\r\n{\r\n"),
            (1000, "Content-Encoding: gzip\r\n", "\u001f") }.Select(async sent =>
        {
            using var connection = new RawConnection(service.Address);
            await connection.SendHeadAsync(Plans.Path, CalculationEndpoint.MediaType, sent.Length, sent.Head);
            await connection.SendAsync(sent.Body);

            AssertTimedOut(await connection.ReadToEndAsync());
        }));
        await service.UntilAsync("/v1/units", 200);

        var before = new List<string>();
        await service.LogLineAsync(line =>
        {
            before.Add(line.ToJsonString());
            return (string?)line["RequestPath"] == "/v1/units";
        });
        Assert.Equal(3, before.Count(line => line.Contains("\"StatusCode\":408", StringComparison.Ordinal)));
        Assert.DoesNotContain(before, line => line.Contains("\"@l\":\"Error\"", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Body_that_comes_too_slowly_gets_a_408_problem_on_every_calculation_and_batch()
    {
        await using var service = new Service((ServiceSettings.BytesPerSecond.Key, "1000000"));
        var contract = await ServedContract.ReadAsync(service);
        var paths = contract.Calculations.Select(route => (route.Path, CalculationEndpoint.MediaType))
            .Concat(contract.Batches.Select(path => (path, BatchEndpoint.MediaType)));
        // All at once: the server gives each some seconds of grace.
        await Task.WhenAll(paths.Select(async path =>
        {
            using var connection = new RawConnection(service.Address);
            await connection.SendHeadAsync(path.Item1, path.Item2, 1000);
            await connection.SendAsync("{");

            AssertTimedOut(await connection.ReadToEndAsync());
        }));

        Assert.Empty(service.Escaped);
    }

    [Fact]
    public async Task Streaming_batch_that_comes_too_slowly_ends_aborted_without_a_summary()
    {
        await using var service = new Service((ServiceSettings.BytesPerSecond.Key, "1000000"));
        var line = new byte[60_000];
        Array.Fill(line, (byte)' ');
        "{}"u8.CopyTo(line);
        line[^1] = (byte)'\n';
        using var connection = new RawConnection(service.Address);
        await connection.SendHeadAsync(Plans.Path + "/batch", BatchEndpoint.MediaType, 100_000_000);
        for (var sent = 0; sent <= 9 << 20; sent += line.Length)
        {
            await connection.SendAsync(line);
        }

        var batch = BatchOutput.Parse(200, "streaming", (await connection.ReadToEndAsync()).Text);

        Assert.NotEmpty(batch.Lines);
        ProblemAssert.IsProblem(batch.Aborted!, 408);
        Assert.Empty(service.Escaped);
    }

    private static void AssertTimedOut(RawReply reply)
    {
        Assert.Equal(408, reply.Status);
        Assert.Contains("Connection: close", reply.Head, StringComparison.Ordinal);
        Assert.Contains("Content-Type: application/problem+json", reply.Head, StringComparison.Ordinal);
        ProblemAssert.IsProblem(JsonNode.Parse(reply.Text)!.AsObject(), 408);
    }
}
