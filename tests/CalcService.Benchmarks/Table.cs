using System.Text;
using CalcService.Benchmarks.Rows;

namespace CalcService.Benchmarks;

/// <summary>One line of the table.</summary>
/// <param name="Work">What was measured.</param>
/// <param name="Found">What came out.</param>
/// <param name="Bar">What it may be; empty where it only explains another line.</param>
/// <param name="Share">What came out over what it may be; null without a bar.</param>
public sealed record Row(string Work, string Found, string Bar = "", double? Share = null);

/// <summary>Measures everything that has a bar in one run and prints it as Markdown.</summary>
public static class Table
{
    private static readonly (string Name, Func<Task<IReadOnlyList<Row>>> Measure)[] Rows =
    [
        ("http", HttpRows.MeasureAsync),
        ("parts", () => Task.FromResult(PartRows.Measure())),
        ("refusals", () => Task.FromResult(RefusalRow.Measure())),
        ("measuring", () => Task.FromResult(MeasuringRow.Measure())),
        ("covering", () => Task.FromResult(CoveringRows.Measure())),
        ("cone", () => Task.FromResult(ConeRows.Measure())),
        ("job", () => Task.FromResult(JobRow.Measure())),
        ("cure", () => Task.FromResult(CureRows.Measure())),
        ("match", () => Task.FromResult(MatchRow.Measure())),
        ("shop", () => Task.FromResult(ShopRows.Measure())),
        ("heat", () => Task.FromResult(HeatRows.Measure())),
        ("batch", BatchRows.MeasureAsync),
        ("start", StartRows.MeasureAsync),
    ];

    /// <summary>Takes minutes, so only who names it gets it.</summary>
    private static readonly (string Name, Func<Task<IReadOnlyList<Row>>> Measure) Million = ("million", MillionRow.MeasureAsync);

    /// <param name="names">Which to measure; all where there are none.</param>
    public static async Task RunAsync(string[] names)
    {
        await using var output = new StreamWriter(Console.OpenStandardOutput(), new UTF8Encoding(false)) { AutoFlush = true };
        // The service writes its log lines as it always does, one write each, but not into the table.
        await using var log = new StreamWriter("/dev/null") { AutoFlush = true };
        Console.SetOut(log);
        await output.WriteLineAsync("| work | found | bar | found / bar | |");
        await output.WriteLineAsync("|---|---|---|---|---|");
        foreach (var (_, measure) in Rows.Where(row => names.Length == 0)
            .Concat(Rows.Append(Million).Where(row => names.Contains(row.Name))))
        {
            foreach (var row in await measure())
            {
                var verdict = row.Share switch { null => "", <= 1 => "met", _ => "**missed**" };
                await output.WriteLineAsync($"| {row.Work} | {row.Found} | {row.Bar} | {row.Share:0.00} | {verdict} |");
            }
        }
    }
}
