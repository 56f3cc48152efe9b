using System.IO.Compression;
using CalcService.Api.Batches;
using Microsoft.AspNetCore.ResponseCompression;

namespace CalcService.Api.Hosting;

/// <summary>
/// Packs the output of batches where the client takes gzip: they are long and alike. Single answers are left to the gateway.
/// </summary>
public static class BatchCompression
{
    public static void AddBatchCompression(this IServiceCollection services)
    {
        services.AddResponseCompression(options =>
        {
            options.Providers.Add<GzipCompressionProvider>();
            options.MimeTypes = [BatchEndpoint.MediaType];
            // Answers hold no secrets that their length could give away.
            options.EnableForHttps = true;
        });
        services.Configure<GzipCompressionProviderOptions>(gzip => gzip.Level = CompressionLevel.Fastest);
    }
}
