using CalcService.Engine.Numerics.Covering;
using CsCheck;

namespace CalcService.Engine.Tests.Numerics;

/// <summary>The table against a search through every combination, which knows nothing of tables.</summary>
public sealed class CoveringSearchTests
{
    // Few different costs and values, so that ties are the rule.
    private static readonly Gen<CoverItem> AnyItem =
        from size in Gen.Int[1, 12]
        from cost in Gen.Long[0, 4]
        from value in Gen.Long[0, 2]
        from limit in Gen.Int[-4, 4]
        select new CoverItem(size, cost, value, limit < 0 ? null : limit);

    [Theory]
    [InlineData(CoverObjective.Cost)]
    [InlineData(CoverObjective.Excess)]
    [InlineData(CoverObjective.Number)]
    public void Table_finds_what_the_search_finds(CoverObjective objective) =>
        Gen.Select(AnyItem.Array[1, 4], Gen.Int[0, 30]).Sample(
            (items, demand) => Assert.Equal(
                Search(items, demand, objective),
                CoveringTable.Solve(items, demand, objective, new Budget(Budget.DefaultSteps), CancellationToken.None)),
            iter: 1000);

    [Theory]
    [InlineData(CoverObjective.Cost)]
    [InlineData(CoverObjective.Excess)]
    [InlineData(CoverObjective.Number)]
    public void Table_does_not_care_for_a_common_divisor(CoverObjective objective) =>
        Gen.Select(AnyItem.Array[1, 4], Gen.Int[0, 60], Gen.Int[2, 100]).Sample(
            (items, demand, factor) => Assert.Equal(
                CoveringTable.Solve(items, demand, objective, new Budget(Budget.DefaultSteps), CancellationToken.None),
                CoveringTable.Solve([.. items.Select(item => item with { Size = item.Size * factor })], demand * factor, objective,
                    new Budget(Budget.DefaultSteps), CancellationToken.None)),
            iter: 500);

    [Theory]
    [InlineData(CoverObjective.Cost)]
    [InlineData(CoverObjective.Excess)]
    [InlineData(CoverObjective.Number)]
    public void Table_does_not_care_how_large_costs_are(CoverObjective objective) =>
        // Times 10⁹ the sums of a table take 64 bits and more together, times 10¹⁸ they take 128 and more.
        Gen.Select(AnyItem.Array[1, 4], Gen.Int[0, 30], Gen.Int[7, 18]).Sample(
            (items, demand, zeros) => AssertSameCover(items, demand, objective, (long)Math.Pow(10, zeros)),
            iter: 500);

    [Theory]
    [InlineData(1_000_000_000)]
    [InlineData(10_000_000_000_000_000)]
    [InlineData(1_000_000_000_000_000_000)]
    public void Table_needs_no_more_bits_than_its_number_has(long factor) =>
        // Times 10¹⁶ the three sums take 127 bits, which a number of 128 doesn't hold beside what marks an unreachable size.
        AssertSameCover([new(1, 4, 1, null), new(12, 2, 2, 0), new(11, 0, 1, 0)], 29, CoverObjective.Cost, factor);

    private static void AssertSameCover(CoverItem[] items, int demand, CoverObjective objective, long factor) =>
        Assert.Equal(
            Search(items, demand, objective),
            CoveringTable.Solve([.. items.Select(item => item with { Cost = item.Cost * factor, Value = item.Value * factor })], demand,
            objective,
                new Budget(Budget.DefaultSteps), CancellationToken.None));

    private static int[]? Search(CoverItem[] items, int demand, CoverObjective objective)
    {
        if (demand == 0)
        {
            return new int[items.Length];
        }

        // Counts come in lexicographic order and only a strictly better cover replaces an earlier one.
        int[]? best = null;
        var bestRank = (long.MaxValue, 0L, 0L, 0L);
        foreach (var counts in Combinations(items, demand, 0))
        {
            var covered = counts.Zip(items, (count, item) => (long)count * item.Size).Sum();
            if (covered < demand)
            {
                continue;
            }

            var cost = counts.Zip(items, (count, item) => count * item.Cost).Sum();
            var value = counts.Zip(items, (count, item) => count * item.Value).Sum();
            var (excess, number) = (covered - demand, (long)counts.Sum());
            var rank = objective switch
            {
                CoverObjective.Cost => (cost, value, excess, number),
                CoverObjective.Excess => (excess, cost, value, number),
                _ => (number, excess, cost, value),
            };
            if (rank.CompareTo(bestRank) < 0)
            {
                (best, bestRank) = (counts, rank);
            }
        }

        return best;
    }

    private static IEnumerable<int[]> Combinations(CoverItem[] items, int demand, int from)
    {
        if (from == items.Length)
        {
            yield return [];
            yield break;
        }

        var most = Math.Min(items[from].Limit ?? int.MaxValue, (demand + items[from].Size - 1) / items[from].Size);
        for (var count = 0; count <= most; count++)
        {
            var left = Math.Max(0, demand - (count * items[from].Size));
            foreach (var rest in Combinations(items, left, from + 1))
            {
                yield return [count, .. rest];
            }
        }
    }
}
