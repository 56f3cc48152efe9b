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
    /// <summary>The whole service as the program starts it.</summary>
    public static async Task<WebApplication> StartServiceAsync()
    {
        var service = ServiceHost.Create(["--urls", "http://127.0.0.1:0"]);
        await service.StartAsync();
        return service;
    }

    /// <summary>
    /// An endpoint that only parses and writes the same two bodies. /typed binds the request to the same records and
    /// serialises the same answer, as the framework does it by itself; /plain only checks that the request is JSON and
    /// copies the answer's bytes.
    /// </summary>
    public static async Task<WebApplication> StartEchoAsync(object answer, byte[] answerBytes)
    {
        var builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        builder.WebHost.ConfigureKestrel(kestrel => kestrel.Listen(IPAddress.Loopback, 0));
        var echo = builder.Build();
        echo.MapPost("/typed", async (HttpContext http) =>
        {
            var request = await JsonSerializer.DeserializeAsync<PourPlanRequest>(http.Request.Body, ApiJson.Options, http.RequestAborted);
            ArgumentNullException.ThrowIfNull(request);
            var bytes = JsonSerializer.SerializeToUtf8Bytes(answer, typeof(Answer<PourPlanResult>), ApiJson.Options);
            await WriteAsync(http, bytes);
        });
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

    private static async Task WriteAsync(HttpContext http, byte[] bytes)
    {
        http.Response.ContentType = "application/json";
        http.Response.ContentLength = bytes.Length;
        await http.Response.Body.WriteAsync(bytes, http.RequestAborted);
    }
}
