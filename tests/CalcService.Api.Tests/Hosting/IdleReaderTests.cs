using System.Text.Json.Nodes;
using CalcService.Api.Batches;
using CalcService.Api.Calculations;
using CalcService.Api.Hosting;
using CalcService.Api.Tests.Batches;
using CalcService.Api.Tests.Fixtures;
using Microsoft.Extensions.DependencyInjection;

namespace CalcService.Api.Tests.Hosting;

/// <summary>Clients that don't read what they asked for, or stop sending, are cut off and hold nothing of the service any longer.</summary>
public sealed class IdleReaderTests
{
    private static readonly (string, string?)[] Impatient = [(ServiceSettings.WaitSeconds.Key, "1"), (ServiceSettings.Batches.Key, "1")];

    [Theory]
    [InlineData(0)]
    [InlineData(1 << 20)]
    public async Task Batch_that_nobody_reads_is_cut_off_whatever_was_read_before_and_its_place_is_free(int read)
    {
        await using var service = new Service(Impatient);
        var body = string.Concat(Enumerable.Repeat(Plans.Plan.ToJsonString() + "\n", 3000));
        using var connection = new RawConnection(service.Address);
        await connection.SendHeadAsync(Plans.Path + "/batch", BatchEndpoint.MediaType, body.Length);
        await connection.SendAsync(body);
        while (connection.Seen.Length < read)
        {
            await connection.ReadSomeAsync(64 << 10);
        }

        while ((await AskBatchAsync(service)).Status == 200)
        {
            // It has not come to its place yet.
        }

        await AnsweredBatchAsync(service);

        Assert.DoesNotContain("\"summary\"", (await connection.ReadToEndAsync()).Text, StringComparison.Ordinal);
        Assert.Empty(service.Escaped);
    }

    [Fact]
    public async Task Large_answer_that_nobody_reads_is_cut_off_and_no_longer_held()
    {
        await using var service = new Service(Impatient);
        var large = Plans.OfEnds(900);
        var body = large.ToJsonString();
        using var connection = new RawConnection(service.Address);
        await connection.SendHeadAsync(Plans.Path + "?detail=full", CalculationEndpoint.MediaType, body.Length);
        await connection.SendAsync(body);
        await connection.ReadUntilAsync("\r\n\r\n");

        // All that may be held is free again once nothing of the answer is.
        var held = service.Services.GetRequiredService<HeldBytes>();
        var all = ((long)ServiceSettings.HeldMiB.Default << 20) + HeldShare.FreeBytes;
        using var share = held.Open();
        Assert.False(share.TryHold(all));
        while (!share.TryHold(all))
        {
            await Task.Delay(50, TestContext.Current.CancellationToken);
        }

        Assert.True((await connection.ReadToEndAsync()).Body.Length < 15 << 20);
        Assert.Empty(service.Escaped);
    }

    [Fact]
    public async Task Streaming_batch_that_stops_coming_ends_aborted_and_its_place_is_free()
    {
        await using var service = new Service(Impatient);
        using var connection = new RawConnection(service.Address);
        await connection.SendHeadAsync(Plans.Path + "/batch", BatchEndpoint.MediaType, 100_000_000);
        await connection.SendAsync(string.Concat(Enumerable.Repeat("{}".PadRight(60_000) + "\n", 160)));

        var batch = BatchOutput.Parse(200, "streaming", (await connection.ReadToEndAsync()).Text);

        Assert.Equal(160, batch.Lines.Count);
        ProblemAssert.IsProblem(batch.Aborted!, 408);
        await AnsweredBatchAsync(service);
        Assert.Empty(service.Escaped);
    }

    [Fact]
    public async Task Batch_whose_head_stops_coming_gets_408()
    {
        await using var service = new Service(Impatient);
        using var connection = new RawConnection(service.Address);
        await connection.SendHeadAsync(Plans.Path + "/batch", BatchEndpoint.MediaType, 1000);
        await connection.SendAsync("{}\n");

        var reply = await connection.ReadToEndAsync();

        ProblemAssert.IsProblem(JsonNode.Parse(reply.Text)!.AsObject(), 408);
        Assert.Empty(service.Escaped);
    }

    private static Task<Reply> AskBatchAsync(Service service) =>
        service.PostAsync(Plans.Path + "/batch", BatchOutput.Content("{}"u8.ToArray(), null));

    private static async Task AnsweredBatchAsync(Service service)
    {
        Reply next;
        while ((next = await AskBatchAsync(service)).Status != 200)
        {
            Assert.Equal(503, next.Status);
            await Task.Delay(50, TestContext.Current.CancellationToken);
        }
    }
}
