using CalcService.Api.Hosting;
using CalcService.Api.Telemetry;
using CalcService.Api.Tests.Fixtures;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using OpenTelemetry.Metrics;
using OpenTelemetry.Trace;

namespace CalcService.Api.Tests.Telemetry;

public sealed class ExportTests(Service service)
{
    private const string Metrics = "/v1/metrics";
    private const string Traces = "/v1/traces";

    [Fact]
    public void Service_without_a_collector_starts_nothing_that_could_send()
    {
        Assert.Null(service.Services.GetService<MeterProvider>());
        Assert.Null(service.Services.GetService<TracerProvider>());
    }

    [Fact]
    public async Task Collector_gets_metrics_and_traces_with_the_build_that_made_them()
    {
        await using var collector = await Collector.StartAsync();
        string build;
        await using (var sending = new Service((Export.Key, collector.Address), ("OTEL_EXPORTER_OTLP_PROTOCOL", "http/protobuf")))
        {
            build = (string)(await sending.GetAsync("/v1/build")).Json["build"]!;
            await sending.AnswerAsync(Plans.Path, Plans.Plan);
            await SendAsync(sending, () => collector.HasText(Metrics, "http.server.request.duration")
                && collector.HasText(Traces, "POST /v1/pour-plans"));
        }

        Assert.All(["CalcService", "service.version", build, "calcservice.engine"], text =>
        {
            Assert.True(collector.HasText(Metrics, text), text);
            Assert.True(collector.HasText(Traces, text), text);
        });
        Assert.All([Measurements.Duration, "proceedWithCare", "http.server.request.duration"],
            text => Assert.True(collector.HasText(Metrics, text), text));
        Assert.True(collector.HasNumbers(Metrics, Buckets.Calculation));
        Assert.True(collector.HasNumbers(Metrics, Buckets.Request));
        Assert.All(["calculate pour-plans", "POST /v1/pour-plans"], text => Assert.True(collector.HasText(Traces, text), text));
    }

    [Fact]
    public async Task Probes_are_neither_measured_nor_traced()
    {
        await using var collector = await Collector.StartAsync();
        await using (var sending = new Service((Export.Key, collector.Address), ("OTEL_EXPORTER_OTLP_PROTOCOL", "http/protobuf")))
        {
            await sending.GetAsync("/v1/units");
            await sending.GetAsync("/health/live");
            await sending.GetAsync("/health/ready");
            await SendAsync(sending, () => collector.HasText(Metrics, "/v1/units") && collector.HasText(Traces, "/v1/units"));
        }

        Assert.All([Metrics, Traces], path =>
        {
            Assert.True(collector.HasText(path, "/v1/units"), path);
            Assert.False(collector.HasText(path, "/health/"), path);
        });
    }

    /// <summary>A request is measured after its answer has gone out, so what is sent at once may lack it.</summary>
    private static async Task SendAsync(Service sending, Func<bool> isThere)
    {
        for (var round = 0; round < 300 && !isThere(); round++)
        {
            await Task.Delay(100, TestContext.Current.CancellationToken);
            sending.Services.GetRequiredService<MeterProvider>().ForceFlush();
            sending.Services.GetRequiredService<TracerProvider>().ForceFlush();
        }
    }

    [Theory]
    [InlineData("collector")]
    [InlineData("127.0.0.1:4317")]
    [InlineData("ftp://collector.example")]
    [InlineData("/v1/metrics")]
    public void Address_that_is_none_refuses_the_start_and_says_which(string text)
    {
        var configuration = new ConfigurationBuilder().AddInMemoryCollection([new(Export.Key, text)]).Build();
        var refused = Assert.Throws<StartRefusedException>(() => new ServiceCollection().AddMeasurements(configuration));

        Assert.StartsWith($"{Export.Key} is \"{text}\"", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Buckets_part_the_work_of_fifty_microseconds_and_reach_the_time_at_which_it_is_given_up()
    {
        Assert.Equal(Buckets.Calculation.Order().Distinct(), Buckets.Calculation);
        Assert.Equal(Buckets.Request.Order().Distinct(), Buckets.Request);
        // Three edges within one decade around 50 µs, where the defaults of OpenTelemetry's semantic conventions begin at 5 ms.
        Assert.InRange(Buckets.Calculation.Count(edge => edge is >= 16e-6 and <= 160e-6), 3, int.MaxValue);
        Assert.Equal(ServiceSettings.CalculationSeconds.Default, Buckets.Calculation[^1]);
    }
}
