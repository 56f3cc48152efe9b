using System.Text;
using CalcService.Api.Tests.Fixtures;
using static CalcService.Api.Tests.Problems.BadInput;

namespace CalcService.Api.Tests.Problems;

/// <summary>Good bodies in a bad wrapping, and wrappings too large.</summary>
internal static class BadTransport
{
    private const int Limit = 1 << 20;

    /// <summary>A verification brings an archived answer along.</summary>
    private const int VerificationLimit = 4 << 20;

    public static IReadOnlyList<BadInput> Rows { get; } =
    [
        .. new[]
        {
            "application/json; charset=utf-16", "application/json; charset=iso-8859-1", "application/json; charset=bogus", "application/json; charset=",
            "text/plain", "application/xml", "text/json", "application/x-ndjson", "multipart/form-data; boundary=x", "application/*", "nonsense",
        }.Select(type => Good("media type " + type, 415, request => request with { ContentType = type })),
        Good("no media type", 415, request => request with { ContentType = null }),
        new("UTF-16, said so", 415, route => new() { Body = Encoding.Unicode.GetBytes(route.Examples[0].Body.ToJsonString()), ContentType = "application/json; charset=utf-16" }),
        .. new[] { "zstd", "deflate", "compress", "gzip, gzip", "bogus" }.Select(encoding => Good("encoding " + encoding, 415, request => request with { Encoding = encoding })),
        Good("plain text labelled gzip", 400, request => request with { Encoding = "gzip" }),
        Good("plain text labelled br", 400, request => request with { Encoding = "br" }),
        Good("gzip not labelled", 400, request => request with { Body = BadRequest.Gzip(request.Body) }),
        Good("gzip labelled br", 400, request => request with { Body = BadRequest.Gzip(request.Body), Encoding = "br" }),
        Good("truncated gzip", 400, request => request with { Body = BadRequest.Gzip(request.Body)[..^12], Encoding = "gzip" }),
        Good("truncated br", 400, request => request with { Body = BadRequest.Brotli(request.Body)[..^12], Encoding = "br" }),
        Good("corrupt gzip", 400, request => request with { Body = Corrupt(BadRequest.Gzip(request.Body)), Encoding = "gzip" }),
        Good("gzip bomb of 256 MiB", 413, request => request with { Body = BadRequest.Gzip(new byte[256 << 20]), Encoding = "gzip" }),
        Good("brotli bomb of 256 MiB", 413, request => request with { Body = BadRequest.Brotli(new byte[256 << 20]), Encoding = "br" }),
        Oversize("oversize with Content-Length", limit => limit + 1, isChunked: false),
        Oversize("oversize without Content-Length", limit => limit + 1, isChunked: true),
        Oversize("far oversize with Content-Length", limit => 3 * limit, isChunked: false),
        Oversize("far oversize without Content-Length", limit => 3 * limit, isChunked: true),
        Good("unknown query parameter", 400, request => request with { Query = "?details=full" }),
        Good("unknown value of detail", 400, request => request with { Query = "?detail=Full" }),
        Good("detail twice", 400, request => request with { Query = "?detail=full&detail=full" }),
        Good("GET", 405, request => request with { Method = HttpMethod.Get }),
        Good("PUT", 405, request => request with { Method = HttpMethod.Put }),
        Good("Accept: application/xml", 406, request => request with { Accept = "application/xml" }),
        Good("Accept without us", 406, request => request with { Accept = "application/json; q=0" }),
    ];

    private static BadInput Good(string name, int status, Func<BadRequest, BadRequest> wrap) =>
        new(name, status, route => wrap(new() { Body = Bytes(route.Examples[0].Body) }));

    private static BadInput Oversize(string name, Func<int, int> length, bool isChunked) => new(name, 413, route => new()
    {
        Body = Padded(Bytes(route.Examples[0].Body), length(route.Path.StartsWith(ArchivedAnswers.Path, StringComparison.Ordinal) ? VerificationLimit : Limit)),
        IsChunked = isChunked,
    });

    private static byte[] Corrupt(byte[] packed)
    {
        for (var i = packed.Length / 3; i < packed.Length / 2; i++)
        {
            packed[i] ^= 0x5A;
        }

        return packed;
    }

    /// <summary>White space after the end: the body stays good JSON, so only its size can be wrong.</summary>
    private static byte[] Padded(byte[] body, int length) => [.. body, .. Enumerable.Repeat((byte)' ', length - body.Length)];
}
