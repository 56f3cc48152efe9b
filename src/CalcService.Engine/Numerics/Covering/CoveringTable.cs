namespace CalcService.Engine.Numerics.Covering;

/// <summary>
/// Exact covering of a demand with whole items by dynamic programming over every reachable size:
/// f_i[v] = min over c of f_{i−1}[v − c·size_i] + c·cost_i, answered at the best v ≥ demand.
/// Complete because a cover that exceeds the demand by a whole item has one item too many.
/// Ties end in the counts that come first in lexicographic order, so the answer is one and the same everywhere.
/// </summary>
public static class CoveringTable
{
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

        var counts = new int[items.Count][];
        var best = new CoverSum[length];
        var next = new CoverSum[length];
        best.AsSpan(1).Fill(CoverSum.Unreachable);
        for (var i = items.Count - 1; i >= 0; i--)
        {
            cancellationToken.ThrowIfCancellationRequested();
            counts[i] = new int[length];
            var row = new Row(best, next, counts[i], CoverSum.Of(items[i], objective), items[i].Size / unit);
            if (Limit(items[i], cells, unit) is { } limit)
            {
                TakeSome(row, limit);
            }
            else
            {
                TakeAny(row);
            }

            (best, next) = (next, best);
        }

        return Read(items, counts, Choose(best, cells, objective), unit);
    }

    /// <summary>One item's row of the table: sums without it, sums with it, how many of it each takes.</summary>
    private readonly record struct Row(CoverSum[] Before, CoverSum[] After, int[] Counts, CoverSum One, int Size);

    /// <summary>More of an item than covers the demand alone is never taken, so a larger limit is none.</summary>
    private static int? Limit(CoverItem item, long cells, int unit)
    {
        var enough = (cells + (item.Size / unit) - 1) / (item.Size / unit);
        return item.Limit is { } limit && limit < enough ? limit : null;
    }

    private static void TakeAny(Row row)
    {
        for (var v = 0; v < row.Before.Length; v++)
        {
            row.After[v] = row.Before[v];
            if (v < row.Size || !row.After[v - row.Size].IsReachable)
            {
                continue;
            }

            var more = row.After[v - row.Size] + row.One;
            if (more.CompareTo(row.After[v]) < 0)
            {
                row.After[v] = more;
                row.Counts[v] = row.Counts[v - row.Size] + 1;
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

    private static long Choose(CoverSum[] best, long cells, CoverObjective objective)
    {
        var chosen = -1L;
        for (var v = cells; v < best.Length; v++)
        {
            if (best[v].IsReachable && (chosen < 0 || best[v].IsBetterThan(best[chosen], objective)))
            {
                chosen = v;
            }
        }

        return chosen;
    }

    private static int[]? Read(IReadOnlyList<CoverItem> items, int[][] counts, long chosen, int unit)
    {
        if (chosen < 0)
        {
            return null;
        }

        var taken = new int[items.Count];
        for (var i = 0; i < items.Count; i++)
        {
            taken[i] = counts[i][chosen];
            chosen -= (long)taken[i] * (items[i].Size / unit);
        }

        return taken;
    }

    private static int GreatestCommonDivisor(int a, int b) => b == 0 ? a : GreatestCommonDivisor(b, a % b);
}
