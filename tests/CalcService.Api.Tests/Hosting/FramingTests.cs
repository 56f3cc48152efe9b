using System.Text;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Hosting;

/// <summary>Bodies whose length, chunks or end are not what HTTP (RFC 9112) has. None is a failure of the service.</summary>
public sealed class FramingTests(Service service)
{
    private const string Chunked = "Transfer-Encoding: chunked\r\n";

    /// <summary>A body of the contract is refused with 422; so a framing that is right gets that far.</summary>
    private const int Read = 422;

    private static readonly string[] Paths = [Plans.Path, Plans.Path + "/sheet", Plans.Path + "/batch"];

    /// <summary>Sizes around what an int and a long hold, and such as are no number.</summary>
    public static TheoryData<string> Sizes => [
        "80000000", "ffffffff", "100000000", "7fffffffffffffff", "8000000000000000", "ffffffffffffffff", "10000000000000000000",
        new string('f', 4000), "-1", "-80000000", "+2", "0x2", "zz", "", " 2", "2 2",
    ];

    public static TheoryData<string, int, string, string> Framings => new()
    {
        { "no line end behind a chunk", 400, Chunked, "2\r\n{}XX0\r\n\r\n" },
        { "no line end behind a size", 400, Chunked, "2{}\r\n0\r\n\r\n" },
        { "chunk longer than its size", 400, Chunked, "1\r\n{}\r\n0\r\n\r\n" },
        { "extension of 20,000 characters", Read, Chunked, $"2;{new string('e', 20_000)}\r\n{{}}\r\n0\r\n\r\n" },
        { "trailers of 40,000 characters", 400, Chunked, $"2\r\n{{}}\r\n0\r\nX: {new string('y', 40_000)}\r\n\r\n" },
        { "101 trailers", 400, Chunked, $"2\r\n{{}}\r\n0\r\n{string.Concat(Enumerable.Repeat("X: y\r\n", 101))}\r\n" },
        { "trailer that is none", 400, Chunked, "2\r\n{}\r\n0\r\nno trailer\r\n\r\n" },
        { "length in a trailer", Read, Chunked, "2\r\n{}\r\n0\r\nContent-Length: 50\r\n\r\n" },
        { "length and chunks", Read, Chunked + "Content-Length: 50\r\n", "2\r\n{}\r\n0\r\n\r\n" },
        { "length and chunks the other way round", Read, "Content-Length: 50\r\n" + Chunked, "2\r\n{}\r\n0\r\n\r\n" },
        { "length of 18 digits", 413, "Content-Length: 999999999999999999\r\n", "{}" },
        { "length of 19 digits", 413, "Content-Length: 9223372036854775807\r\n", "{}" },
        { "length of 20 digits", 400, "Content-Length: 99999999999999999999\r\n", "{}" },
        { "length of 2 GiB", 413, "Content-Length: 2147483648\r\n", "{}" },
        { "two lengths in one", 400, "Content-Length: 2, 2\r\n", "{}" },
        { "chunks in chunks", Read, "Transfer-Encoding: chunked, chunked\r\n", "2\r\n{}\r\n0\r\n\r\n" },
        { "chunks that are not the last coding", 400, "Transfer-Encoding: chunked, gzip\r\n", "2\r\n{}\r\n0\r\n\r\n" },
        { "no such coding", 400, "Transfer-Encoding: identity\r\n", "{}" },
        { "NUL in a header", 400, "X: a\0b\r\nContent-Length: 2\r\n", "{}" },
        { "an expectation that nobody has", Read, "Expect: the-unexpected\r\nContent-Length: 2\r\n", "{}" },
    };

    [Theory]
    [MemberData(nameof(Sizes))]
    public async Task Size_of_a_chunk_that_is_none_is_refused(string size)
    {
        foreach (var path in Paths)
        {
            var reply = await SendAsync(path, Chunked, $"{size}\r\n{{}}\r\n0\r\n\r\n");

            Assert.True(reply.Status == 400, $"{path}: {reply.Head}");
            Assert.Contains("\"code\":\"unreadable\"", reply.Text, StringComparison.Ordinal);
        }
    }

    /// <summary>Nothing there reads the body, so the server itself meets it when it looks for the next request.</summary>
    [Theory]
    [MemberData(nameof(Sizes))]
    public async Task Size_of_a_chunk_that_is_none_does_no_harm_where_no_body_is_read(string size)
    {
        var reply = await SendAsync("/v1/nothing", Chunked, $"{size}\r\n{{}}\r\n0\r\n\r\n");

        Assert.Equal(404, reply.Status);
        Assert.Equal(200, (await service.GetAsync("/v1/units")).Status);
    }

    [Theory]
    [MemberData(nameof(Framings))]
    public async Task Framing_is_read_or_refused(string name, int status, string headers, string body)
    {
        var reply = await SendAsync(Plans.Path, headers, body);

        Assert.True(reply.Status == status, $"{name}: {reply.Head}");
        Assert.Equal(200, (await service.GetAsync("/v1/units")).Status);
    }

    /// <summary>More than is read and held before anything is written, so that the answer has begun.</summary>
    [Fact]
    public async Task Batch_with_a_bad_chunk_behind_good_lines_gets_no_summary()
    {
        var many = string.Concat(Enumerable.Repeat("{}".PadRight(60_000) + "\n", 350));
        var reply = await SendAsync(Plans.Path + "/batch", Chunked, $"{many.Length:x}\r\n{many}\r\nffffffff\r\n{{}}\r\n");

        Assert.Equal(200, reply.Status);
        Assert.DoesNotContain("\"summary\"", reply.Text, StringComparison.Ordinal);
        Assert.Contains("{\"aborted\":", reply.Text[^2000..], StringComparison.Ordinal);
        Assert.Contains("\"status\":400", reply.Text[^2000..], StringComparison.Ordinal);
    }

    /// <summary>A client that waits for leave to send, gets it and goes.</summary>
    [Fact]
    public async Task Body_that_was_announced_and_never_sent_harms_nobody_else()
    {
        using (var connection = new RawConnection(service.Address))
        {
            await connection.SendAsync(Head(Plans.Path, "Expect: 100-continue\r\nContent-Length: 2\r\n"));
            await connection.ReadUntilAsync("100 Continue");
        }

        Assert.Equal(200, (await service.GetAsync("/v1/units")).Status);
        Assert.Empty(service.Escaped);
    }

    private async Task<RawReply> SendAsync(string path, string headers, string body)
    {
        using var connection = new RawConnection(service.Address);
        // What is sent behind a refusal may come to a closed door.
        var sending = connection.SendAsync(Encoding.Latin1.GetBytes(Head(path, headers + "Connection: close\r\n") + body));
        var reply = await connection.ReadToEndAsync();
        await sending.ContinueWith(_ => { }, TaskScheduler.Default);
        return reply;
    }

    private static string Head(string path, string headers) =>
        $"POST {path} HTTP/1.1\r\nHost: here\r\nContent-Type: application/{(path.EndsWith("batch", StringComparison.Ordinal) ? "x-ndjson"
            : "json")}\r\n{headers}\r\n";
}
