using CalcService.Benchmarks.Measuring;
using CalcService.Engine;
using CalcService.Engine.Cones;

namespace CalcService.Benchmarks.Rows;

/// <summary>Load transfer of one cone full of wires, basket 23/45/100 mm.</summary>
internal static class ConeRows
{
    private const double BarNs = 200e3;

    private static readonly Cone Full = new()
    {
        Basket = new() { SmallEndDiameterM = .023, LargeEndDiameterM = .045, LengthM = .100 },
        OuterAtSmallEndM = .037,
        OuterAtMouthM = .072,
        Friction = .2,
        Shrinkage = .006,
        CompoundModulusPa = 6e9,
        RadialModulusPa = 9e9,
        PoissonRatio = .25,
        WireAreaM2 = 184e-6,
    };

    public static IReadOnlyList<Row> Measure()
    {
        var found = Interleaved.Measure(warmUp: 20, rounds: 15, times: 100,
            [Contender.OnThread("all bears", () => Solve(250e3)), Contender.OnThread("part bears", () => Solve(20e3))]);
        return
        [
            Row("load transfer of one cone, contact all along", found[0].Median),
            Row("the same under little load, edge of the contact sought", found[1].Median),
        ];
    }

    public static ConeState? Solve(double loadN) => ConeLoad.Solve(Full, loadN, new Budget(Budget.DefaultSteps), CancellationToken.None);

    private static Row Row(string work, double ns) => new(work, $"{ns / 1000:0.0} µs", "200 µs", ns / BarNs);
}
