using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Hosting;

/// <summary>
/// What the server itself refuses before a request reaches the service. It has no hook for a body, so the client gets the
/// status alone and the connection is closed; docs/operations.md says so.
/// </summary>
public sealed class ServerRefusalTests(Service service)
{
    public static TheoryData<string, int, string> Heads => new()
    {
        { "no request", 400, "NONSENSE\r\n\r\n" },
        { "no version", 505, "GET /v1/units\r\nHost: here\r\n\r\n" },
        { "unknown version", 505, "GET /v1/units HTTP/3.7\r\nHost: here\r\n\r\n" },
        { "space in the address", 400, "GET /v1/ units HTTP/1.1\r\nHost: here\r\n\r\n" },
        { "byte above ASCII in the address", 400, "GET /v1/\u00FC HTTP/1.1\r\nHost: here\r\n\r\n" },
        { "NUL in the address", 400, "GET /v1/rules/%00 HTTP/1.1\r\nHost: here\r\n\r\n" },
        { "address of 9,000 characters", 414, $"GET /v1/{new string('x', 9000)} HTTP/1.1\r\nHost: here\r\n\r\n" },
        { "headers of 33 KiB", 431, $"GET /v1/units HTTP/1.1\r\nHost: here\r\nX: {new string('x', 33 << 10)}\r\n\r\n" },
        { "101 headers", 431, $"GET /v1/units HTTP/1.1\r\nHost: here\r\n{string.Concat(Enumerable.Repeat("X: y\r\n", 100))}\r\n" },
        { "header without a colon", 400, "GET /v1/units HTTP/1.1\r\nHost: here\r\nX\r\n\r\n" },
        { "space before the colon", 400, "GET /v1/units HTTP/1.1\r\nHost: here\r\nX : y\r\n\r\n" },
        { "folded header", 400, "GET /v1/units HTTP/1.1\r\nHost: here\r\nX: y\r\n z\r\n\r\n" },
        { "byte that is no UTF-8 in a header", 400, "GET /v1/units HTTP/1.1\r\nHost: here\r\nAccept: \u00FF\r\n\r\n" },
        { "NUL in a header", 400, "GET /v1/units HTTP/1.1\r\nHost: here\r\nX: a\0b\r\n\r\n" },
        { "no host", 400, "GET /v1/units HTTP/1.1\r\n\r\n" },
        { "two hosts", 400, "GET /v1/units HTTP/1.1\r\nHost: here\r\nHost: there\r\n\r\n" },
        { "negative length", 400, "POST /v1/pour-plans HTTP/1.1\r\nHost: here\r\nContent-Length: -1\r\n\r\n" },
        { "length that is no number", 400, "POST /v1/pour-plans HTTP/1.1\r\nHost: here\r\nContent-Length: 0x10\r\n\r\n" },
        { "two lengths", 400, "POST /v1/pour-plans HTTP/1.1\r\nHost: here\r\nContent-Length: 1\r\nContent-Length: 2\r\n\r\n" },
        { "unknown transfer encoding", 400, "POST /v1/pour-plans HTTP/1.1\r\nHost: here\r\nTransfer-Encoding: gzip\r\n\r\n" },
        { "POST of HTTP/1.0 without a length", 400, "POST /v1/pour-plans HTTP/1.0\r\nHost: here\r\n\r\n" },
    };

    [Theory]
    [MemberData(nameof(Heads))]
    public async Task Head_that_the_server_can_not_read_gets_its_status_without_a_body(string name, int status, string head)
    {
        using var connection = new RawConnection(service.Address);
        await connection.SendAsync(System.Text.Encoding.Latin1.GetBytes(head));
        var reply = await connection.ReadToEndAsync();

        Assert.True(reply.Status == status, $"{name}: {reply.Head}");
        Assert.Contains("Content-Length: 0", reply.Head, StringComparison.Ordinal);
        Assert.Contains("Connection: close", reply.Head, StringComparison.Ordinal);
        Assert.Empty(reply.Text);
        Assert.Equal(200, (await service.GetAsync("/v1/units")).Status);
    }
}
