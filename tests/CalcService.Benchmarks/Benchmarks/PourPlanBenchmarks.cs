using BenchmarkDotNet.Attributes;
using CalcService.Api.Reading;

namespace CalcService.Benchmarks.Benchmarks;

/// <summary>A pour plan of one end and its parts; the baseline is the framework's own parse and write of the same bodies.</summary>
[InProcess]
[MemoryDiagnoser]
public class PourPlanBenchmarks
{
    private PlanParts _parts = null!;

    /// <summary>Whether with ?detail=full.</summary>
    [Params(false, true)]
    public bool Full { get; set; }

    [GlobalSetup]
    public void Prepare() => _parts = new PlanParts(Full);

    [Benchmark(Baseline = true)]
    public object ParseAndWrite() => (PlanParts.FrameworkRead(), _parts.FrameworkWrite());

    [Benchmark]
    public object Whole() => _parts.Whole();

    [Benchmark]
    public ReadResult Read() => PlanParts.Read();

    [Benchmark]
    public object Resolve() => PlanParts.Resolve();

    [Benchmark]
    public object Calculate() => _parts.Calculate();

    [Benchmark]
    public object Answer() => _parts.Answer();

    [Benchmark]
    public int Write() => _parts.Write();
}
