using CalcService.Benchmarks.Measuring;
using CalcService.Engine;
using CalcService.Engine.Numerics.Covering;

namespace CalcService.Benchmarks.Rows;

/// <summary>Exact covering of 10 L with six sizes of kit.</summary>
internal static class CoveringRows
{
    private const double BarNs = 50e3;

    public static IReadOnlyList<Row> Measure()
    {
        var found = Interleaved.Measure(warmUp: 20, rounds: 15, times: 100,
            [Contender.OnThread("round", () => Solve(Work.Round)), Contender.OnThread("odd", () => Solve(Work.Odd))]);
        return
        [
            Row("exact covering of 10 L with 6 sizes of kit, sizes in steps of 50 mL", found[0].Median),
            Row("the same, sizes without a common divisor above 1 mL", found[1].Median),
        ];
    }

    public static IReadOnlyList<int>? Solve(CoverItem[] kits) =>
        CoveringTable.Solve(kits, Work.TenLitres, CoverObjective.Cost, new Budget(Budget.DefaultSteps), CancellationToken.None);

    private static Row Row(string work, double ns) => new(work, $"{ns / 1000:0.0} µs", "50 µs", ns / BarNs);
}
