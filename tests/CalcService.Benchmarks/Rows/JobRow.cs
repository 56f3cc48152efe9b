using CalcService.Benchmarks.Measuring;
using CalcService.Engine;
using CalcService.Engine.Pouring;
using CalcService.Engine.Rules;

namespace CalcService.Benchmarks.Rows;

/// <summary>A job that needs several mixes: the integer programme.</summary>
internal static class JobRow
{
    private const int Rounds = 7;

    public static IReadOnlyList<Row> Measure()
    {
        var times = new double[Rounds];
        var first = Time();
        for (var round = 0; round < Rounds; round++)
        {
            times[round] = Time();
        }

        var plan = Plan();
        var median = Interleaved.Median(times);
        var proven = plan.Optimality is { IsOptimal: true } ? "proven optimal" : "not proven";
        return
        [
            new($"job of 30 baskets of 5 sizes with 3 lots in {plan.Mixes.Count} mixes, {proven}",
                $"{median:0.00} s of CPU (first {first:0.00} s)", "1 s, proven optimal",
                plan.Optimality is { IsOptimal: true } ? median : double.PositiveInfinity),
        ];
    }

    public static PourPlanResult Plan() => PourPlan.Calculate(Work.Job, Editions.Known.Current, new Budget(Budget.DefaultSteps),
        CancellationToken.None).Result;

    private static double Time()
    {
        var before = CpuClock.Process();
        Plan();
        return (CpuClock.Process() - before) / 1e9;
    }
}
