using System.Globalization;
using System.Net;
using System.Net.Sockets;
using System.Text;

namespace CalcService.Benchmarks.Measuring;

/// <summary>Sends a batch and reads its answer at the same time, as the service asks for above 8 MiB.</summary>
internal static class BatchClient
{
    private const int KeptBytes = 400;

    /// <summary>Sends the lines and gives the end of what came back.</summary>
    public static async Task<string> SendAsync(int port, byte[] lines, int times = 1)
    {
        using var socket = new Socket(AddressFamily.InterNetwork, SocketType.Stream, ProtocolType.Tcp) { NoDelay = true };
        await socket.ConnectAsync(IPAddress.Loopback, port);
        var sending = Task.Run(async () =>
        {
            await SendAllAsync(socket, Encoding.ASCII.GetBytes(string.Create(CultureInfo.InvariantCulture,
                $"POST /v1/pour-plans/batch HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\nContent-Type: "
                    + $"application/x-ndjson\r\nContent-Length: {(long)lines.Length * times}\r\n\r\n")));
            for (var i = 0; i < times; i++)
            {
                await SendAllAsync(socket, lines);
            }
        });
        var buffer = new byte[256 << 10];
        var end = "";
        int read;
        while ((read = await socket.ReceiveAsync(buffer)) > 0)
        {
            // The last line may come in pieces.
            end += Encoding.UTF8.GetString(buffer, Math.Max(0, read - KeptBytes), Math.Min(read, KeptBytes));
            end = end[Math.Max(0, end.Length - KeptBytes)..];
        }

        await sending;
        return end.Contains("\"summary\"", StringComparison.Ordinal) ? end : throw new IOException("The batch was cut: " + end);
    }

    private static async Task SendAllAsync(Socket socket, ReadOnlyMemory<byte> bytes)
    {
        while (!bytes.IsEmpty)
        {
            bytes = bytes[await socket.SendAsync(bytes)..];
        }
    }
}
