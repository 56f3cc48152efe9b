using System.Buffers;
using Microsoft.AspNetCore.Connections;

namespace CalcService.Api.Hosting;

/// <summary>Sends bytes no faster than the client reads them, and cuts off one that doesn't.</summary>
public sealed class AnswerOutput(HttpContext http, ServiceSettings settings)
{
    /// <summary>So much is handed to the server at once: it waits for the client as soon as it has as much.</summary>
    private const int PieceBytes = 64 << 10;

    private Patience? _patience;

    /// <summary>Takes bytes, to be sent once they are enough.</summary>
    /// <exception cref="ConnectionAbortedException">The client doesn't read; it has been cut off.</exception>
    public async ValueTask WriteAsync(ReadOnlyMemory<byte> bytes)
    {
        for (; bytes.Length > PieceBytes; bytes = bytes[PieceBytes..])
        {
            http.Response.BodyWriter.Write(bytes.Span[..PieceBytes]);
            await SendAsync();
        }

        http.Response.BodyWriter.Write(bytes.Span);
        if (http.Response.BodyWriter.UnflushedBytes >= PieceBytes)
        {
            await SendAsync();
        }
    }

    /// <summary>Sends what is there.</summary>
    /// <exception cref="ConnectionAbortedException">The client doesn't read; it has been cut off.</exception>
    public async ValueTask SendAsync()
    {
        var output = http.Response.BodyWriter;
        var bytes = output.UnflushedBytes;
        if (bytes == 0)
        {
            return;
        }

        var sending = output.FlushAsync(http.RequestAborted);
        if (sending.IsCompleted)
        {
            await sending;
        }
        else
        {
            _patience ??= new(settings);
            try
            {
                await _patience.WaitAsync(sending.AsTask());
            }
            catch (TimeoutException)
            {
                http.Abort();
                throw new ConnectionAbortedException("The client doesn't read its answer.");
            }
        }

        _patience?.Moved(bytes);
    }
}
