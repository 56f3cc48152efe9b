using System.Diagnostics;
using System.Text.Json;
using CalcService.Api.Batches;
using CalcService.Api.Hosting;
using CalcService.Api.Problems;
using CalcService.Benchmarks.Measuring;

namespace CalcService.Benchmarks.Rows;

/// <summary>A batch over HTTP against parse, calculate and write in process.</summary>
internal static class BatchRows
{
    public const int Lines = 20_000;
    private const int Rounds = 3;

    public static async Task<IReadOnlyList<Row>> MeasureAsync()
    {
        await using var service = await Hosts.StartServiceAsync();
        var port = Hosts.PortOf(service);
        var lines = Repeat(Lines);
        double[] rates = new double[Rounds], costs = new double[Rounds];
        for (var round = -1; round < Rounds; round++)
        {
            var (processTime, processCpu) = Time(() => Task.FromResult(InProcess()));
            var (httpTime, httpCpu) = Time(() => BatchClient.SendAsync(port, lines));
            if (round >= 0)
            {
                (rates[round], costs[round]) = (processTime / httpTime, httpCpu / processCpu);
            }
        }

        var rate = Interleaved.Median(rates);
        return
        [
            new($"batch of {Lines} lines over HTTP, its rate against parse, calculate and write in process", $"{100 * rate:0} %", "≥ 50 %",
                .5 / rate),
            new("for comparison: its CPU, client included", $"{Interleaved.Median(costs):0.00} ×"),
        ];
    }

    /// <summary>The request of one line so many times.</summary>
    public static byte[] Repeat(int lines)
    {
        byte[] line = [.. Work.Body, (byte)'\n'];
        var all = new byte[line.Length * lines];
        for (var i = 0; i < lines; i++)
        {
            line.CopyTo(all, i * line.Length);
        }

        return all;
    }

    private static long InProcess()
    {
        using var output = new MemoryStream(64 << 10);
        long written = 0;
        for (var i = 0; i < Lines; i++)
        {
            output.SetLength(0);
            var processed = Work.Capability.Process(Work.Body, full: false, CancellationToken.None);
            JsonSerializer.Serialize(output, new BatchLine
            {
                Line = i + 1,
                Id = processed.Reference,
                Status = processed.Status,
                Answer = processed.Body,
                Problem = processed.Body as Problem,
            }, ApiJson.Options);
            written += output.Length;
        }

        return written;
    }

    private static (double Seconds, double Cpu) Time<T>(Func<Task<T>> work)
    {
        var (watch, cpu) = (Stopwatch.StartNew(), CpuClock.Process());
        work().GetAwaiter().GetResult();
        return (watch.Elapsed.TotalSeconds, CpuClock.Process() - cpu);
    }
}
