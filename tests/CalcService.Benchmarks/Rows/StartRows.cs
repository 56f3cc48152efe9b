using CalcService.Benchmarks.Measuring;

namespace CalcService.Benchmarks.Rows;

/// <summary>The published service: how soon it is ready, what it keeps in memory, and what a batch makes of that.</summary>
internal static class StartRows
{
    private const int Starts = 5;

    public static async Task<IReadOnlyList<Row>> MeasureAsync()
    {
        var folder = Directory.CreateTempSubdirectory("published");
        try
        {
            Published.Publish(folder.FullName);
            using (Published.Start(folder.FullName))
            {
                // The first start reads the files from the disk.
            }

            var (seconds, idle) = (new double[Starts], new double[Starts]);
            for (var i = 0; i < Starts; i++)
            {
                using var service = Published.Start(folder.FullName);
                await Task.Delay(500);
                (seconds[i], idle[i]) = (service.SecondsToReady, service.MiB("VmRSS"));
            }

            var (ready, memory) = (Interleaved.Median(seconds), Interleaved.Median(idle));
            return
            [
                new("start to ready, self-test included", $"{ready:0.00} s", "1.5 s", ready / 1.5),
                new("resident memory when idle", $"{memory:0} MiB", "120 MiB", memory / 120),
                .. await PeakAsync(folder.FullName),
            ];
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static async Task<IReadOnlyList<Row>> PeakAsync(string folder)
    {
        var lines = BatchRows.Repeat(BatchRows.Lines);
        using var service = Published.Start(folder);
        await BatchClient.SendAsync(service.Port, lines);
        var once = service.MiB("VmHWM");
        await BatchClient.SendAsync(service.Port, lines, times: 4);
        return [new("peak memory after a batch of 20,000 lines, and after one four times as long",
            $"{once:0} MiB, {service.MiB("VmHWM"):0} MiB")];
    }
}
