using System.Diagnostics.Metrics;
using CalcService.Api.Calculations;
using CalcService.Api.Telemetry;
using CalcService.Benchmarks.Measuring;
using Microsoft.Extensions.DependencyInjection;

namespace CalcService.Benchmarks.Rows;

/// <summary>
/// What a plan pays for being measured while no collector is named: around nothing, so that the plan's own time doesn't hide it.
/// </summary>
internal static class MeasuringRow
{
    public static IReadOnlyList<Row> Measure()
    {
        using var services = new ServiceCollection().AddMetrics().BuildServiceProvider();
        using var measurements = new Measurements(services.GetRequiredService<IMeterFactory>());
        ICapability nothing = new Nothing();
        var found = Interleaved.Measure(warmUp: 20, rounds: 15, times: 500,
            Contender.OnThread("plan", () => Work.Capability.Process(Work.Body, full: false, CancellationToken.None)),
            Times(1000, "measured nothing", () => measurements.ProcessSingle(nothing, Work.Body, full: false, CancellationToken.None)),
            Times(1000, "nothing", () => nothing.Process(Work.Body, full: false, CancellationToken.None)));
        return [new("measuring a plan while no collector is named, CPU against the plan itself",
            FormattableString.Invariant($"{found[1].Ratio - found[2].Ratio:0.00000}"))];
    }

    private static Contender Times(int more, string name, Action work)
    {
        var one = Contender.OnThread(name, work);
        return one with { Run = times => one.Run(times * more) };
    }

    /// <summary>A calculation without work.</summary>
    private sealed class Nothing : ICapability
    {
        public string Operation => "nothing";

        public Type RequestType => typeof(object);

        public Type AnswerType => typeof(object);

        public Processed Process(ReadOnlySpan<byte> body, bool full, AsOf? asOf, CancellationToken cancellationToken) => default;
    }
}
