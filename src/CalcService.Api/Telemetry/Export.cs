using System.Reflection;
using CalcService.Api.Contract;
using CalcService.Api.Hosting;
using CalcService.Engine;
using OpenTelemetry.Metrics;
using OpenTelemetry.Resources;
using OpenTelemetry.Trace;

namespace CalcService.Api.Telemetry;

/// <summary>
/// Sends metrics and traces to a collector by OTLP where one is named, under the names that OpenTelemetry gave its
/// settings. Where none is, nothing of it is even started.
/// </summary>
public static class Export
{
    /// <summary>
    /// The collector. The exporter reads its address itself, and of OpenTelemetry's variables for addresses it knows this one alone.
    /// </summary>
    public const string Key = "OTEL_EXPORTER_OTLP_ENDPOINT";

    private const string ProtocolKey = "OTEL_EXPORTER_OTLP_PROTOCOL";
    private const string RequestDuration = "http.server.request.duration";
    private static readonly string[] ServerMeters = ["Microsoft.AspNetCore.Hosting", "Microsoft.AspNetCore.Server.Kestrel",
        "Microsoft.AspNetCore.RateLimiting"];

    /// <exception cref="StartRefusedException">What stands there is no address.</exception>
    public static void AddMeasurements(this IServiceCollection services, IConfiguration configuration)
    {
        services.AddSingleton<Measurements>();
        if (!IsNamed(configuration))
        {
            return;
        }

        CheckProtocol(configuration);
        services.AddOpenTelemetry()
            .ConfigureResource(Describe)
            .WithMetrics(meters => meters
                .AddMeter([Measurements.Name, .. ServerMeters])
                .AddView(RequestDuration, new ExplicitBucketHistogramConfiguration { Boundaries = [.. Buckets.Request] })
                .AddOtlpExporter())
            .WithTracing(activities => activities
                .AddSource(Measurements.Name)
                // Probes would drown everything else, as in the log.
                .AddAspNetCoreInstrumentation(server => server.Filter = http =>
                !http.Request.Path.StartsWithSegments("/health", StringComparison.Ordinal))
                .AddOtlpExporter());
    }

    /// <exception cref="StartRefusedException">It is another than the exporter knows, which would then take its own.</exception>
    private static void CheckProtocol(IConfiguration configuration)
    {
        if (configuration[ProtocolKey] is { } text and not ("" or "grpc" or "http/protobuf"))
        {
            throw new StartRefusedException($"{ProtocolKey} is \"{text}\"; grpc or http/protobuf is expected.");
        }
    }

    private static bool IsNamed(IConfiguration configuration) => configuration[Key] switch
    {
        // As OpenTelemetry has it, empty is the same as not set.
        null or "" => false,
        { } text when Uri.TryCreate(text, UriKind.Absolute, out var uri) && uri.Scheme is "http" or "https" => true,
        { } text =>
            throw new StartRefusedException($"{Key} is \"{text}\"; the address of a collector such as http://127.0.0.1:4317 is expected."),
    };

    /// <summary>Which build it is. What the environment says of itself (OTEL_SERVICE_NAME, OTEL_RESOURCE_ATTRIBUTES) goes before.</summary>
    private static void Describe(ResourceBuilder resource) => resource
        .AddService(Measurements.Name,
        serviceVersion: typeof(Export).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion)
        .AddAttributes([new("calcservice.engine", EngineVersion.Newest), new("calcservice.contract", ContractVersion.Text)])
        .AddEnvironmentVariableDetector();
}
