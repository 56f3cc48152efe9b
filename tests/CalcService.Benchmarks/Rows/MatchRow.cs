using System.Text;
using CalcService.Api.Calculations;
using CalcService.Api.OpenApi;
using CalcService.Benchmarks.Measuring;

namespace CalcService.Benchmarks.Rows;

/// <summary>
/// The first example of a match, 20 mm 6x36 in its socket, from bytes to bytes: rules, load in the cone at three loads, full contact, what
/// it depends on.
/// </summary>
internal static class MatchRow
{
    private const double BarNs = 5e6;

    private static readonly ICapability Capability = Work.Services.Calculation("termination-matches");
    private static readonly byte[] Body = Encoding.UTF8.GetBytes(RequestExamples.Of("termination-matches")[0].Body);

    public static IReadOnlyList<Row> Measure()
    {
        var found = Interleaved.Measure(warmUp: 50, rounds: 15, times: 50,
            [Contender.OnThread("match", () => Answer(full: false)), Contender.OnThread("full", () => Answer(full: true))]);
        return [Row("match of a 20 mm rope and its socket, from bytes to bytes", found[0].Median),
            Row("the same with ?detail=full", found[1].Median)];
    }

    private static Processed Answer(bool full) => Capability.Process(Body, full, CancellationToken.None);

    private static Row Row(string work, double ns) => new(work, $"{ns / 1e6:0.00} ms", "5 ms", ns / BarNs);
}
