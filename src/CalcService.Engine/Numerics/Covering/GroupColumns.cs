namespace CalcService.Engine.Numerics.Covering;

/// <summary>One way to make a group: how many of each demand, and how many items of each size cover them without one too many.</summary>
internal sealed record GroupColumn(int[] Served, int[] Sizes);

/// <summary>
/// The ways to make a group in time. All of them where they are few; else those that many fillings in pseudo-random
/// order come upon, which keeps the answer good and the same everywhere, but not proven.
/// </summary>
internal sealed class GroupColumns
{
    /// <summary>Ways that the programme takes at the most.</summary>
    private const int Most = 6000;

    /// <summary>Sets of items that are looked at for one way to serve demands.</summary>
    private const int MostCovers = 1000;

    private const int Fillings = 400;

    private readonly GroupedProblem _problem;
    private readonly int[] _sizes;
    private readonly long[] _prices;
    private readonly List<GroupColumn> _columns = [];
    private readonly Dictionary<string, int> _cheapest = new(StringComparer.Ordinal);
    private bool _hasCut;
    private (long Price, int[] Columns) _best = (long.MaxValue, []);

    private GroupColumns(GroupedProblem problem, int[] sizes)
    {
        _problem = problem;
        _sizes = sizes;
        _prices = [.. sizes.Select(size => Price(problem, size))];
    }

    /// <summary>The ways.</summary>
    public IReadOnlyList<GroupColumn> All => _columns;

    /// <summary>Whether they are all there are.</summary>
    public bool AreComplete { get; private init; }

    /// <summary>Ways that together serve everything, to start from.</summary>
    public IReadOnlyList<int> Start => _best.Columns;

    public static GroupColumns Of(GroupedProblem problem, int[] sizes)
    {
        var all = new GroupColumns(problem, sizes) { AreComplete = true };
        if (all.AddFrom(0, new int[problem.Demands.Count], 0, 0))
        {
            all.IndexCheapest();
            all.AddFillings();
            return all;
        }

        var some = new GroupColumns(problem, sizes);
        some.AddFillings();
        return some;
    }

    /// <summary>Every way with counts from this demand on; false where there are too many.</summary>
    private bool AddFrom(int demand, int[] served, long size, long time)
    {
        if (demand == served.Length)
        {
            if (size > 0)
            {
                AddCovers(served, size, time);
            }

            return _columns.Count <= Most && !_hasCut;
        }

        // What fits here fits with nothing more too, so every step of this search leads to a way: it ends soon where there are many.
        var each = _problem.Demands[demand];
        for (var count = 0; count <= each.Count && Fits(size + (count * each.Size), time + (count * each.Time)); count++)
        {
            served[demand] = count;
            if (!AddFrom(demand + 1, served, size + (count * each.Size), time + (count * each.Time)))
            {
                return false;
            }
        }

        served[demand] = 0;
        return true;
    }

    private void IndexCheapest()
    {
        for (var column = 0; column < _columns.Count; column++)
        {
            var key = Key(_columns[column].Served);
            if (!_cheapest.TryGetValue(key, out var cheapest) || Price(_columns[column]) < Price(_columns[cheapest]))
            {
                _cheapest[key] = column;
            }
        }
    }

    private static string Key(int[] served) => string.Join(',', served);

    /// <summary>Fills group after group with the demands in a shuffled order, as long as each is done in time.</summary>
    private void AddFillings()
    {
        var order = _problem.Demands.SelectMany((demand, d) => Enumerable.Repeat(d, demand.Count)).ToArray();
        var random = 1UL;
        for (var filling = 0; filling < Fillings && _columns.Count <= Most; filling++)
        {
            for (var i = order.Length - 1; i > 0; i--)
            {
                // Knuth's linear congruential generator (MMIX); the high bits are the good ones.
                random = unchecked((random * 6364136223846793005UL) + 1442695040888963407UL);
                var j = (int)((random >> 33) % (ulong)(i + 1));
                (order[i], order[j]) = (order[j], order[i]);
            }

            Fill(order);
        }
    }

    private void Fill(int[] order)
    {
        var served = new int[_problem.Demands.Count];
        var groups = new List<int>();
        long size = 0, time = 0;
        foreach (var d in order)
        {
            var demand = _problem.Demands[d];
            if (!Fits(size + demand.Size, time + demand.Time))
            {
                groups.Add(Cheapest(served, size, time));
                Array.Clear(served);
                (size, time) = (0, 0);
            }

            served[d]++;
            size += demand.Size;
            time += demand.Time;
        }

        groups.Add(Cheapest(served, size, time));
        var price = groups.Sum(column => Price(_columns[column]));
        if (price < _best.Price)
        {
            _best = (price, [.. groups]);
        }
    }

    /// <summary>The cheapest way to cover a group, its ways added where they are new.</summary>
    private int Cheapest(int[] served, long size, long time)
    {
        var key = Key(served);
        if (!_cheapest.TryGetValue(key, out var cheapest))
        {
            var first = _columns.Count;
            AddCovers(served, size, time);
            _cheapest[key] = cheapest = Enumerable.Range(first, _columns.Count - first).MinBy(column => Price(_columns[column]));
        }

        return cheapest;
    }

    /// <summary>What the items of a way cost at the prices of as many as one likes.</summary>
    private long Price(GroupColumn column) => column.Sizes.Select((count, s) => count * _prices[s]).Sum();

    private static long Price(GroupedProblem problem, int size) => problem.Objective switch
    {
        CoverObjective.Cost => problem.Items.Where(item => item.Size == size).Max(item => item.Cost + item.Value),
        CoverObjective.Excess => size,
        _ => 1,
    };

    private bool Fits(long size, long time)
    {
        var largest = _sizes.Max();
        return time + _problem.RoundTime <= _problem.TimeLimit && MostItems(time) >= (size + _problem.PerGroup + largest - 1) / largest;
    }

    /// <summary>Items that can be had ready beside this much serving time.</summary>
    private long MostItems(long time) => _problem.RoundTime == 0
        ? long.MaxValue
        : (_problem.TimeLimit - time) / _problem.RoundTime * _problem.SideBySide;

    /// <summary>Every set of items that covers the size in time and with no item too many, unless there are too many of them.</summary>
    private void AddCovers(int[] served, long size, long time)
    {
        var most = _columns.Count + MostCovers;
        AddCoversFrom(0, new int[_sizes.Length], size + _problem.PerGroup, MostItems(time), served, most);
        _hasCut |= _columns.Count >= most;
    }

    private void AddCoversFrom(int s, int[] taken, long left, long itemsLeft, int[] served, int most)
    {
        if (_columns.Count >= most)
        {
            return;
        }

        if (left <= 0)
        {
            // Minimal: the smallest item taken is needed.
            var smallest = _sizes.Where((_, i) => taken[i] > 0).Min();
            if (left + smallest > 0)
            {
                _columns.Add(new([.. served], [.. taken]));
            }

            return;
        }

        if (s == _sizes.Length || itemsLeft <= 0)
        {
            return;
        }

        AddCoversFrom(s + 1, taken, left, itemsLeft, served, most);
        for (var count = 1; count <= itemsLeft; count++)
        {
            taken[s] = count;
            AddCoversFrom(s + 1, taken, left - ((long)count * _sizes[s]), itemsLeft - count, served, most);
            if (left - ((long)count * _sizes[s]) <= 0)
            {
                break;
            }
        }

        taken[s] = 0;
    }
}
