using BenchmarkDotNet.Running;
using CalcService.Benchmarks;
using CalcService.Benchmarks.Benchmarks;

if (args is ["table", ..])
{
    await Table.RunAsync(args[1..]);
}
else
{
    BenchmarkSwitcher.FromAssembly(typeof(PourPlanBenchmarks).Assembly).Run(args);
}
