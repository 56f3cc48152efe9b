using System.IO.Compression;
using System.Net.Http.Headers;

namespace CalcService.Api.Tests.Problems;

/// <summary>A request that has to be refused, and what the refusal says.</summary>
public sealed record BadRequest
{
    public required byte[] Body { get; init; }

    public string? ContentType { get; init; } = "application/json";

    public string? Encoding { get; init; }

    /// <summary>Whether no Content-Length tells how much is coming.</summary>
    public bool IsChunked { get; init; }

    public string Query { get; init; } = "";

    public HttpMethod Method { get; init; } = HttpMethod.Post;

    public string? Accept { get; init; }

    /// <summary>Pointers that have to be among the errors.</summary>
    public IReadOnlyList<string> Pointers { get; init; } = [];

    /// <summary>Code that has to be among the errors.</summary>
    public string? Code { get; init; }

    /// <summary>What the detail of an error has to say.</summary>
    public string? Says { get; init; }

    public static BadRequest Of(string body, string? code = null, params string[] pointers) =>
        new() { Body = System.Text.Encoding.UTF8.GetBytes(body), Code = code, Pointers = pointers };

    public HttpRequestMessage ToMessage(string path)
    {
        var request = new HttpRequestMessage(Method, path + Query);
        if (Method != HttpMethod.Get)
        {
            request.Content = IsChunked ? new StreamContent(new OneWayStream(Body)) : new ByteArrayContent(Body);
            request.Headers.TransferEncodingChunked = IsChunked ? true : null;
            if (ContentType is not null)
            {
                request.Content.Headers.TryAddWithoutValidation("Content-Type", ContentType);
            }

            if (Encoding is not null)
            {
                request.Content.Headers.TryAddWithoutValidation("Content-Encoding", Encoding);
            }
        }

        if (Accept is not null)
        {
            request.Headers.Accept.Add(MediaTypeWithQualityHeaderValue.Parse(Accept));
        }

        return request;
    }

    public static byte[] Gzip(ReadOnlySpan<byte> bytes)
    {
        using var packed = new MemoryStream();
        using (var gzip = new GZipStream(packed, CompressionLevel.Fastest))
        {
            gzip.Write(bytes);
        }

        return packed.ToArray();
    }

    public static byte[] Brotli(ReadOnlySpan<byte> bytes)
    {
        using var packed = new MemoryStream();
        using (var brotli = new BrotliStream(packed, CompressionLevel.Fastest))
        {
            brotli.Write(bytes);
        }

        return packed.ToArray();
    }

    /// <summary>A stream whose length nobody can ask for.</summary>
    private sealed class OneWayStream(byte[] bytes) : MemoryStream(bytes)
    {
        public override bool CanSeek => false;
    }
}
