using Google.OrTools.Sat;

namespace CalcService.Engine.Numerics.Covering;

/// <summary>
/// The choice among the ways to make a group as an integer programme for CP-SAT (Google OR-Tools), the only type here
/// that touches the library, so that small work never loads it. One worker, a fixed seed and limits in deterministic
/// time: the same answer everywhere. The terms of the objective are minimised one after another, each held at its best
/// for the next; the first one is what is proven, the others break ties as far as their time goes. Probing and symmetry search are off:
/// they cost more here than they save.
/// </summary>
internal sealed class GroupedModel
{
    /// <summary>Deterministic time for the first term, roughly seconds.</summary>
    private const double FirstTermTime = .5;

    /// <summary>Deterministic time for each term that breaks ties.</summary>
    private const double TieTime = .1;

    private readonly GroupedProblem _problem;
    private readonly int[] _sizes;
    private readonly GroupColumns _columns;
    private readonly CpModel _model = new();
    private readonly IntVar[] _made;
    private readonly IntVar[] _taken;

    private GroupedModel(GroupedProblem problem)
    {
        _problem = problem;
        _sizes = [.. problem.Items.Select(item => item.Size).Distinct()];
        _columns = GroupColumns.Of(problem, _sizes);
        var demands = problem.Demands.Sum(demand => demand.Count);
        _made = [.. _columns.All.Select((_, c) => _model.NewIntVar(0, demands, $"made{c}"))];
        _taken = [.. problem.Items.Select((item, i) => _model.NewIntVar(0, item.Limit ?? int.MaxValue, $"taken{i}"))];
        for (var d = 0; d < problem.Demands.Count; d++)
        {
            _model.Add(OverColumns(column => column.Served[d]) == problem.Demands[d].Count);
        }

        for (var s = 0; s < _sizes.Length; s++)
        {
            var ofSize = _taken.Where((_, i) => problem.Items[i].Size == _sizes[s]);
            _model.Add(LinearExpr.Sum(ofSize) == OverColumns(column => column.Sizes[s]));
        }
    }

    /// <param name="problem">What to cover.</param>
    /// <param name="bound">The best cover of everything at once: no groups do better.</param>
    /// <param name="cancellationToken">Ends the work.</param>
    public static GroupedCover? Solve(GroupedProblem problem, IReadOnlyList<int> bound, CancellationToken cancellationToken) =>
        new GroupedModel(problem).Minimise(bound, cancellationToken);

    private GroupedCover? Minimise(IReadOnlyList<int> bound, CancellationToken cancellationToken)
    {
        var first = FirstTerm();
        var least = bound.Select((taken, i) => taken * first(_problem.Items[i])).Sum();
        _model.Add(OverItems(first) >= least);

        var start = Start(first, least);
        HintStart(start);
        var best = start;
        var isFirst = true;
        foreach (var term in Terms())
        {
            var solver = new CpSolver
            {
                StringParameters = "num_workers:1 random_seed:1 cp_model_probing_level:0 symmetry_level:0 "
                    + FormattableString.Invariant($"max_deterministic_time:{(isFirst ? FirstTermTime : TieTime)}"),
            };
            using var stop = cancellationToken.Register(solver.StopSearch);
            _model.Minimize(term);
            var status = solver.Solve(_model);
            cancellationToken.ThrowIfCancellationRequested();
            if (status is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible))
            {
                return best;
            }

            // Among some ways only the bound over everything proves how good they are.
            var (value, proven) = (solver.ObjectiveValue, status == CpSolverStatus.Optimal);
            var provenBound = _columns.AreComplete ? solver.BestObjectiveBound : least;
            best = isFirst
                ? new(Read(c => solver.Value(_made[c]), i => solver.Value(_taken[i])), value <= provenBound, Gap(value, provenBound))
                : best! with { Groups = Read(c => solver.Value(_made[c]), i => solver.Value(_taken[i])) };
            if (isFirst && !proven)
            {
                return best;
            }

            Hold(solver, term);
            isFirst = false;
        }

        return best;
    }

    /// <summary>The groups to start from, or null where there are none or the items don't reach for them.</summary>
    private GroupedCover? Start(Func<CoverItem, long> first, long least)
    {
        if (_columns.Start.Count == 0)
        {
            return null;
        }

        var taken = new long[_taken.Length];
        for (var s = 0; s < _sizes.Length; s++)
        {
            var need = _columns.Start.Sum(column => (long)_columns.All[column].Sizes[s]);
            for (var i = 0; i < taken.Length; i++)
            {
                taken[i] += _problem.Items[i].Size == _sizes[s] ? Math.Min(need, _problem.Items[i].Limit ?? long.MaxValue) : 0;
                need -= _problem.Items[i].Size == _sizes[s] ? taken[i] : 0;
            }

            if (need > 0)
            {
                return null;
            }
        }

        var made = _columns.Start.CountBy(column => column).ToDictionary();
        var value = taken.Select((count, i) => count * first(_problem.Items[i])).Sum();
        return new(Read(c => made.GetValueOrDefault(c), i => taken[i]), value <= least, Gap(value, least));
    }

    private void HintStart(GroupedCover? start)
    {
        if (start is null)
        {
            return;
        }

        var made = _columns.Start.CountBy(column => column).ToDictionary();
        for (var c = 0; c < _made.Length; c++)
        {
            _model.AddHint(_made[c], made.GetValueOrDefault(c));
        }

        for (var i = 0; i < _taken.Length; i++)
        {
            _model.AddHint(_taken[i], start.Groups.Sum(group => group.Taken[i]));
        }
    }

    private static double Gap(double value, double bound) => value <= 0 ? 0 : Math.Max(0, (value - bound) / value);

    private Func<CoverItem, long> FirstTerm() => _problem.Objective switch
    {
        CoverObjective.Cost => item => item.Cost,
        CoverObjective.Excess => item => item.Size,
        _ => _ => 1,
    };

    private IEnumerable<LinearExpr> Terms()
    {
        var cost = OverItems(item => item.Cost);
        var value = OverItems(item => item.Value);
        var size = OverItems(item => item.Size);
        var groups = LinearExpr.Sum(_made);
        return _problem.Objective switch
        {
            CoverObjective.Cost => [cost, groups, value, size],
            CoverObjective.Excess => [size, groups, cost, value],
            _ => [OverItems(_ => 1), groups, size, cost],
        };
    }

    private void Hold(CpSolver solver, LinearExpr term)
    {
        _model.Add(term <= (long)Math.Round(solver.ObjectiveValue));
        _model.ClearHints();
        foreach (var variable in _made.Concat(_taken))
        {
            _model.AddHint(variable, solver.Value(variable));
        }
    }

    private CoverGroup[] Read(Func<int, long> made, Func<int, long> taken)
    {
        var left = Enumerable.Range(0, _taken.Length).Select(taken).ToArray();
        return [.. _columns.All.SelectMany((column, c) =>
            Enumerable.Range(0, (int)made(c)).Select(_ => new CoverGroup(column.Served, Take(column, left))))];
    }

    /// <summary>The items of a group, in the order in which the problem lists those of each size.</summary>
    private int[] Take(GroupColumn column, long[] left)
    {
        var need = (int[])column.Sizes.Clone();
        var taken = new int[_problem.Items.Count];
        for (var i = 0; i < taken.Length; i++)
        {
            var s = Array.IndexOf(_sizes, _problem.Items[i].Size);
            taken[i] = (int)Math.Min(need[s], left[i]);
            need[s] -= taken[i];
            left[i] -= taken[i];
        }

        return taken;
    }

    private LinearExpr OverItems(Func<CoverItem, long> weight) => LinearExpr.WeightedSum(_taken, _problem.Items.Select(weight));

    private LinearExpr OverColumns(Func<GroupColumn, int> weight)
    {
        var some = _columns.All.Select((column, c) => (Variable: _made[c], Weight: (long)weight(column))).Where(term => term.Weight != 0)
            .ToArray();
        return LinearExpr.WeightedSum(some.Select(term => term.Variable), some.Select(term => term.Weight));
    }
}
