using System.Text;
using CalcService.Api.Batches;
using CalcService.Api.Hosting;
using CalcService.Api.Tests.Batches;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Hosting;

/// <summary>A real process that is told to stop, or killed, while a batch is in work.</summary>
public sealed class StoppingTests
{
    private const int Buffered = 8 << 20;
    private static readonly byte[] Line = Encoding.UTF8.GetBytes("{\"reference\":\"filler\"}".PadRight(60_000) + "\n");

    /// <summary>Enough lines for the answer to begin before the batch has been sent.</summary>
    private const int Lines = (Buffered / 60_000) + 20;

    [Fact]
    public async Task Instance_that_is_told_to_stop_is_unready_answers_and_ends_its_batch_with_a_true_summary()
    {
        await using var service =
            await ServiceProcess.StartAsync([(ServiceSettings.UnreadySeconds.Key, "5"), (ServiceSettings.DrainSeconds.Key, "300"),
            (ServiceSettings.BytesPerSecond.Key, "1")]);
        await service.UntilAsync("/health/ready", 200);
        using var batch = await BeginAsync(service);
        await service.TerminateAsync();

        // Until connections are refused, the probe says unready.
        Assert.Contains(await service.UntilAsync("/health/ready", 503, null), new int?[] { 503, null });
        await service.UntilAsync("/health/live", (int?)null);
        await batch.SendAsync(Line);

        var output = BatchOutput.Parse(200, "streaming", (await batch.ReadToEndAsync()).Text);
        Assert.Equal((Lines + 1, 0), ((int)output.Summary!["lines"]!, (int)output.Summary["answered"]!));
        Assert.Equal(Enumerable.Range(1, Lines + 1), output.Lines.Select(line => (int)line["line"]!));
        Assert.Equal(0, await service.ExitAsync());
    }

    [Fact]
    public async Task Batch_that_does_not_end_in_the_time_to_drain_has_no_summary()
    {
        await using var service =
            await ServiceProcess.StartAsync([(ServiceSettings.UnreadySeconds.Key, "0"), (ServiceSettings.DrainSeconds.Key, "1"),
            (ServiceSettings.BytesPerSecond.Key, "1")]);
        using var batch = await BeginAsync(service);
        await service.TerminateAsync();

        var reply = await batch.ReadToEndAsync();

        Assert.DoesNotContain("\"summary\"", reply.Text, StringComparison.Ordinal);
        ProblemAssert.IsProblem(BatchOutput.Parse(200, "streaming", reply.Text).Aborted!, 503);
        Assert.Equal(0, await service.ExitAsync());
    }

    [Fact]
    public async Task Batch_whose_instance_is_killed_has_no_summary()
    {
        await using var service = await ServiceProcess.StartAsync([]);
        using var batch = await BeginAsync(service);
        service.Kill();

        var reply = await batch.ReadToEndAsync();

        Assert.Equal(200, reply.Status);
        Assert.DoesNotContain("\"summary\"", reply.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("\"aborted\"", reply.Text, StringComparison.Ordinal);
    }

    /// <summary>Sends all lines but the last, and sees the answer begin.</summary>
    private static async Task<RawConnection> BeginAsync(ServiceProcess service)
    {
        var connection = new RawConnection(service.Address);
        await connection.SendHeadAsync(Plans.Path + "/batch", BatchEndpoint.MediaType, (Lines + 1L) * Line.Length);
        for (var sent = 0; sent < Lines; sent++)
        {
            await connection.SendAsync(Line);
        }

        await connection.ReadUntilAsync("\"line\":1,");
        return connection;
    }
}
