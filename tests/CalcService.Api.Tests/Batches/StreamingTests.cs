using System.Security.Cryptography;
using System.Text;
using CalcService.Api.Batches;
using CalcService.Api.Calculations;
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
        using var connection = new RawConnection(service.Address);
        using var digest = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        await connection.SendHeadAsync(Plans.Path + "/batch", BatchEndpoint.MediaType, Count * Filler.Length);
        var sent = 0;
        async Task SendTo(int lines)
        {
            for (; sent < lines; sent++)
            {
                await connection.SendAsync(Filler);
                digest.AppendData(Filler);
            }
        }

        // Once more than the buffered size has come, the answer begins although the client hasn't ended.
        await SendTo((Buffered / Filler.Length) + 2);
        await connection.ReadUntilAsync("\r\n\r\n");
        var reading = connection.ReadToEndAsync();
        await SendTo(Count);

        var reply = await reading;
        Assert.Contains("Batch-Mode: streaming", reply.Head, StringComparison.Ordinal);
        var batch = BatchOutput.Parse(reply.Status, "streaming", reply.Text);
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

        // Of what was sent it is far less.
        Assert.Equal("buffered", batch.Mode);
        Assert.Null(batch.Summary);
        Assert.True(batch.Lines.Count > 100);
        ProblemAssert.IsProblem(batch.Aborted!, 400);
    }

    [Fact]
    public async Task Client_of_any_batch_that_goes_away_in_the_middle_leaves_a_service_that_answers_the_next()
    {
        foreach (var route in (await ServedContract.ReadAsync(service)).BatchRoutes)
        {
            var line = Encoding.UTF8.GetBytes(route.Examples[0].Body.ToJsonString() + "\n");
            await GoAwayAsync(route.Path, line, reads: false);
            await GoAwayAsync(route.Path, line, reads: true);
        }

        Assert.Empty(service.Escaped);
    }

    private async Task GoAwayAsync(string path, byte[] line, bool reads)
    {
        using var connection = new RawConnection(service.Address);
        await connection.SendHeadAsync(path, BatchEndpoint.MediaType, 100_000_000);
        var piece = Enumerable.Repeat(line, 400).SelectMany(bytes => bytes).ToArray();
        for (var sent = 0; sent < (reads ? Buffered + (2 << 20) : 2 << 20); sent += piece.Length)
        {
            await connection.SendAsync(piece);
        }

        if (reads)
        {
            // The service is in the middle of writing when the connection is reset.
            await connection.ReadUntilAsync("\"line\":2,");
        }

        connection.Reset();
        Assert.Equal(200, (await service.PostAsync(Plans.Path, Plans.Plan)).Status);
    }

    [Fact]
    public async Task Client_that_goes_away_in_the_middle_of_a_single_body_leaves_no_trouble()
    {
        using var connection = new RawConnection(service.Address);
        await connection.SendHeadAsync(Plans.Path, CalculationEndpoint.MediaType, 1000);
        await connection.SendAsync("{");
        connection.Reset();

        Assert.Equal(200, (await service.PostAsync(Plans.Path, Plans.Plan)).Status);
        Assert.Empty(service.Escaped);
    }

    [Fact]
    public async Task Chunks_that_are_none_get_400()
    {
        using var connection = new RawConnection(service.Address);
        await connection.SendHeadAsync(Plans.Path, CalculationEndpoint.MediaType, length: null);
        await connection.SendAsync("ZZ\r\n{}\r\n");

        Assert.Equal(400, (await connection.ReadToEndAsync()).Status);
        Assert.Empty(service.Escaped);
    }

    /// <summary>A client that sends a line only when it has the answer to the one before.</summary>
    [Fact]
    public async Task Line_of_a_streaming_batch_is_answered_before_the_next_is_sent()
    {
        var plan = Encoding.UTF8.GetBytes(Plans.Plan.ToJsonString() + "\n");
        var head = Enumerable.Repeat(Filler, (Buffered / Filler.Length) + 1).SelectMany(bytes => bytes).ToArray();
        var before = head.Length / Filler.Length;
        using var connection = new RawConnection(service.Address);
        await connection.SendHeadAsync(Plans.Path + "/batch", BatchEndpoint.MediaType, head.Length + (3 * plan.Length));
        await connection.SendAsync(head);
        for (var line = 1; line <= 3; line++)
        {
            await connection.SendAsync(plan);
            await connection.ReadUntilAsync($"{{\"line\":{before + line},\"id\":\"JOB-0417\",\"status\":200");
        }

        var batch = BatchOutput.Parse(200, "streaming", (await connection.ReadToEndAsync()).Text);
        Assert.Equal(before + 3, (int)batch.Summary!["lines"]!);
    }
}
