using CalcService.Api.Tests.Batches;

namespace CalcService.Api.Tests.Problems;

/// <summary>A request that has to be refused, and what the refusal says.</summary>
public sealed record BadRequest
{
    public required byte[] Body { get; init; }

    public string? ContentType { get; init; } = "application/json";

    /// <summary>What the body is said to be packed by.</summary>
    public string? Encoding { get; init; }

    /// <summary>What it is packed by on the way, and said to be.</summary>
    public string? Packing { get; init; }

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
            var sent = Packing is null ? Body : BatchOutput.Pack(Body, Packing);
            request.Content = IsChunked ? new StreamContent(new OneWayStream(sent)) : new ByteArrayContent(sent);
            request.Headers.TransferEncodingChunked = IsChunked ? true : null;
            if (ContentType is not null)
            {
                request.Content.Headers.TryAddWithoutValidation("Content-Type", ContentType);
            }

            if ((Encoding ?? Packing) is { } encoding)
            {
                request.Content.Headers.TryAddWithoutValidation("Content-Encoding", encoding);
            }
        }

        if (Accept is not null)
        {
            request.Headers.TryAddWithoutValidation("Accept", Accept);
        }

        return request;
    }

    /// <summary>A stream whose length nobody can ask for.</summary>
    private sealed class OneWayStream(byte[] bytes) : MemoryStream(bytes)
    {
        public override bool CanSeek => false;
    }
}
