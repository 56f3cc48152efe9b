using System.Text;
using CalcService.Api.Batches;
using CalcService.Api.Calculations;
using CalcService.Api.Tests.Batches;
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
        .. new[] { "text/plain", "application/xml", "text/json", "multipart/form-data; boundary=x", "application/*", "nonsense" }
            .Select(type => Whole("media type " + type, 415, (request, _) => request with { ContentType = type })),
        .. new[] { "charset=utf-16", "charset=iso-8859-1", "charset=bogus", "charset=" }
            .Select(charset =>
            Whole("media type with " + charset, 415, (request, route) => request with { ContentType = $"{route.MediaType}; {charset}" })),
        Whole("media type of a batch for one, and of one for a batch", 415,
        (request, route) => request with { ContentType = route.IsBatch ? CalculationEndpoint.MediaType : BatchEndpoint.MediaType }),
        Whole("no media type", 415, (request, _) => request with { ContentType = null }),
        Whole("UTF-16, said so", 415, (request, route) => request with
        {
            Body = Encoding.Unicode.GetBytes(route.Examples[0].Body.ToJsonString()),
            ContentType = route.MediaType + "; charset=utf-16",
        }),
        .. new[] { "zstd", "deflate", "compress", "gzip, gzip",
        "bogus" }.Select(encoding => Whole("encoding " + encoding, 415, (request, _) => request with { Encoding = encoding })),
        Whole("plain text labelled gzip", 400, (request, _) => request with { Encoding = "gzip" }),
        Whole("plain text labelled br", 400, (request, _) => request with { Encoding = "br" }),
        Whole("gzip labelled br", 400, (request, _) => request with { Body = Gzip(request), Encoding = "br" }),
        Whole("truncated gzip", 400, (request, _) => request with { Body = Gzip(request)[..^12], Encoding = "gzip" }),
        Whole("truncated br", 400, (request, _) => request with { Body = BatchOutput.Pack(request.Body, "br")[..^12], Encoding = "br" }),
        Whole("corrupt gzip", 400, (request, _) => request with { Body = Corrupt(Gzip(request)), Encoding = "gzip" }),
        new("gzip not labelled", 400, route => Good(route) is var request ? request with { Body = Gzip(request) }
        : null) { NoLine = "What is packed may hold line feeds." },
        Bomb("gzip"),
        Bomb("br"),
        Oversize("oversize with Content-Length", limit => limit + 1, isChunked: false),
        Oversize("oversize without Content-Length", limit => limit + 1, isChunked: true),
        Oversize("far oversize with Content-Length", limit => 3 * limit, isChunked: false),
        Oversize("far oversize without Content-Length", limit => 3 * limit, isChunked: true),
        .. new[] { "?details=full", "?detail=Full", "?detail=", "?detail", "?detail=full&detail=full", "?Detail=full", "?=", "?%00=%FF" }
            .Select(query => Whole("query " + query, 400, (request, _) => request with { Query = query })),
        .. new[] { HttpMethod.Get, HttpMethod.Put, HttpMethod.Patch,
        HttpMethod.Delete }.Select(method => Whole(method.Method, 405, (request, _) => request with { Method = method })),
        Whole("Accept: application/xml", 406, (request, _) => request with { Accept = "application/xml" }),
        Whole("Accept without us", 406,
        (request, route) => request with { Accept = string.Join(", ", route.AnswerTypes.Select(type => type + ";q=0")) }),
    ];

    private static BadInput Whole(string name, int status, Func<BadRequest, CalculationRoute, BadRequest> wrap) =>
        new(name, status, route => wrap(Good(route), route)) { IsWhole = true };

    private static BadRequest Good(CalculationRoute route) => new() { Body = Bytes(route.Examples[0].Body), ContentType = route.MediaType };

    private static byte[] Gzip(BadRequest request) => BatchOutput.Pack(request.Body, "gzip");

    /// <summary>Unpacked it has no line end, so in a batch it is one line.</summary>
    private static BadInput Bomb(string encoding) =>
        new(encoding + " bomb of 256 MiB", 413, _ => new() { Body = new byte[256 << 20], Packing = encoding });

    /// <summary>A batch has no limit to its size; there it is a line too long.</summary>
    private static BadInput Oversize(string name, Func<int, int> length, bool isChunked) => new(name, 413, route => new()
    {
        Body = Padded(Bytes(route.Examples[0].Body),
            length(route.Path.StartsWith(ArchivedAnswers.Path, StringComparison.Ordinal) ? VerificationLimit : Limit)),
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
