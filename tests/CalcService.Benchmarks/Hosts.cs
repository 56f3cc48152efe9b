using System.Net;
using System.Text.Json;
using CalcService.Api;
using CalcService.Api.Capabilities.Pouring;
using CalcService.Api.Contract;
using CalcService.Api.Hosting;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

namespace CalcService.Benchmarks;

/// <summary>The service and what it is compared with, both on Kestrel in this process.</summary>
internal static class Hosts
{
    /// <summary>The whole service as the program starts it, and in it endpoints that only parse a request and write an answer.</summary>
    public static async Task<WebApplication> StartServiceAsync(params IEnumerable<(string Path, object Answer)> echoes)
    {
        var service = ServiceHost.Create(["--urls", "http://127.0.0.1:0"]);
        foreach (var (path, answer) in echoes)
        {
            MapTyped(service, path, answer);
        }

        await service.StartAsync();
        return service;
    }

    /// <summary>
    /// A bare server without a log, with an endpoint that parses and writes and with /plain, which only checks that the
    /// request is JSON and copies the answer's bytes.
    /// </summary>
    public static async Task<WebApplication> StartEchoAsync(object answer, byte[] answerBytes)
    {
        var builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        builder.WebHost.ConfigureKestrel(kestrel => kestrel.Listen(IPAddress.Loopback, 0));
        var echo = builder.Build();
        MapTyped(echo, "/typed", answer);
        echo.MapPost("/plain", async (HttpContext http) =>
        {
            using var request = await JsonDocument.ParseAsync(http.Request.Body, default, http.RequestAborted);
            await WriteAsync(http, answerBytes);
        });
        await echo.StartAsync();
        return echo;
    }

    public static int PortOf(WebApplication app) =>
        new Uri(app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First()).Port;

    /// <summary>Binds the request to the same records and serialises the same answer, as the framework does it by itself.</summary>
    private static void MapTyped(WebApplication app, string path, object answer) => app.MapPost(path, async (HttpContext http) =>
    {
        var request = await JsonSerializer.DeserializeAsync<PourPlanRequest>(http.Request.Body, ApiJson.Options, http.RequestAborted);
        ArgumentNullException.ThrowIfNull(request);
        await WriteAsync(http, JsonSerializer.SerializeToUtf8Bytes(answer, typeof(Answer<PourPlanResult>), ApiJson.Options));
    });

    private static async Task WriteAsync(HttpContext http, byte[] bytes)
    {
        http.Response.ContentType = "application/json";
        http.Response.ContentLength = bytes.Length;
        await http.Response.Body.WriteAsync(bytes, http.RequestAborted);
    }
}
