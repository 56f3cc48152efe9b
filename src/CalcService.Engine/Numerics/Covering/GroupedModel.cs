using Google.OrTools.Sat;

namespace CalcService.Engine.Numerics.Covering;

/// <summary>
/// The choice among the ways to make a group as an integer programme for CP-SAT (Google OR-Tools), the only type here
/// that touches the library, so that small work never loads it. One worker, a fixed seed and limits in deterministic
/// time: the same answer everywhere. The terms of the objective are minimised one after another, each held at its best
/// for the next. Probing and symmetry search are off: they cost more here than they save.
/// </summary>
internal sealed class GroupedModel
{
    /// <summary>Deterministic time for each term, roughly seconds.</summary>
    private const double TermTime = .5;

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

        var solver = new CpSolver
        {
            StringParameters = FormattableString.Invariant(
                $"num_workers:1 random_seed:1 max_deterministic_time:{TermTime} cp_model_probing_level:0 symmetry_level:0"),
        };
        using var stop = cancellationToken.Register(solver.StopSearch);
        foreach (var column in _columns.Start.CountBy(column => column))
        {
            _model.AddHint(_made[column.Key], column.Value);
        }

        GroupedCover? best = null;
        foreach (var term in Terms())
        {
            _model.Minimize(term);
            var status = solver.Solve(_model);
            cancellationToken.ThrowIfCancellationRequested();
            if (status is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible))
            {
                return best is null ? null : best with { IsOptimal = false };
            }

            // Among some ways only the bound over everything proves how good they are.
            var value = solver.ObjectiveValue;
            var proven = status == CpSolverStatus.Optimal;
            best = new(Read(solver), proven && _columns.AreComplete, best?.Gap ?? Gap(value, _columns.AreComplete ? solver.BestObjectiveBound : least));
            if (!proven)
            {
                return best;
            }

            Hold(solver, term);
        }

        return best;
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
        var number = OverItems(_ => 1);
        var groups = LinearExpr.Sum(_made);
        return _problem.Objective switch
        {
            CoverObjective.Cost => [cost, value, groups, size, number],
            CoverObjective.Excess => [size, groups, cost, value, number],
            _ => [number, groups, size, cost, value],
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

    private CoverGroup[] Read(CpSolver solver)
    {
        var left = _taken.Select(variable => solver.Value(variable)).ToArray();
        return [.. _columns.All.SelectMany((column, c) => Enumerable.Range(0, (int)solver.Value(_made[c])).Select(_ => new CoverGroup(column.Served, Take(column, left))))];
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

    private LinearExpr OverColumns(Func<GroupColumn, int> weight) => LinearExpr.WeightedSum(_made, _columns.All.Select(column => (long)weight(column)));
}
