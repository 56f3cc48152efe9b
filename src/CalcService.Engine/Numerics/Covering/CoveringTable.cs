namespace CalcService.Engine.Numerics.Covering;

/// <summary>
/// Exact covering of a demand with whole items by dynamic programming over every reachable size:
/// f_i[v] = min over c of f_{i−1}[v − c·size_i] + c·cost_i, answered at the best v ≥ demand.
/// Complete because a cover that exceeds the demand by a whole item has one item too many.
/// Ties end in the counts that come first in lexicographic order, so the answer is one and the same everywhere.
/// </summary>
public static class CoveringTable
{
    private static readonly Key Unreachable = new(long.MaxValue, 0, 0);

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
        var limits = items.Select(item => Limit(item, cells, unit)).ToArray();
        // The first comparison keeps the sum of the second inside a long.
        if (length > budget.Left || !budget.TrySpend(limits.Sum(limit => length * (limit is { } most ? most + 1L : 1))))
        {
            return null;
        }

        var counts = new int[items.Count][];
        var best = new Key[length];
        best.AsSpan(1).Fill(Unreachable);
        for (var i = items.Count - 1; i >= 0; i--)
        {
            cancellationToken.ThrowIfCancellationRequested();
            counts[i] = new int[length];
            best = Layer(best, counts[i], items[i], items[i].Size / unit, limits[i], objective);
        }

        return Read(items, counts, Choose(best, cells, objective), unit);
    }

    /// <summary>More of an item than covers the demand alone is never taken, so a larger limit is none.</summary>
    private static int? Limit(CoverItem item, long cells, int unit)
    {
        var enough = (cells + (item.Size / unit) - 1) / (item.Size / unit);
        return item.Limit is { } limit && limit < enough ? limit : null;
    }

    private static Key[] Layer(Key[] before, int[] counts, CoverItem item, int size, int? limit, CoverObjective objective)
    {
        var one = Key.Of(item, objective);
        var after = new Key[before.Length];
        for (var v = 0; v < before.Length; v++)
        {
            after[v] = before[v];
            if (limit is not { } most)
            {
                if (v >= size && after[v - size].IsReachable)
                {
                    var more = after[v - size] + one;
                    if (more.CompareTo(after[v]) < 0)
                    {
                        after[v] = more;
                        counts[v] = counts[v - size] + 1;
                    }
                }

                continue;
            }

            var added = one;
            for (int c = 1, rest = v - size; c <= most && rest >= 0; c++, rest -= size, added += one)
            {
                if (before[rest].IsReachable && (before[rest] + added).CompareTo(after[v]) < 0)
                {
                    after[v] = before[rest] + added;
                    counts[v] = c;
                }
            }
        }

        return after;
    }

    private static long Choose(Key[] best, long cells, CoverObjective objective)
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

    /// <summary>What a cover of one exact size is judged by, in the order of the objective.</summary>
    private readonly record struct Key(long First, long Second, long Third) : IComparable<Key>
    {
        public bool IsReachable => First != long.MaxValue;

        public static Key Of(CoverItem item, CoverObjective objective) => objective == CoverObjective.Number
            ? new(1, item.Cost, item.Value)
            : new(item.Cost, item.Value, 1);

        public static Key operator +(Key a, Key b) => new(a.First + b.First, a.Second + b.Second, a.Third + b.Third);

        public int CompareTo(Key other)
        {
            var first = First.CompareTo(other.First);
            var second = first != 0 ? first : Second.CompareTo(other.Second);
            return second != 0 ? second : Third.CompareTo(other.Third);
        }

        /// <summary>Whether this cover beats one of a smaller size, which has the smaller excess.</summary>
        public bool IsBetterThan(Key smaller, CoverObjective objective) => objective switch
        {
            CoverObjective.Cost => (First, Second).CompareTo((smaller.First, smaller.Second)) < 0,
            CoverObjective.Number => First < smaller.First,
            _ => false,
        };
    }
}
