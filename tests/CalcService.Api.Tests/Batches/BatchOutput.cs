using System.IO.Compression;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json.Nodes;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Batches;

/// <summary>What a batch gave: its lines, and how it ended.</summary>
public sealed record BatchOutput(int Status, string? Mode, IReadOnlyList<JsonObject> Lines, JsonObject? Summary, JsonObject? Aborted)
{
    public static async Task<BatchOutput> PostAsync(Service service, byte[] body, string? encoding = null, string query = "",
        string path = Plans.Path + "/batch")
    {
        var reply = await service.PostAsync(path + query, Content(body, encoding));
        Assert.True(reply.Status == 200, reply.Text);
        Assert.Equal("application/x-ndjson", reply.MediaType);
        return Parse(reply.Status, reply.Headers.TryGetValues("Batch-Mode", out var mode) ? mode.Single() : null, reply.Text);
    }

    public static Task<BatchOutput> PostAsync(Service service, string body) => PostAsync(service, Encoding.UTF8.GetBytes(body));

    public static ByteArrayContent Content(byte[] body, string? encoding)
    {
        var content = new ByteArrayContent(body);
        content.Headers.ContentType = new MediaTypeHeaderValue("application/x-ndjson");
        if (encoding is not null)
        {
            content.Headers.ContentEncoding.Add(encoding);
        }

        return content;
    }

    public static BatchOutput Parse(int status, string? mode, string text)
    {
        Assert.EndsWith("\n", text, StringComparison.Ordinal);
        var lines = text[..^1].Split('\n').Select(line => JsonNode.Parse(line)!.AsObject()).ToArray();
        var summary = lines[^1]["summary"] as JsonObject;
        var aborted = lines[^1]["aborted"] as JsonObject;
        Assert.True(summary is null != aborted is null, "A batch ends with its summary or its problem.");
        return new(status, mode, lines[..^1], summary, aborted);
    }

    public void AssertSummary(int lines, int answered, byte[] input)
    {
        Assert.NotNull(Summary);
        // Where a calculation gathers what its lines say together, that stands besides.
        Assert.Equal(["lines", "answered", "rejected", "inputDigest"],
            Summary.Select(member => member.Key).Where(name => name != "statistics"));
        Assert.Equal((lines, answered, lines - answered), ((int)Summary["lines"]!, (int)Summary["answered"]!, (int)Summary["rejected"]!));
        Assert.Equal("sha256:" + Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(input)),
            (string?)Summary["inputDigest"]);
    }

    public static byte[] Pack(byte[] body, string encoding)
    {
        using var packed = new MemoryStream();
        using (Stream packer = encoding == "gzip" ? new GZipStream(packed, CompressionLevel.Fastest)
            : new BrotliStream(packed, CompressionLevel.Fastest))
        {
            packer.Write(body);
        }

        return packed.ToArray();
    }
}
