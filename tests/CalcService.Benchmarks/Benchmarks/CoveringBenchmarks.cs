using BenchmarkDotNet.Attributes;
using CalcService.Benchmarks.Rows;
using CalcService.Engine.Pouring;

namespace CalcService.Benchmarks.Benchmarks;

/// <summary>Whole kits for a volume, and for a job of several mixes.</summary>
[InProcess]
[MemoryDiagnoser]
public class CoveringBenchmarks
{
    [Benchmark(Baseline = true)]
    public IReadOnlyList<int>? SizesInSteps() => CoveringRows.Solve(Work.Round);

    [Benchmark]
    public IReadOnlyList<int>? SizesWithoutDivisor() => CoveringRows.Solve(Work.Odd);

    [Benchmark]
    public PourPlanResult Job() => JobRow.Plan();
}
