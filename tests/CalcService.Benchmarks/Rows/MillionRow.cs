using System.Diagnostics;
using CalcService.Benchmarks.Measuring;

namespace CalcService.Benchmarks.Rows;

/// <summary>The longest batch there may be, through one request to the published service, and what it takes of memory.</summary>
internal static class MillionRow
{
    private const int Times = 1_000_000 / BatchRows.Lines;

    public static async Task<IReadOnlyList<Row>> MeasureAsync()
    {
        var folder = Directory.CreateTempSubdirectory("published");
        try
        {
            Published.Publish(folder.FullName);
            var (few, _) = await SendAsync(folder.FullName, 1);
            var (all, seconds) = await SendAsync(folder.FullName, Times);
            return [new("batch of 1,000,000 lines: peak memory, against one of 20,000",
                $"{all:0} MiB, {few:0} MiB; {Times * BatchRows.Lines / seconds:0} lines a second")];
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static async Task<(double MiB, double Seconds)> SendAsync(string folder, int times)
    {
        using var service = Published.Start(folder);
        var watch = Stopwatch.StartNew();
        var end = await BatchClient.SendAsync(service.Port, BatchRows.Repeat(BatchRows.Lines), times);
        var lines =
            FormattableString.Invariant($"\"summary\":{{\"lines\":{times * BatchRows.Lines},\"answered\":{times * BatchRows.Lines}");
        return end.Contains(lines, StringComparison.Ordinal) ? (service.MiB("VmHWM"), watch.Elapsed.TotalSeconds)
            : throw new InvalidOperationException(end);
    }
}
