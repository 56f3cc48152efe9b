using System.Globalization;
using System.Net;
using System.Net.Sockets;
using System.Text;

namespace CalcService.Benchmarks.Measuring;

/// <summary>
/// Sends the same request again and again over one connection, with as little work as a socket allows, on the calling
/// thread: its own CPU can be taken off the process's.
/// </summary>
internal sealed class RawClient : IDisposable
{
    private readonly Socket _socket = new(AddressFamily.InterNetwork, SocketType.Stream, ProtocolType.Tcp) { NoDelay = true };
    private readonly byte[] _request;
    private readonly byte[] _answer = new byte[256 << 10];

    public RawClient(int port, string path, ReadOnlySpan<byte> body)
    {
        _request =
        [
            .. Encoding.ASCII.GetBytes(string.Create(CultureInfo.InvariantCulture,
                $"POST {path} HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\nContent-Length: {body.Length}\r\n\r\n")),
            .. body,
        ];
        _socket.Connect(IPAddress.Loopback, port);
    }

    /// <summary>One request; the bytes of its answer's body.</summary>
    public ReadOnlySpan<byte> Send()
    {
        Begin();
        return End();
    }

    /// <summary>Sends a request, for others to be sent before it is answered.</summary>
    public void Begin() => _socket.Send(_request);

    /// <summary>Waits for its answer; the bytes of its body.</summary>
    public ReadOnlySpan<byte> End()
    {
        int length = 0, end = -1, size = int.MaxValue;
        while (end < 0 || length < end + size)
        {
            var read = _socket.Receive(_answer.AsSpan(length));
            length += read > 0 ? read : throw new IOException("The connection ended.");
            if (end < 0 && _answer.AsSpan(0, length).IndexOf("\r\n\r\n"u8) is var gap and >= 0)
            {
                end = gap + 4;
                size = ReadSize(_answer.AsSpan(0, end));
            }
        }

        return _answer.AsSpan(end, size);
    }

    public void Dispose() => _socket.Dispose();

    private static int ReadSize(ReadOnlySpan<byte> head)
    {
        if (!head.StartsWith("HTTP/1.1 200"u8))
        {
            throw new IOException(Encoding.ASCII.GetString(head));
        }

        var name = "Content-Length: "u8;
        var rest = head[(head.IndexOf(name) + name.Length)..];
        return int.Parse(rest[..rest.IndexOf((byte)'\r')], CultureInfo.InvariantCulture);
    }
}
