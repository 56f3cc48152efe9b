using System.Globalization;
using System.Threading.RateLimiting;
using CalcService.Api.OpenApi;
using CalcService.Api.Problems;

namespace CalcService.Api.Hosting;

/// <summary>
/// Who is let in: so many calculations and so many batches at once, the rest is told to come back (503); and where a
/// quota is set, so many a minute from one client (429). Nobody waits in a line that he can't see.
/// </summary>
public static class Admission
{
    /// <summary>The header by which a gateway names the client. Without it a client is its address.</summary>
    public const string ClientHeaderKey = "Quota:ClientHeader";

    private const int LongestClientName = 128;

    public static void AddAdmission(this IServiceCollection services, ServiceSettings settings, string? clientHeader) =>
        services.AddRateLimiter(options =>
    {
        var atOnce = PartitionedRateLimiter.Create<HttpContext, string>(http => IsBatch(http) switch
        {
            null => RateLimitPartition.GetNoLimiter("free"),
            true => AtOnce("batches", settings.Value(ServiceSettings.Batches)),
            false => AtOnce("requests", settings.Value(ServiceSettings.Requests)),
        });
        options.GlobalLimiter = settings.Value(ServiceSettings.RequestsPerMinute) is var quota && quota > 0
            ? PartitionedRateLimiter.CreateChained(AMinute(quota, clientHeader), atOnce)
            : atOnce;
        options.OnRejected = async (rejected, _) => await RefuseAsync(rejected.HttpContext, rejected.Lease);
    });

    /// <summary>Whether a batch is asked for; null where it is no calculation.</summary>
    private static bool? IsBatch(HttpContext http) => http.GetEndpoint()?.Metadata.GetMetadata<CalculationMetadata>()?.IsBatch;

    private static RateLimitPartition<string> AtOnce(string name, int most) =>
        RateLimitPartition.GetConcurrencyLimiter(name, _ => new() { PermitLimit = most, QueueLimit = 0 });

    private static PartitionedRateLimiter<HttpContext> AMinute(int quota, string? clientHeader) =>
        PartitionedRateLimiter.Create<HttpContext, string>(http =>
        IsBatch(http) is null
            ? RateLimitPartition.GetNoLimiter("free")
            : RateLimitPartition.GetFixedWindowLimiter(Client(http, clientHeader),
            _ => new() { PermitLimit = quota, Window = TimeSpan.FromMinutes(1), QueueLimit = 0 }));

    private static string Client(HttpContext http, string? header)
    {
        var name = header is null ? "" : http.Request.Headers[header].ToString();
        return name.Length is > 0 and <= LongestClientName ? "named " + name : "at " + http.Connection.RemoteIpAddress;
    }

    /// <summary>Only a quota knows when there is room again.</summary>
    private static Task RefuseAsync(HttpContext http, RateLimitLease lease)
    {
        if (!lease.TryGetMetadata(MetadataName.RetryAfter, out var wait))
        {
            ServiceLog.MarkShed(http);
            return ProblemWriter.WriteAsync(http,
                ProblemKinds.Unavailable.With(
                "As many calculations as this instance takes at once are in work; send the request again as Retry-After says."));
        }

        http.Response.Headers.RetryAfter = Math.Max(1, (int)Math.Ceiling(wait.TotalSeconds)).ToString(CultureInfo.InvariantCulture);
        return ProblemWriter.WriteAsync(http, ProblemKinds.TooManyRequests.With());
    }
}
