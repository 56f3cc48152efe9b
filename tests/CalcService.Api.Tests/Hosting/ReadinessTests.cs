using System.Text;
using CalcService.Api.Batches;
using CalcService.Api.Hosting;
using CalcService.Api.Tests.Fixtures;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.Hosting;

namespace CalcService.Api.Tests.Hosting;

public sealed class ReadinessTests(Service service)
{
    /// <summary>Where the known answers were not computed, or came out wrong.</summary>
    [Fact]
    public async Task Instance_that_has_not_proved_itself_answers_no_calculation_and_no_batch()
    {
        await using var factory = new WebApplicationFactory<Program>();
        await using var unproved = factory.WithWebHostBuilder(host => host.ConfigureTestServices(services =>
            services.Remove(services.Single(added => added.ServiceType == typeof(IHostedService)
            && added.ImplementationFactory is Func<IServiceProvider, Readiness>))));
        using var client = unproved.CreateClient();
        var contract = await ServedContract.ReadAsync(service);
        foreach (var (path, body,
            type) in contract.Calculations.Select(route => (route.Path, route.Examples[0].Body.ToJsonString(), "application/json"))
            .Concat(contract.Batches.Select(path => (path, "{}", BatchEndpoint.MediaType))))
        {
            using var request = new HttpRequestMessage(HttpMethod.Post, path) { Content = new StringContent(body, Encoding.UTF8, type) };
            var reply = await Reply.SendAsync(client, request);

            ProblemAssert.IsProblem(reply, 503);
            Assert.NotEmpty(reply.Headers.GetValues("Retry-After"));
        }

        using var probe = new HttpRequestMessage(HttpMethod.Get, "/health/ready");
        Assert.Equal(503, (await Reply.SendAsync(client, probe)).Status);
    }
}
