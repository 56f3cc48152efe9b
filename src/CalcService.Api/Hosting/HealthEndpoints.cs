using CalcService.Api.Calculations;

namespace CalcService.Api.Hosting;

/// <summary>State of an instance.</summary>
public sealed record Health
{
    /// <summary>live, ready or unready.</summary>
    public required string Status { get; init; }
}

/// <summary>Probes for whoever runs the service.</summary>
public static class HealthEndpoints
{
    private const string Tag = "Operation";

    public static void MapHealth(this IEndpointRouteBuilder app)
    {
        app.MapRead("/health/live", CalculationEndpoint.MediaType, () => Results.Json(new Health { Status = "live" }, ApiJson.Options))
            .Describe<Health>("getLive", "Whether the process runs", Tag)
            .WithDescription("For whoever restarts instances. Says nothing about calculations.")
            .ProducesProblems(ReadOnlyAddress.Refusals)
            .DisableHttpMetrics();
        app.MapRead("/health/ready", CalculationEndpoint.MediaType, (Readiness readiness) => readiness.IsReady
                ? Results.Json(new Health { Status = "ready" }, ApiJson.Options)
                : Results.Json(new Health { Status = "unready" }, ApiJson.Options, statusCode: 503))
            .Describe<Health>("getReady", "Whether it takes calculations", Tag)
            .WithDescription(
            "For whoever sends requests to instances: 503 until the self-test has passed, and from the moment it is told to stop.")
            .Produces<Health>(503, CalculationEndpoint.MediaType)
            .ProducesProblems(ReadOnlyAddress.Refusals)
            .DisableHttpMetrics();
    }
}
