using System.Globalization;
using System.Net.Sockets;
using System.Text;

namespace CalcService.Api.Tests.Fixtures;

/// <summary>A bare connection: HttpClient sends a whole HTTP/1.1 body before it reads anything, and never half a head.</summary>
public sealed class RawConnection : IDisposable
{
    private readonly TcpClient _socket;
    private readonly Uri _address;
    private readonly MemoryStream _seen = new();

    public RawConnection(Uri address)
    {
        _address = address;
        _socket = new TcpClient(address.Host, address.Port);
    }

    private NetworkStream Stream => _socket.GetStream();

    /// <summary>The head of a POST; the connection closes after its answer.</summary>
    public Task SendHeadAsync(string path, string type, long? length, string more = "") => SendAsync(
        $"POST {path} HTTP/1.1\r\nHost: {_address.Authority}\r\nContent-Type: {type}\r\n"
        + (length is { } known ? string.Create(CultureInfo.InvariantCulture, $"Content-Length: {known}\r\n")
        : "Transfer-Encoding: chunked\r\n")
        + $"Connection: close\r\n{more}\r\n");

    public Task SendAsync(string text) => SendAsync(Encoding.UTF8.GetBytes(text));

    public async Task SendAsync(ReadOnlyMemory<byte> bytes) => await Stream.WriteAsync(bytes, TestContext.Current.CancellationToken);

    /// <summary>What came back so far, a character for a byte.</summary>
    public string Seen => Encoding.Latin1.GetString(_seen.GetBuffer(), 0, (int)_seen.Length);

    /// <summary>Whether something has come back that nobody has taken yet.</summary>
    public bool HasAnswer => _socket.Available > 0;

    /// <summary>Waits for more to come back and takes so much of it at the most; false at the end.</summary>
    public async Task<bool> ReadSomeAsync(int most)
    {
        var buffer = new byte[most];
        var read = await Stream.ReadAsync(buffer, TestContext.Current.CancellationToken);
        _seen.Write(buffer.AsSpan(0, read));
        return read > 0;
    }

    /// <summary>Reads until the text has come.</summary>
    public async Task ReadUntilAsync(string text)
    {
        while (!Seen.Contains(text, StringComparison.Ordinal))
        {
            Assert.True(await ReadSomeAsync(64 << 10), $"The answer ended without {text}: {Seen}");
        }
    }

    /// <summary>The answer, once the service has closed the connection.</summary>
    public async Task<RawReply> ReadToEndAsync()
    {
        try
        {
            await Stream.CopyToAsync(_seen, TestContext.Current.CancellationToken);
        }
        catch (IOException)
        {
            // Cut off; what came before counts.
        }

        return RawReply.Parse(_seen.ToArray());
    }

    /// <summary>Resets the connection rather than ending it.</summary>
    public void Reset()
    {
        _socket.LingerState = new LingerOption(enable: true, seconds: 0);
        _socket.Dispose();
    }

    public void Dispose()
    {
        _socket.Dispose();
        _seen.Dispose();
    }
}

/// <summary>What came back over a bare connection; chunks are put together as far as they came.</summary>
public sealed record RawReply(int Status, string Head, byte[] Body)
{
    public string Text => Encoding.UTF8.GetString(Body);

    public static RawReply Parse(byte[] bytes)
    {
        var end = bytes.AsSpan().IndexOf("\r\n\r\n"u8);
        Assert.True(end > 0, $"No answer but \"{Encoding.Latin1.GetString(bytes)}\".");
        var head = Encoding.Latin1.GetString(bytes.AsSpan(0, end));
        var body = bytes[(end + 4)..];
        var status = int.Parse(head.AsSpan(9, 3), CultureInfo.InvariantCulture);
        return new(status, head, head.Contains("Transfer-Encoding: chunked", StringComparison.OrdinalIgnoreCase) ? Unchunked(body) : body);
    }

    /// <summary>RFC 9112, section 7.1.</summary>
    private static byte[] Unchunked(ReadOnlySpan<byte> chunked)
    {
        using var whole = new MemoryStream();
        while (chunked.IndexOf("\r\n"u8) is var end and > 0)
        {
            var length = int.Parse(chunked[..end], NumberStyles.HexNumber, CultureInfo.InvariantCulture);
            var rest = chunked[(end + 2)..];
            whole.Write(rest[..Math.Min(length, rest.Length)]);
            if (length == 0 || rest.Length < length + 2)
            {
                break;
            }

            chunked = rest[(length + 2)..];
        }

        return whole.ToArray();
    }
}
