using System.Collections.Concurrent;
using System.Text;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.Logging;

namespace CalcService.Api.Tests.Telemetry;

/// <summary>Takes what an exporter sends by OTLP over HTTP, and keeps the bytes.</summary>
public sealed class Collector : IAsyncDisposable
{
    private readonly WebApplication _app;
    private readonly ConcurrentQueue<(string Path, byte[] Body)> _received = new();

    private Collector(WebApplication app) => _app = app;

    public string Address => _app.Urls.Single();

    public static async Task<Collector> StartAsync()
    {
        var builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        builder.WebHost.UseUrls("http://127.0.0.1:0");
        var collector = new Collector(builder.Build());
        collector._app.Run(collector.TakeAsync);
        await collector._app.StartAsync(TestContext.Current.CancellationToken);
        return collector;
    }

    /// <summary>Everything that came to a path, in the order of its coming.</summary>
    public byte[] Received(string path) => [.. _received.Where(one => one.Path == path).SelectMany(one => one.Body)];

    /// <summary>Texts stand in protocol buffers as they are.</summary>
    public bool HasText(string path, string text) => Has(path, Encoding.UTF8.GetBytes(text));

    /// <summary>Packed doubles stand in protocol buffers as their bytes, little-endian.</summary>
    public bool HasNumbers(string path, IEnumerable<double> numbers) => Has(path, [.. numbers.SelectMany(BitConverter.GetBytes)]);

    public ValueTask DisposeAsync() => _app.DisposeAsync();

    private bool Has(string path, byte[] bytes) => Received(path).AsSpan().IndexOf(bytes) >= 0;

    private async Task TakeAsync(HttpContext http)
    {
        using var body = new MemoryStream();
        await http.Request.Body.CopyToAsync(body);
        _received.Enqueue((http.Request.Path, body.ToArray()));
    }
}
