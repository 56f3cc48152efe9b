using CalcService.Benchmarks.Measuring;

namespace CalcService.Benchmarks.Rows;

/// <summary>Where the time of a pour plan goes, as shares of the framework's own parse and write of the same bodies.</summary>
internal static class PartRows
{
    public static IReadOnlyList<Row> Measure() =>
        [Measure("parts of a pour plan", full: false), Measure("the same with ?detail=full", full: true)];

    private static Row Measure(string work, bool full)
    {
        var parts = new PlanParts(full);
        Contender[] contenders =
        [
            Contender.OnThread("parse and write by the framework", () =>
            {
                PlanParts.FrameworkRead();
                parts.FrameworkWrite();
            }),
            Contender.OnThread("all but write", () => parts.Whole()),
            Contender.OnThread("its parts in turn", () => parts.InTurn()),
            Contender.OnThread("read and check", () => PlanParts.Read()),
            Contender.OnThread("the same, resolved and canonical", () => PlanParts.Resolve()),
            Contender.OnThread("map and calculate", () => parts.Calculate()),
            Contender.OnThread("answer with digests", () => parts.Answer()),
            Contender.OnThread("write", () => parts.Write()),
        ];
        var found = Interleaved.Measure(warmUp: 20, rounds: 15, times: 500, contenders);
        return new(work + ", 1 = parse and write by the framework",
            string.Join(", ", contenders.Zip(found, (contender, one) => $"{contender.Name} {one.Ratio:0.00}").Skip(1)));
    }
}
