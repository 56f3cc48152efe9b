namespace CalcService.Api.Hosting;

/// <summary>Lets pages of other origins call the service. Off where no origin is named.</summary>
public static class CrossOrigin
{
    /// <summary>Origins that may, with commas between them.</summary>
    public const string Key = "Cors:Origins";

    /// <exception cref="StartRefusedException">What stands there is no origin.</exception>
    public static IReadOnlyList<string> Origins(IConfiguration configuration)
    {
        var origins = (configuration[Key] ?? "").Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        return origins.FirstOrDefault(origin => !IsOrigin(origin)) is { } wrong
            ? throw new StartRefusedException(
            $"{Key} has \"{wrong}\"; origins such as https://shop.example are expected, with commas between them.")
            : origins;
    }

    public static void AddCrossOrigin(this IServiceCollection services, IReadOnlyList<string> origins) =>
        services.AddCors(cors => cors.AddDefaultPolicy(policy => policy
        .WithOrigins([.. origins])
        .WithMethods("GET", "POST")
        .WithHeaders("Accept", "Content-Type", "Content-Encoding", "If-None-Match", "traceparent")
        .WithExposedHeaders("Trace-Id", "Batch-Mode", "Retry-After", "ETag")));

    /// <summary>Scheme, host and port, and nothing behind them.</summary>
    private static bool IsOrigin(string text) =>
        Uri.TryCreate(text, UriKind.Absolute, out var uri) && uri.Scheme is "http" or "https"
        && uri.GetLeftPart(UriPartial.Authority) == text;
}
