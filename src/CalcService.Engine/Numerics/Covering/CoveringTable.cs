using System.Buffers;

namespace CalcService.Engine.Numerics.Covering;

/// <summary>
/// Exact covering of a demand with whole items by dynamic programming over every reachable size:
/// f_i[v] = min over c of f_{i−1}[v − c·size_i] + c·cost_i, answered at the best v ≥ demand.
/// Complete because a cover that exceeds the demand by a whole item has one item too many.
/// Ties end in the counts that come first in lexicographic order, so the answer is one and the same everywhere.
/// </summary>
public static class CoveringTable
{
    /// <summary>Larger tables are rare and not kept. A power of two, as the pool's arrays are.</summary>
    private const int MostLent = 1 << 17;

    /// <summary>The number of each item in the best cover, or null where the budget ends first or no cover exists.</summary>
    /// <param name="items">What there is to take; sizes above 0.</param>
    /// <param name="demand">What has to be covered, in the unit of the sizes.</param>
    /// <param name="objective">What the best cover is.</param>
    /// <param name="budget">Pays one step for each cell of the table.</param>
    /// <param name="cancellationToken">Ends the work between two items.</param>
    public static IReadOnlyList<int>? Solve(
        IReadOnlyList<CoverItem> items, long demand, CoverObjective objective, Budget budget, CancellationToken cancellationToken)
    {
        if (demand <= 0)
        {
            return new int[items.Count];
        }

        if (items.Count == 0)
        {
            return null;
        }

        // Sizes share a divisor more often than not, and only its multiples can be reached.
        var unit = items.Select(item => item.Size).Aggregate(GreatestCommonDivisor);
        var cells = (demand + unit - 1) / unit;
        var length = cells + (items.Max(item => item.Size) / unit);
        // The first comparison keeps the product of the second inside a long. Two rows of sums, a row of counts for each item.
        if (length > budget.Left || !budget.TrySpend(length * (items.Count + 2)))
        {
            return null;
        }

        var cellCount = checked((int)length);
        var sums = Borrow<CoverSum>(2 * cellCount);
        var counts = Borrow<int>(items.Count * cellCount);
        try
        {
            var best = sums.AsSpan(0, cellCount);
            var next = sums.AsSpan(cellCount, cellCount);
            best.Fill(CoverSum.Unreachable);
            best[0] = default;
            for (var i = items.Count - 1; i >= 0; i--)
            {
                cancellationToken.ThrowIfCancellationRequested();
                var row = new Row(best, next, counts.AsSpan(i * cellCount, cellCount), CoverSum.Of(items[i], objective), items[i].Size / unit);
                if (Limit(items[i], cells, unit) is { } limit)
                {
                    TakeSome(row, limit);
                }
                else
                {
                    TakeAny(row);
                }

                var swapped = best;
                best = next;
                next = swapped;
            }

            return Read(items, counts, cellCount, Choose(best, (int)cells, objective), unit);
        }
        finally
        {
            GiveBack(sums);
            GiveBack(counts);
        }
    }

    /// <summary>One item's row of the table: sums without it, sums with it, how many of it each takes.</summary>
    private readonly ref struct Row(Span<CoverSum> before, Span<CoverSum> after, Span<int> counts, CoverSum one, int size)
    {
        public Span<CoverSum> Before { get; } = before;

        public Span<CoverSum> After { get; } = after;

        public Span<int> Counts { get; } = counts;

        public CoverSum One { get; } = one;

        public int Size { get; } = size;
    }

    /// <summary>More of an item than covers the demand alone is never taken, so a larger limit is none.</summary>
    private static int? Limit(CoverItem item, long cells, int unit)
    {
        var enough = (cells + (item.Size / unit) - 1) / (item.Size / unit);
        return item.Limit is { } limit && limit < enough ? limit : null;
    }

    private static void TakeAny(Row row)
    {
        var before = row.Before;
        var after = row.After[..before.Length];
        var counts = row.Counts[..before.Length];
        var one = row.One;
        var alone = Math.Min(row.Size, before.Length);
        before[..alone].CopyTo(after);
        counts[..alone].Clear();
        for (var v = alone; v < before.Length; v++)
        {
            ref readonly var less = ref after[v - alone];
            ref readonly var without = ref before[v];
            // Most cells are decided by the first place in the order.
            if (!less.IsReachable || less.First + one.First > without.First || (less + one).CompareTo(without) >= 0)
            {
                after[v] = without;
                counts[v] = 0;
            }
            else
            {
                after[v] = less + one;
                counts[v] = counts[v - alone] + 1;
            }
        }
    }

    /// <summary>
    /// The least of a sliding window: along the sizes that differ by whole items, f[k] − k·one is compared over the last
    /// limit + 1 places. The queue holds the places that may still be the least, best first; of equal ones the later,
    /// which takes fewer.
    /// </summary>
    private static void TakeSome(Row row, int limit)
    {
        var queue = new (int Place, CoverSum Sum)[(row.Before.Length / row.Size) + 1];
        for (var start = 0; start < Math.Min(row.Size, row.Before.Length); start++)
        {
            int head = 0, tail = 0;
            for (int place = 0, v = start; v < row.Before.Length; place++, v += row.Size)
            {
                if (row.Before[v].IsReachable)
                {
                    var sum = row.Before[v] - (row.One * place);
                    while (tail > head && sum.CompareTo(queue[tail - 1].Sum) <= 0)
                    {
                        tail--;
                    }

                    queue[tail++] = (place, sum);
                }

                if (tail > head && queue[head].Place < place - limit)
                {
                    head++;
                }

                row.After[v] = tail > head ? queue[head].Sum + (row.One * place) : CoverSum.Unreachable;
                row.Counts[v] = tail > head ? place - queue[head].Place : 0;
            }
        }
    }

    private static int Choose(ReadOnlySpan<CoverSum> best, int cells, CoverObjective objective)
    {
        var chosen = -1;
        for (var v = cells; v < best.Length; v++)
        {
            if (best[v].IsReachable && (chosen < 0 || best[v].IsBetterThan(best[chosen], objective)))
            {
                chosen = v;
            }
        }

        return chosen;
    }

    private static int[]? Read(IReadOnlyList<CoverItem> items, ReadOnlySpan<int> counts, int cellCount, int chosen, int unit)
    {
        if (chosen < 0)
        {
            return null;
        }

        var taken = new int[items.Count];
        for (var i = 0; i < items.Count; i++)
        {
            taken[i] = counts[(i * cellCount) + chosen];
            chosen -= taken[i] * (items[i].Size / unit);
        }

        return taken;
    }

    /// <summary>A table of the usual size is lent: as a new one it would lie where only a full collection cleans up.</summary>
    private static T[] Borrow<T>(int length) => length <= MostLent ? ArrayPool<T>.Shared.Rent(length) : new T[length];

    private static void GiveBack<T>(T[] table)
    {
        if (table.Length <= MostLent)
        {
            ArrayPool<T>.Shared.Return(table);
        }
    }

    private static int GreatestCommonDivisor(int a, int b) => b == 0 ? a : GreatestCommonDivisor(b, a % b);
}
