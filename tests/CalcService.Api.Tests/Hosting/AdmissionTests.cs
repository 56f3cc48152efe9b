using System.Globalization;
using CalcService.Api.Batches;
using CalcService.Api.Calculations;
using CalcService.Api.Hosting;
using CalcService.Api.Tests.Batches;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Hosting;

/// <summary>What happens when more is asked for than the instance takes, or than a client may ask for.</summary>
public sealed class AdmissionTests
{
    [Fact]
    public async Task Request_beyond_those_taken_at_once_gets_503_and_is_taken_when_one_has_ended()
    {
        await using var service = new Service((ServiceSettings.Requests.Key, "1"), (ServiceSettings.Batches.Key, "1"));
        var plan = Plans.Plan.ToJsonString();
        var (held, refused) = await HoldAsync(service,
            connection => connection.SendHeadAsync(Plans.Path, CalculationEndpoint.MediaType, plan.Length),
            () => service.PostAsync(Plans.Path, Plans.Plan));
        using var _ = held;

        ProblemAssert.IsProblem(refused, 503);

        Assert.Equal(["5"], refused.Headers.GetValues("Retry-After"));
        // Batches, probes and catalogues have room of their own.
        Assert.Equal(200, (await service.PostAsync(Plans.Path + "/batch", BatchOutput.Content("{}"u8.ToArray(), null))).Status);
        Assert.Equal(200, (await service.GetAsync("/health/ready")).Status);
        Assert.Equal(200, (await service.GetAsync("/v1/build")).Status);
        await held.SendAsync(plan);
        Assert.Equal(200, (await held.ReadToEndAsync()).Status);
        // The place is free once the server has done with the request, a moment after its answer.
        Reply next;
        while ((next = await service.PostAsync(Plans.Path, Plans.Plan)).Status != 200)
        {
            Assert.Equal(503, next.Status);
        }
    }

    [Fact]
    public async Task Batch_beyond_those_taken_at_once_gets_503_while_single_requests_are_answered()
    {
        await using var service = new Service((ServiceSettings.Batches.Key, "1"));
        var (held, reply) = await HoldAsync(service,
            connection => connection.SendHeadAsync(Plans.Path + "/batch", BatchEndpoint.MediaType, 3),
            () => service.PostAsync("/v1/reuse-assessments/batch", BatchOutput.Content("{}"u8.ToArray(), null)));
        using var _ = held;
        await held.SendAsync("{");

        ProblemAssert.IsProblem(reply, 503);
        Assert.Equal(["5"], reply.Headers.GetValues("Retry-After"));
        Assert.Equal(200, (await service.PostAsync(Plans.Path, Plans.Plan)).Status);
        await held.SendAsync("}\n");
        BatchOutput.Parse(200, "buffered", (await held.ReadToEndAsync()).Text).AssertSummary(1, 0, "{}\n"u8.ToArray());
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

    /// <summary>
    /// Takes the only place, and what another gets then. Where the other one came first, the place is taken once it is free.
    /// </summary>
    private static async Task<(RawConnection Held, Reply Refused)> HoldAsync(Service service, Func<RawConnection, Task> begin,
        Func<Task<Reply>> ask)
    {
        while (true)
        {
            var held = new RawConnection(service.Address);
            await begin(held);
            while (!held.HasAnswer)
            {
                var reply = await ask();
                if (reply.Status != 200)
                {
                    return (held, reply);
                }
            }

            held.Dispose();
        }
    }

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
