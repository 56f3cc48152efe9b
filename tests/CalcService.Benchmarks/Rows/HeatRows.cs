using CalcService.Benchmarks.Measuring;
using CalcService.Engine.Cones.Heat;

namespace CalcService.Benchmarks.Rows;

/// <summary>Heat and cure together: one slice, and whole cones.</summary>
internal static class HeatRows
{
    public static IReadOnlyList<Row> Measure()
    {
        var found = Interleaved.Measure(warmUp: 10, rounds: 15, times: 5,
        [
            Contender.OnThread("slice", () => HeatWork.CureSlice(HeatWork.Slice)),
            Contender.OnThread("cone", () => HeatWork.CureCone(HeatWork.Cone)),
            Contender.OnThread("hot cone", () => HeatWork.CureCone(HeatWork.HotCone)),
        ]);
        return
        [
            Row("heat and cure of one slice", found[0].Median, 3e6, HeatWork.CureSlice(HeatWork.Slice)),
            Row("heat and cure of the whole cone with socket and rope", found[1].Median, 60e6, HeatWork.CureCone(HeatWork.Cone)),
            Row("the same, 40 mm rope poured at 25 °C", found[2].Median, 60e6, HeatWork.CureCone(HeatWork.HotCone)),
        ];
    }

    private static Row Row(string work, double ns, double barNs, ConeHeatResult cured) =>
        new($"{work} to a degree of .99 ({cured.Steps} steps)", $"{ns / 1e6:0.00} ms", $"{barNs / 1e6:0} ms", ns / barNs);
}
