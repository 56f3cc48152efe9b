using Microsoft.AspNetCore.Server.Kestrel.Core;

namespace CalcService.Api.Hosting;

/// <summary>What the server itself holds clients to, each said rather than left to the framework.</summary>
public static class ServerLimits
{
    /// <summary>A client that is slow for less than this is not given up.</summary>
    private static readonly TimeSpan Grace = TimeSpan.FromSeconds(5);

    public static void Apply(KestrelServerOptions kestrel, ServiceSettings settings)
    {
        kestrel.AddServerHeader = false;
        var limits = kestrel.Limits;
        // Bodies are counted by our own reader, decoded and for batches without end.
        limits.MaxRequestBodySize = null;
        limits.MaxRequestHeadersTotalSize = Limits.HeaderBytes;
        limits.MaxRequestHeaderCount = 100;
        limits.MaxRequestLineSize = 8 << 10;
        limits.MaxConcurrentConnections = settings.Value(ServiceSettings.Connections);
        limits.RequestHeadersTimeout = settings.Time(ServiceSettings.HeaderSeconds);
        limits.KeepAliveTimeout = TimeSpan.FromSeconds(130);
        limits.MinRequestBodyDataRate = new(settings.Value(ServiceSettings.BytesPerSecond), Grace);
        limits.MinResponseDataRate = new(settings.Value(ServiceSettings.BytesPerSecond), Grace);
    }
}
