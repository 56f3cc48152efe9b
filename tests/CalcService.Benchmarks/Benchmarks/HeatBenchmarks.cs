using BenchmarkDotNet.Attributes;
using CalcService.Engine.Cones.Heat;

namespace CalcService.Benchmarks.Benchmarks;

/// <summary>Heat and cure together.</summary>
[InProcess]
[MemoryDiagnoser]
public class HeatBenchmarks
{
    [Benchmark(Baseline = true)]
    public ConeHeatResult Slice() => HeatWork.CureSlice(HeatWork.Slice);

    [Benchmark]
    public ConeHeatResult Cone() => HeatWork.CureCone(HeatWork.Cone);

    [Benchmark]
    public ConeHeatResult HotCone() => HeatWork.CureCone(HeatWork.HotCone);
}
