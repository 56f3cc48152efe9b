using System.Buffers;
using System.Numerics;
using System.Runtime.CompilerServices;

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
    /// <param name="items">What there is to take; sizes above 0, costs and values of 0 or more.</param>
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
        // The first comparison keeps the product of the second inside a long. Two rows beside one for each item: what is read back.
        if (length > budget.Left || !budget.TrySpend(length * (items.Count + 2)))
        {
            return null;
        }

        var order = new CoverOrder(items, length, objective);
        var rowLength = checked((int)length);
        // The smallest number that holds a sum, the mark of the unreachable above it, and one item more.
        return order.Bits switch
        {
            <= 62 => Solve<long>(items, order, unit, (int)cells, rowLength, cancellationToken),
            <= 126 => Solve<Int128>(items, order, unit, (int)cells, rowLength, cancellationToken),
            _ => Solve<BigInteger>(items, order, unit, (int)cells, rowLength, cancellationToken),
        };
    }

    private static int[]? Solve<T>(IReadOnlyList<CoverItem> items, CoverOrder order, int unit, int cells, int length,
        CancellationToken cancellationToken)
        where T : struct, IBinaryInteger<T>
    {
        // No items add up to a size: larger than every sum.
        var unreachable = T.One << order.Bits;
        var sums = Borrow<T>((items.Count + 1) * length);
        try
        {
            Span<T> RowOf(int item) => sums.AsSpan(item * length, length);
            RowOf(items.Count).Fill(unreachable);
            RowOf(items.Count)[0] = T.Zero;
            for (var i = items.Count - 1; i >= 0; i--)
            {
                cancellationToken.ThrowIfCancellationRequested();
                var (one, size) = (order.Of<T>(items[i]), items[i].Size / unit);
                if (Limit(items[i], cells, unit) is { } limit)
                {
                    TakeSome(RowOf(i + 1), RowOf(i), one, size, limit, unreachable);
                }
                else
                {
                    TakeAny(RowOf(i + 1), RowOf(i), one, size);
                }
            }

            var chosen = Choose(RowOf(0), cells, order, unreachable);
            if (chosen < 0)
            {
                return null;
            }

            var taken = new int[items.Count];
            for (var i = 0; i < taken.Length; i++)
            {
                // The fewest that make the sum: of equal ones the table takes the one without.
                var (one, size, sum) = (order.Of<T>(items[i]), items[i].Size / unit, RowOf(i)[chosen]);
                for (var without = RowOf(i + 1); without[chosen] != sum; chosen -= size)
                {
                    taken[i]++;
                    sum -= one;
                }
            }

            return taken;
        }
        finally
        {
            GiveBack(sums);
        }
    }

    /// <summary>More of an item than covers the demand alone is never taken, so a larger limit is none.</summary>
    private static int? Limit(CoverItem item, long cells, int unit)
    {
        var enough = (cells + (item.Size / unit) - 1) / (item.Size / unit);
        return item.Limit is { } limit && limit < enough ? limit : null;
    }

    /// <summary>Cells that lie less than a size apart don't depend on each other, so that many are compared at once.</summary>
    private static void TakeAny<T>(ReadOnlySpan<T> before, Span<T> after, T one, int size)
        where T : struct, IBinaryInteger<T>
    {
        before[..Math.Min(size, before.Length)].CopyTo(after);
        for (var v = size; v < before.Length; v += size)
        {
            var block = Math.Min(size, before.Length - v);
            Least(before.Slice(v, block), after.Slice(v - size, block), one, after.Slice(v, block));
        }
    }

    /// <summary>The lesser of a sum without an item and one with one more of it.</summary>
    private static void Least<T>(ReadOnlySpan<T> without, ReadOnlySpan<T> less, T one, Span<T> least)
        where T : struct, IBinaryInteger<T>
    {
        var v = 0;
        if (Vector<T>.IsSupported)
        {
            var add = new Vector<T>(one);
            for (; v <= least.Length - Vector<T>.Count; v += Vector<T>.Count)
            {
                Vector.Min(new Vector<T>(without[v..]), new Vector<T>(less[v..]) + add).CopyTo(least[v..]);
            }
        }

        for (; v < least.Length; v++)
        {
            least[v] = T.Min(without[v], less[v] + one);
        }
    }

    /// <summary>
    /// The least of a sliding window: along the sizes that differ by whole items, f[k] − k·one is compared over the last
    /// limit + 1 places. The queue holds the places that may still be the least, best first.
    /// </summary>
    private static void TakeSome<T>(ReadOnlySpan<T> before, Span<T> after, T one, int size, int limit, T unreachable)
        where T : struct, IBinaryInteger<T>
    {
        var queue = new (int Place, T Sum)[(before.Length / size) + 1];
        for (var start = 0; start < Math.Min(size, before.Length); start++)
        {
            int head = 0, tail = 0;
            var taken = T.Zero;
            for (int place = 0, v = start; v < before.Length; place++, v += size, taken += one)
            {
                if (before[v] < unreachable)
                {
                    var sum = before[v] - taken;
                    while (tail > head && sum <= queue[tail - 1].Sum)
                    {
                        tail--;
                    }

                    queue[tail++] = (place, sum);
                }

                if (tail > head && queue[head].Place < place - limit)
                {
                    head++;
                }

                after[v] = tail > head ? queue[head].Sum + taken : unreachable;
            }
        }
    }

    private static int Choose<T>(ReadOnlySpan<T> best, int cells, CoverOrder order, T unreachable)
        where T : struct, IBinaryInteger<T>
    {
        var chosen = -1;
        for (var v = cells; v < best.Length; v++)
        {
            if (best[v] < unreachable && (chosen < 0 || order.IsBetter(best[v], best[chosen])))
            {
                chosen = v;
            }
        }

        return chosen;
    }

    /// <summary>A table of the usual size is lent: as a new one it would lie where only a full collection cleans up.</summary>
    private static T[] Borrow<T>(int length) => length <= MostLent ? ArrayPool<T>.Shared.Rent(length) : new T[length];

    private static void GiveBack<T>(T[] table)
    {
        if (table.Length <= MostLent)
        {
            ArrayPool<T>.Shared.Return(table, RuntimeHelpers.IsReferenceOrContainsReferences<T>());
        }
    }

    private static int GreatestCommonDivisor(int a, int b) => b == 0 ? a : GreatestCommonDivisor(b, a % b);
}
