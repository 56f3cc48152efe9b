using System.Text;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Telemetry;

public sealed class RequestLogTests
{
    [Fact]
    public async Task Line_of_a_request_has_the_trace_id_of_the_response_and_no_body()
    {
        await using var service = await ServiceProcess.StartAsync([]);
        using var reply = await service.Client.PostAsync(new Uri(Plans.Path, UriKind.Relative),
            new StringContent(Plans.Plan.ToJsonString(), Encoding.UTF8, "application/json"), TestContext.Current.CancellationToken);

        var line = await service.LogLineAsync(line => (string?)line["RequestPath"] == Plans.Path);

        Assert.Equal(reply.Headers.GetValues("Trace-Id").Single(), (string?)line["@tr"]);
        Assert.Equal(200, (int)line["StatusCode"]!);
        Assert.DoesNotContain((string)Plans.Plan["reference"]!, line.ToJsonString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Request_that_is_told_to_come_back_is_no_failure_in_the_log()
    {
        await using var service = await ServiceProcess.StartAsync([("Limits:Batches", "1")]);
        using var held = new RawConnection(service.Address);
        // Once its head is there, it has the only place until it ends.
        await held.SendHeadAsync(Plans.Path + "/batch", "application/x-ndjson", 100_000_000);
        await held.SendAsync(string.Concat(Enumerable.Repeat("{}".PadRight(60_000) + "\n", 160)));
        await held.ReadUntilAsync("\r\n\r\n");
        var status = 0;
        while (status != 503)
        {
            using var reply = await service.Client.PostAsync(new Uri("/v1/reuse-assessments/batch", UriKind.Relative),
                new StringContent("{}", Encoding.UTF8, "application/x-ndjson"), TestContext.Current.CancellationToken);
            status = (int)reply.StatusCode;
            Assert.True(status is 200 or 503);
        }

        var line = await service.LogLineAsync(line => (int?)line["StatusCode"] == 503);

        // Compact lines leave out the level where it is Information.
        Assert.Null(line["@l"]);
    }

    [Fact]
    public async Task Instance_whose_collector_is_not_there_answers_and_stops_all_the_same()
    {
        // The discard port: nobody listens there.
        await using var service = await ServiceProcess.StartAsync([("Shutdown:UnreadySeconds", "0")],
            ("OTEL_EXPORTER_OTLP_ENDPOINT", "http://127.0.0.1:9"));
        using var reply = await service.Client.PostAsync(new Uri(Plans.Path, UriKind.Relative),
            new StringContent(Plans.Plan.ToJsonString(), Encoding.UTF8, "application/json"), TestContext.Current.CancellationToken);
        Assert.True(reply.IsSuccessStatusCode);
        await service.TerminateAsync();

        Assert.Equal(0, await service.ExitAsync());
    }
}
