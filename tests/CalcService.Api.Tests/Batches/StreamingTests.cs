using System.Globalization;
using System.Net.Sockets;
using System.Security.Cryptography;
using System.Text;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Batches;

/// <summary>Batches that are too large to be read before they are answered, and clients that go away.</summary>
public sealed class StreamingTests(Service service)
{
    private const int Buffered = 8 << 20;

    /// <summary>Lines that are refused quickly, so that a large batch is a short test.</summary>
    private static readonly byte[] Filler = Encoding.UTF8.GetBytes("{\"reference\":\"filler\"}".PadRight(60_000) + "\n");

    /// <summary>Over a bare socket: HttpClient sends a whole HTTP/1.1 body before it reads anything.</summary>
    [Fact]
    public async Task Batch_above_8_MiB_streams_to_a_client_that_reads_while_it_sends()
    {
        const int Count = 200;
        using var socket = new TcpClient(service.Address.Host, service.Address.Port);
        var stream = socket.GetStream();
        using var digest = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        await stream.WriteAsync(Head($"Content-Length: {Count * Filler.Length}\r\nConnection: close"), TestContext.Current.CancellationToken);
        var sent = 0;
        async Task SendTo(int lines)
        {
            for (; sent < lines; sent++)
            {
                await stream.WriteAsync(Filler, TestContext.Current.CancellationToken);
                digest.AppendData(Filler);
            }
        }

        // Once more than the buffered size has come, the answer begins although the client hasn't ended.
        await SendTo((Buffered / Filler.Length) + 2);
        using var reader = new StreamReader(stream, Encoding.Latin1);
        Assert.Equal("HTTP/1.1 200 OK", await reader.ReadLineAsync(TestContext.Current.CancellationToken));
        var reading = reader.ReadToEndAsync(TestContext.Current.CancellationToken);
        await SendTo(Count);

        var response = (await reading).Split("\r\n\r\n", 2);
        Assert.Contains("Batch-Mode: streaming", response[0], StringComparison.Ordinal);
        var batch = BatchOutput.Parse(200, "streaming", Unchunked(response[1]));
        Assert.Equal(Enumerable.Range(1, Count), batch.Lines.Select(line => (int)line["line"]!));
        Assert.All(batch.Lines, line => Assert.Equal(422, (int)line["status"]!));
        Assert.Equal((Count, 0, Count), ((int)batch.Summary!["lines"]!, (int)batch.Summary["answered"]!, (int)batch.Summary["rejected"]!));
        Assert.Equal("sha256:" + Convert.ToHexStringLower(digest.GetCurrentHash()), (string?)batch.Summary["inputDigest"]);
    }

    [Fact]
    public async Task Batch_that_turns_out_corrupt_after_8_MiB_ends_aborted_without_a_summary()
    {
        var body = new byte[Buffered + (4 << 20)];
        for (var at = 0; at < body.Length; at += Filler.Length)
        {
            Filler.AsSpan(0, Math.Min(Filler.Length, body.Length - at)).CopyTo(body.AsSpan(at));
        }

        var packed = BatchOutput.Pack(body, "gzip");

        var batch = await BatchOutput.PostAsync(service, packed[..^20], "gzip");

        Assert.Equal("streaming", batch.Mode);
        Assert.Null(batch.Summary);
        Assert.True(batch.Lines.Count > 100);
        ProblemAssert.IsProblem(batch.Aborted!, 400);
    }

    [Fact]
    public async Task Client_that_goes_away_in_the_middle_leaves_a_service_that_answers_the_next()
    {
        foreach (var reads in new[] { false, true })
        {
            var line = Encoding.UTF8.GetBytes(Plans.Plan.ToJsonString() + "\n");
            using (var socket = new TcpClient(service.Address.Host, service.Address.Port))
            {
                socket.LingerState = new LingerOption(enable: true, seconds: 0);
                var stream = socket.GetStream();
                await stream.WriteAsync(Head("Content-Length: 100000000"), TestContext.Current.CancellationToken);
                var piece = Enumerable.Repeat(line, 400).SelectMany(bytes => bytes).ToArray();
                for (var sent = 0; sent < (reads ? Buffered + (2 << 20) : 2 << 20); sent += piece.Length)
                {
                    await stream.WriteAsync(piece, TestContext.Current.CancellationToken);
                }

                if (reads)
                {
                    // The service is in the middle of writing when the connection is reset.
                    await stream.ReadExactlyAsync(new byte[10_000], TestContext.Current.CancellationToken);
                }
            }

            Assert.Equal(200, (await service.PostAsync(Plans.Path, Plans.Plan)).Status);
        }

        Assert.Empty(service.Escaped);
    }

    [Fact]
    public async Task Client_that_goes_away_in_the_middle_of_a_single_body_leaves_no_trouble()
    {
        using (var socket = new TcpClient(service.Address.Host, service.Address.Port))
        {
            socket.LingerState = new LingerOption(enable: true, seconds: 0);
            await socket.GetStream().WriteAsync(Encoding.ASCII.GetBytes(
                $"POST {Plans.Path} HTTP/1.1\r\nHost: {service.Address.Authority}\r\nContent-Type: application/json\r\nContent-Length: 1000\r\n\r\n{{"),
                TestContext.Current.CancellationToken);
        }

        Assert.Equal(200, (await service.PostAsync(Plans.Path, Plans.Plan)).Status);
        Assert.Empty(service.Escaped);
    }

    [Fact]
    public async Task Chunks_that_are_none_get_400()
    {
        using var socket = new TcpClient(service.Address.Host, service.Address.Port);
        var stream = socket.GetStream();
        await stream.WriteAsync(Encoding.ASCII.GetBytes(
            $"POST {Plans.Path} HTTP/1.1\r\nHost: {service.Address.Authority}\r\nContent-Type: application/json\r\nTransfer-Encoding: chunked\r\n\r\nZZ\r\n{{}}\r\n"),
            TestContext.Current.CancellationToken);

        using var reader = new StreamReader(stream);
        Assert.Equal("HTTP/1.1 400 Bad Request", await reader.ReadLineAsync(TestContext.Current.CancellationToken));
        Assert.Empty(service.Escaped);
    }

    private byte[] Head(string headers) => Encoding.ASCII.GetBytes(
        $"POST {Plans.Path}/batch HTTP/1.1\r\nHost: {service.Address.Authority}\r\nContent-Type: application/x-ndjson\r\n{headers}\r\n\r\n");

    /// <summary>The text of a chunked response (RFC 9112, section 7.1), read so that a character is a byte.</summary>
    private static string Unchunked(string chunked)
    {
        var text = new StringBuilder();
        for (var at = 0; ;)
        {
            var end = chunked.IndexOf("\r\n", at, StringComparison.Ordinal);
            var length = int.Parse(chunked.AsSpan(at, end - at), NumberStyles.HexNumber, CultureInfo.InvariantCulture);
            if (length == 0)
            {
                return Encoding.UTF8.GetString(Encoding.Latin1.GetBytes(text.ToString()));
            }

            text.Append(chunked, end + 2, length);
            at = end + 2 + length + 2;
        }
    }
}
