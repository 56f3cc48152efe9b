using System.Text;
using System.Text.Json.Nodes;
using CalcService.Api.Batches;
using CalcService.Api.Hosting;
using CalcService.Api.Tests.Batches;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Hosting;

/// <summary>Processes that have little, or stand elsewhere.</summary>
public sealed class HostileMachineTests(Service service)
{
    /// <summary>Language and zone of the process: dotted and dotless i, comma for point, three quarters of an hour.</summary>
    [Fact]
    public async Task Answer_of_a_process_with_another_language_and_time_zone_is_the_same_bytes()
    {
        await using var elsewhere = await ServiceProcess.StartAsync([],
            ("LANG", "tr_TR.UTF-8"), ("LC_ALL", "tr_TR.UTF-8"), ("DOTNET_SYSTEM_GLOBALIZATION_INVARIANT", "0"),
            ("DOTNET_SYSTEM_GLOBALIZATION_PREDEFINED_CULTURES_ONLY", "0"), ("TZ", "Asia/Kathmandu"), ("DOTNET_PROCESSOR_COUNT", "1"));
        foreach (var route in (await ServedContract.ReadAsync(service)).Calculations)
        {
            foreach (var body in route.Examples.Select(example => example.Body).Append(new JsonObject { ["I\u0307"] = 1.5 }))
            {
                var here = await service.PostAsync(route.Path, body);
                var there = await PostAsync(elsewhere.Client, route.Path, body.ToJsonString(), "application/json");

                Assert.Equal(here.Status, there.Status);
                Assert.Equal(here.Lasting, there.Lasting);
            }
        }
    }

    /// <summary>A heap of 100 MiB holds the service and a batch that is ten times as large as its part of it.</summary>
    [Fact]
    public async Task Batch_in_little_memory_read_slowly_is_answered_whole_and_memory_stays_flat()
    {
        const int Count = 60_000;
        var line = Encoding.UTF8.GetBytes("{\"reference\":\"filler\"}".PadRight(1_999) + "\n");
        await using var small =
            await ServiceProcess.StartAsync([(ServiceSettings.BytesPerSecond.Key, "1"), (ServiceSettings.BodySeconds.Key, "600")],
            ("DOTNET_GCHeapHardLimit", "0x6400000"), ("DOTNET_PROCESSOR_COUNT", "1"));
        using var connection = new RawConnection(small.Address);
        await connection.SendHeadAsync(Plans.Path + "/batch", BatchEndpoint.MediaType, (long)Count * line.Length);
        var piece = Enumerable.Repeat(line, 500).SelectMany(bytes => bytes).ToArray();
        var sending = Task.Run(async () =>
        {
            for (var sent = 0; sent < Count; sent += 500)
            {
                await connection.SendAsync(piece);
            }
        }, TestContext.Current.CancellationToken);

        // Until the service has had to stop reading, nothing of the answer is taken.
        await Task.WhenAny(sending, Task.Delay(TimeSpan.FromSeconds(3), TestContext.Current.CancellationToken));
        Assert.False(sending.IsCompleted, "The service took the whole batch although nobody read its answer.");
        var reply = await connection.ReadToEndAsync();
        await sending;

        Assert.Contains($"{{\"summary\":{{\"lines\":{Count},\"answered\":0,\"rejected\":{Count},", reply.Text[^300..],
            StringComparison.Ordinal);
        Assert.InRange(await small.PeakMiBAsync(), 1, 400);
        Assert.Equal(200, (await PostAsync(small.Client, Plans.Path, Plans.Plan.ToJsonString(), "application/json")).Status);
    }

    [Fact]
    public async Task Largest_body_and_a_bomb_in_little_memory_are_refused_and_the_next_request_served()
    {
        await using var small = await ServiceProcess.StartAsync([], ("DOTNET_GCHeapHardLimit", "0x6400000"));
        using var bomb = new HttpRequestMessage(HttpMethod.Post,
            Plans.Path) { Content = new ByteArrayContent(BatchOutput.Pack(new byte[256 << 20], "gzip")) };
        bomb.Content.Headers.TryAddWithoutValidation("Content-Type", "application/json");
        bomb.Content.Headers.ContentEncoding.Add("gzip");

        ProblemAssert.IsProblem(await Reply.SendAsync(small.Client, bomb), 413);
        ProblemAssert.IsProblem(await PostAsync(small.Client, Plans.Path,
            $"{{\"ends\":[{string.Join(',', Enumerable.Repeat("{}", 300_000))}]}}", "application/json"), 422);
        Assert.Equal(200, (await PostAsync(small.Client, Plans.Path, Plans.Plan.ToJsonString(), "application/json")).Status);
    }

    /// <summary>As the image sets it: probes have a listener of their own.</summary>
    [Fact]
    public async Task Probe_is_answered_whatever_else_is_open()
    {
        await using var crowded = await ServiceProcess.StartAsync([(ServiceSettings.Connections.Key, "5"),
            ("Kestrel:Endpoints:Work:Url", "http://127.0.0.1:0"), ("Kestrel:Endpoints:Health:Url", "http://127.0.0.1:0")]);
        var other = new Uri((string)(await crowded.LogLineAsync(line => line["address"] is not null))["address"]!);
        var idle = Enumerable.Range(0, 20).Select(_ => new RawConnection(other)).ToArray();

        for (var asked = 0; asked < 5; asked++)
        {
            // Each on a connection of its own, as probes are.
            using var client = new HttpClient { BaseAddress = crowded.Address };
            using var live = new HttpRequestMessage(HttpMethod.Get, "/health/live");
            Assert.Equal(200, (await Reply.SendAsync(client, live)).Status);
        }

        Array.ForEach(idle, connection => connection.Dispose());
    }

    /// <summary>What one of them takes is a tenth of the heap and more.</summary>
    [Fact]
    public async Task Largest_plans_all_at_once_in_a_heap_of_384_MiB_are_answered_or_told_to_come_back()
    {
        await using var small = await ServiceProcess.StartAsync([(ServiceSettings.CalculationSeconds.Key, "10")],
            ("DOTNET_GCHeapHardLimit", "0x18000000"));
        var body = Plans.OfEnds(900).ToJsonString();

        var replies = await Task.WhenAll(Enumerable.Range(0, 64).Select(_ =>
            PostAsync(small.Client, Plans.Path + "?detail=full", body, "application/json")));

        Assert.All(replies, reply => Assert.True(reply.Status is 200 or 503, $"{reply.Status}: {reply.Text[..200]}"));
        Assert.Contains(replies, reply => reply.Status == 200);
        Assert.Equal(200, (await PostAsync(small.Client, Plans.Path, Plans.Plan.ToJsonString(), "application/json")).Status);
    }

    private static async Task<Reply> PostAsync(HttpClient client, string path, string body, string type)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, path) { Content = new StringContent(body, Encoding.UTF8, type) };
        return await Reply.SendAsync(client, request);
    }
}
