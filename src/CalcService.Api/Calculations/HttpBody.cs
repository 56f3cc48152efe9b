using System.IO.Compression;
using System.Net.Http.Headers;
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

    /// <summary>The decoded body as a stream.</summary>
    public static Stream Open(HttpRequest request) => Encoding(request) switch
    {
        "gzip" => new GZipStream(new SentBytes(request), CompressionMode.Decompress),
        "br" => new BrotliStream(new SentBytes(request), CompressionMode.Decompress),
        _ => new SentBytes(request),
    };

    /// <summary>Whether a failure while reading means that the body doesn't match its Content-Encoding.</summary>
    public static bool IsBadEncoding(Exception failure) => failure is InvalidDataException or InvalidOperationException;

    /// <summary>What is said then.</summary>
    public static Problem BadEncoding() => ProblemKinds.Unreadable.With("The body is not what its Content-Encoding says.");

    /// <summary>The whole body up to a limit, in the time there is for it.</summary>
    public static async Task<(byte[] Bytes, Problem? Problem)> ReadAsync(HttpRequest request, int limit, CancellationToken time)
    {
        if (request.ContentLength > limit)
        {
            return ([], TooLarge(limit));
        }

        var body = new byte[Math.Max(4096, (int)(request.ContentLength ?? 0) + 1)];
        var length = 0;
        await using var stream = Open(request);
        try
        {
            int read;
            while ((read = await stream.ReadAsync(body.AsMemory(length), time)) > 0)
            {
                length += read;
                if (length > limit)
                {
                    return ([], TooLarge(limit));
                }

                if (length == body.Length)
                {
                    Array.Resize(ref body, Math.Min(2 * length, limit + 1));
                }
            }
        }
        catch (Exception failure) when (IsBadEncoding(failure))
        {
            return ([], BadEncoding());
        }
        catch (OperationCanceledException) when (!request.HttpContext.RequestAborted.IsCancellationRequested)
        {
            return ([], ProblemKinds.RequestTimeout.With());
        }

        return (length == body.Length ? body : body[..length], null);
    }

    private static Problem TooLarge(int limit) => ProblemKinds.TooLarge.With($"The body is larger than {limit} bytes.");

    private static string Encoding(HttpRequest request) => request.Headers.ContentEncoding.ToString().Trim().ToLowerInvariant();
}
