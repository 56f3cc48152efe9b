using System.Text;
using CalcService.Benchmarks.Measuring;

namespace CalcService.Benchmarks.Rows;

/// <summary>What it costs to refuse a plan, against answering it: nobody shall keep the service busy with nonsense.</summary>
internal static class RefusalRow
{
    private static readonly string Plan = Encoding.UTF8.GetString(Work.Body);

    public static IReadOnlyList<Row> Measure()
    {
        (string Name, string Body)[] refused =
        [
            ("cut off before its last byte", Plan[..^1]),
            ("no JSON from its first byte", "<" + Plan),
            ("a member misspelt", Plan.Replace("\"pourAt\"", "\"pourat\"", StringComparison.Ordinal)),
            ("every size out of range", Plan.Replace("\"value\":", "\"value\":-9e9", StringComparison.Ordinal)),
            ("two hundred unknown members", string.Concat("{", string.Concat(Enumerable.Range(0, 200).Select(i => $"\"x{i}\":1,")), Plan[1..])),
        ];
        var contenders = refused.Select(one => (one.Name, Bytes: Encoding.UTF8.GetBytes(one.Body)))
            .Select(one => Contender.OnThread(one.Name, () => Work.Capability.Process(one.Bytes, full: false, CancellationToken.None)))
            .Prepend(Contender.OnThread("answered", () => Work.Capability.Process(Work.Body, full: false, CancellationToken.None))).ToArray();
        var found = Interleaved.Measure(warmUp: 20, rounds: 15, times: 200, contenders);
        var ratios = contenders.Zip(found, (contender, one) => FormattableString.Invariant($"{contender.Name} {one.Ratio:0.00}")).Skip(1);
        return [new("refusing a plan, 1 = answering it", string.Join(", ", ratios), "1", found.Skip(1).Max(one => one.Ratio))];
    }
}
