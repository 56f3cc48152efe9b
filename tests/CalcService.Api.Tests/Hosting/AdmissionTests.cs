using System.Globalization;
using CalcService.Api.Batches;
using CalcService.Api.Calculations;
using CalcService.Api.Hosting;
using CalcService.Api.Tests.Batches;
using CalcService.Api.Tests.Fixtures;
using Microsoft.Extensions.DependencyInjection;

namespace CalcService.Api.Tests.Hosting;

/// <summary>What happens when more is asked for than the instance takes, or than a client may ask for.</summary>
public sealed class AdmissionTests(Service service)
{
    [Fact]
    public async Task Request_beyond_those_taken_at_once_gets_503_and_is_taken_when_one_has_ended()
    {
        await using var service = new Service((ServiceSettings.Requests.Key, "1"));
        using (await service.Services.GetRequiredService<Lanes>().EnterSingleAsync(isLarge: false, TestContext.Current.CancellationToken))
        {
            var refused = await service.PostAsync(Plans.Path, Plans.Plan);

            ProblemAssert.IsProblem(refused, 503);
            Assert.Equal(["5"], refused.Headers.GetValues("Retry-After"));
            // Batches, probes and catalogues have room of their own.
            Assert.Equal(200, (await AskBatchAsync(service)).Status);
            Assert.Equal(200, (await service.GetAsync("/health/ready")).Status);
            Assert.Equal(200, (await service.GetAsync("/v1/build")).Status);
        }

        Assert.Equal(200, (await service.PostAsync(Plans.Path, Plans.Plan)).Status);
    }

    [Fact]
    public async Task Batch_beyond_those_taken_at_once_gets_503_while_single_requests_are_answered()
    {
        await using var service = new Service((ServiceSettings.Batches.Key, "1"));
        using (service.Services.GetRequiredService<Lanes>().TryEnterBatch())
        {
            var refused = await AskBatchAsync(service);

            ProblemAssert.IsProblem(refused, 503);
            Assert.Equal(["5"], refused.Headers.GetValues("Retry-After"));
            Assert.Equal(200, (await service.PostAsync(Plans.Path, Plans.Plan)).Status);
        }

        Assert.Equal(200, (await AskBatchAsync(service)).Status);
    }

    /// <summary>Only who has sent his body takes a place.</summary>
    [Fact]
    public async Task Bodies_that_come_slowly_keep_nobody_out()
    {
        await using var service = new Service((ServiceSettings.Requests.Key, "1"), (ServiceSettings.Batches.Key, "1"));
        var slow = Enumerable.Range(0, 40).Select(_ => new RawConnection(service.Address)).ToArray();
        foreach (var (at, connection) in slow.Index())
        {
            await (at % 2 == 0 ? connection.SendHeadAsync(Plans.Path, CalculationEndpoint.MediaType, 1_000_000)
                : connection.SendHeadAsync(Plans.Path + "/batch", BatchEndpoint.MediaType, 100_000_000));
            await connection.SendAsync("{");
        }

        for (var asked = 0; asked < 20; asked++)
        {
            Assert.Equal(200, (await service.PostAsync(Plans.Path, Plans.Plan)).Status);
            Assert.Equal(200, (await AskBatchAsync(service)).Status);
        }

        Array.ForEach(slow, connection => connection.Dispose());
    }

    [Fact]
    public async Task Single_request_is_answered_while_lines_of_batches_and_a_large_request_take_all_lanes_they_may()
    {
        var lanes = service.Services.GetRequiredService<Lanes>();
        var taken = new List<Lane>();
        for (var core = 0; core < Environment.ProcessorCount; core++)
        {
            taken.Add(await lanes.EnterLineAsync(TestContext.Current.CancellationToken));
        }

        Assert.Equal(200, (await service.PostAsync(Plans.Path, Plans.Plan)).Status);
        taken[0].Dispose();
        using (await lanes.EnterSingleAsync(isLarge: true, TestContext.Current.CancellationToken))
        {
            Assert.Equal(200, (await service.PostAsync(Plans.Path, Plans.Plan)).Status);
        }

        taken.ForEach(lane => lane.Dispose());
    }

    [Fact]
    public async Task Large_bodies_and_answers_get_503_where_too_many_bytes_are_held_and_small_ones_are_answered()
    {
        await using var service = new Service((ServiceSettings.HeldMiB.Key, "16"));
        var large = Plans.OfEnds(100);
        Assert.Equal(200, (await service.PostAsync(Plans.Path, large)).Status);
        using (var share = service.Services.GetRequiredService<HeldBytes>().Open())
        {
            Assert.True(share.TryHold((16 << 20) + HeldShare.FreeBytes));
            Assert.False(share.TryHold((16 << 20) + HeldShare.FreeBytes + 1));

            var refused = await service.PostAsync(Plans.Path, large);

            ProblemAssert.IsProblem(refused, 503);
            Assert.Equal(["5"], refused.Headers.GetValues("Retry-After"));
            ProblemAssert.IsProblem(await service.PostAsync(Plans.Path + "/batch", BatchOutput.Content(new byte[1 << 20], null)), 503);
            Assert.Equal(200, (await service.PostAsync(Plans.Path, Plans.Plan)).Status);
        }

        Assert.Equal(200, (await service.PostAsync(Plans.Path, large)).Status);
    }

    [Fact]
    public async Task Client_that_has_used_up_its_minute_gets_429_and_others_are_answered()
    {
        const string Header = "X-Client";
        await using var service = new Service((ServiceSettings.RequestsPerMinute.Key, "3"), (Admission.ClientHeaderKey, Header));
        Reply refused;
        var answered = 0;
        while ((refused = await AskAsync(service, (Header, "yard"))).Status == 200)
        {
            answered++;
        }

        ProblemAssert.IsProblem(refused, 429);
        Assert.InRange(answered, 3, 6);
        Assert.InRange(int.Parse(refused.Headers.GetValues("Retry-After").Single(), CultureInfo.InvariantCulture), 1, 60);
        Assert.Equal(200, (await AskAsync(service, (Header, "rigging loft"))).Status);
        // One without a name is its address, and what is no calculation isn't counted.
        Assert.Equal(200, (await AskAsync(service)).Status);
        Assert.Equal(200, (await service.GetAsync("/v1/units", (Header, "yard"))).Status);
        Assert.Equal(3, (int)(await service.GetAsync("/v1/build")).Json["limits"]!["requestsPerMinute"]!);
    }

    [Fact]
    public async Task Client_without_a_name_is_counted_by_its_address()
    {
        await using var service = new Service((ServiceSettings.RequestsPerMinute.Key, "1"));
        var replies = new List<int>();
        while (replies.Count < 4)
        {
            // A header that nobody asked for names nobody.
            replies.Add((await AskAsync(service, ("X-Client", $"{replies.Count}"))).Status);
        }

        Assert.Contains(429, replies);
    }

    private static Task<Reply> AskBatchAsync(Service service) =>
        service.PostAsync("/v1/reuse-assessments/batch", BatchOutput.Content("{}"u8.ToArray(), null));

    private static async Task<Reply> AskAsync(Service service, params (string Name, string Value)[] headers)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post,
            Plans.Path) { Content = new StringContent(Plans.Plan.ToJsonString(), System.Text.Encoding.UTF8, "application/json") };
        foreach (var (name, value) in headers)
        {
            request.Headers.Add(name, value);
        }

        return await Reply.SendAsync(service.Client, request);
    }
}
