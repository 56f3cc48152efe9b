using System.Net.Sockets;

namespace CalcService.Api.Hosting;

/// <summary>Starts to listen, where the addresses that were set let it.</summary>
public static class Listening
{
    /// <exception cref="StartRefusedException">An address is taken, is none, or can't be had.</exception>
    public static async Task StartAsync(WebApplication app)
    {
        try
        {
            await app.StartAsync();
        }
        catch (Exception failure) when (failure is IOException or SocketException or FormatException or ArgumentException
            or InvalidOperationException)
        {
            var addresses = app.Configuration[WebHostDefaults.ServerUrlsKey] is { } named ? " at " + named : "";
            throw new StartRefusedException($"The service can't listen{addresses}: {failure.Message.Split('\n')[0].Trim()}", failure);
        }
    }
}
