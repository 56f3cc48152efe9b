using System.IO.Compression;
using System.Net.Http.Headers;
using CalcService.Api.Hosting;
using CalcService.Api.Problems;

namespace CalcService.Api.Calculations;

/// <summary>The bytes of a request, decoded and counted. The framework's own binder gives 500 for some of what is refused here.</summary>
public static class HttpBody
{
    /// <summary>The problem with a request's media type and encoding, or null.</summary>
    public static Problem? CheckHeaders(HttpRequest request, string mediaType)
    {
        if (!MediaTypeHeaderValue.TryParse(request.ContentType, out var type)
            || !string.Equals(type.MediaType, mediaType, StringComparison.OrdinalIgnoreCase)
            || (type.CharSet is { } charset && !string.Equals(charset.Trim('"'), "utf-8", StringComparison.OrdinalIgnoreCase)))
        {
            return ProblemKinds.UnsupportedMediaType.With($"Content-Type must be {mediaType}, in UTF-8.");
        }

        return Encoding(request) is "" or "identity" or "gzip" or "br"
            ? null
            : ProblemKinds.UnsupportedMediaType.With("Content-Encoding may be gzip or br.");
    }

    /// <summary>The decoded bytes of those that were sent.</summary>
    public static Stream Decode(HttpRequest request, Stream sent) => Encoding(request) switch
    {
        "gzip" => new GZipStream(sent, CompressionMode.Decompress, leaveOpen: true),
        "br" => new BrotliStream(sent, CompressionMode.Decompress, leaveOpen: true),
        _ => sent,
    };

    /// <summary>Whether a failure while reading means that the body doesn't match its Content-Encoding.</summary>
    public static bool IsBadEncoding(Exception failure) => failure is InvalidDataException or InvalidOperationException;

    /// <summary>What is said then.</summary>
    public static Problem BadEncoding() => ProblemKinds.Unreadable.With("The body is not what its Content-Encoding says.");

    /// <summary>What is said where too much is held for others.</summary>
    public static Problem NoRoom() => ProblemKinds.Unavailable.With(
        "This instance holds as many bytes of requests and answers as it may; send the request again as Retry-After says.");

    /// <summary>
    /// The whole body up to a limit, in the time there is for it. Room is made for what has come, not for what is announced.
    /// </summary>
    public static async Task<(ReadOnlyMemory<byte> Bytes, Problem? Problem)> ReadAsync(
        HttpRequest request, int limit, HeldShare held, CancellationToken time)
    {
        if (request.ContentLength > limit)
        {
            return (default, TooLarge(limit));
        }

        var body = new byte[Math.Clamp((request.ContentLength ?? 0) + 1, 4096, HeldShare.FreeBytes)];
        var length = 0;
        await using var sent = new SentBytes(request);
        await using var stream = Decode(request, sent);
        try
        {
            int read;
            while ((read = await stream.ReadAsync(body.AsMemory(length), time)) > 0)
            {
                length += read;
                if (length > limit)
                {
                    return (default, TooLarge(limit));
                }

                if (length == body.Length)
                {
                    if (!held.TryHold(2 * length))
                    {
                        return (default, NoRoom());
                    }

                    Array.Resize(ref body, Math.Min(2 * length, limit + 1));
                }
            }
        }
        catch (Exception failure) when (IsBadEncoding(failure))
        {
            return (default, BadEncoding());
        }
        catch (OperationCanceledException) when (!request.HttpContext.RequestAborted.IsCancellationRequested)
        {
            return (default, ProblemKinds.RequestTimeout.With());
        }

        return (body.AsMemory(0, length), null);
    }

    private static Problem TooLarge(int limit) => ProblemKinds.TooLarge.With($"The body is larger than {limit} bytes.");

    private static string Encoding(HttpRequest request) => request.Headers.ContentEncoding.ToString().Trim().ToLowerInvariant();
}
