using System.Text.Json;
using CalcService.Api.Calculations;
using CalcService.Api.Hosting;
using CalcService.Api.Writing;
using Microsoft.Net.Http.Headers;

namespace CalcService.Api.Catalogues;

/// <summary>Something that doesn't change while the service runs, written once, with its ETag.</summary>
public sealed class Representation
{
    private readonly byte[] _body;
    private readonly string _type;
    private readonly EntityTagHeaderValue _tag;

    public Representation(object content)
        : this(JsonSerializer.SerializeToUtf8Bytes(content, content.GetType(), ApiJson.Options), CalculationEndpoint.MediaType)
    {
    }

    public Representation(byte[] body, string type)
    {
        _body = body;
        _type = type;
        _tag = new EntityTagHeaderValue($"\"{Digest.Of(_body)[7..39]}\"");
    }

    /// <summary>The content, or 304 where the client has it already.</summary>
    public async Task WriteAsync(HttpContext http)
    {
        http.Response.Headers.ETag = _tag.ToString();
        http.Response.Headers.CacheControl = "no-cache";
        if (IsKnownTo(http.Request))
        {
            http.Response.StatusCode = StatusCodes.Status304NotModified;
            return;
        }

        http.Response.ContentType = _type;
        http.Response.ContentLength = _body.Length;
        await http.Response.Body.WriteAsync(_body, http.RequestAborted);
    }

    /// <summary>Compared weakly, as RFC 9110 asks for If-None-Match: a proxy that compresses weakens the tag.</summary>
    private bool IsKnownTo(HttpRequest request) =>
        EntityTagHeaderValue.TryParseList(request.Headers.IfNoneMatch, out var known)
        && known.Any(tag => tag.Equals(EntityTagHeaderValue.Any) || tag.Compare(_tag, useStrongComparison: false));
}
