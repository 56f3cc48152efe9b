using System.Globalization;
using System.Threading.RateLimiting;
using CalcService.Api.OpenApi;
using CalcService.Api.Problems;

namespace CalcService.Api.Hosting;

/// <summary>
/// Where a quota is set, one client gets so many calculations and batches a minute and is told to come back beyond (429). How many are
/// in work at once is for <see cref="Lanes"/>: only who has sent a body takes a place there.
/// </summary>
public static class Admission
{
    /// <summary>The header by which a gateway names the client. Without it a client is its address.</summary>
    public const string ClientHeaderKey = "Quota:ClientHeader";

    private const int LongestClientName = 128;

    public static void AddAdmission(this IServiceCollection services, ServiceSettings settings, string? clientHeader) =>
        services.AddRateLimiter(options =>
    {
        var quota = settings.Value(ServiceSettings.RequestsPerMinute);
        options.GlobalLimiter = quota == 0 ? null : PartitionedRateLimiter.Create<HttpContext, string>(http =>
            http.GetEndpoint()?.Metadata.GetMetadata<CalculationMetadata>() is null
                ? RateLimitPartition.GetNoLimiter("free")
                : RateLimitPartition.GetFixedWindowLimiter(Client(http, clientHeader),
                _ => new() { PermitLimit = quota, Window = TimeSpan.FromMinutes(1), QueueLimit = 0 }));
        options.OnRejected = async (rejected, _) => await RefuseAsync(rejected.HttpContext, rejected.Lease);
    });

    private static string Client(HttpContext http, string? header)
    {
        var name = header is null ? "" : http.Request.Headers[header].ToString();
        return name.Length is > 0 and <= LongestClientName ? "named " + name : "at " + http.Connection.RemoteIpAddress;
    }

    private static Task RefuseAsync(HttpContext http, RateLimitLease lease)
    {
        _ = lease.TryGetMetadata(MetadataName.RetryAfter, out var wait);
        http.Response.Headers.RetryAfter = Math.Max(1, (int)Math.Ceiling(wait.TotalSeconds)).ToString(CultureInfo.InvariantCulture);
        return ProblemWriter.WriteAsync(http, ProblemKinds.TooManyRequests.With());
    }
}
