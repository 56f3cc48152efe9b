using Google.OrTools.Sat;

namespace CalcService.Engine.Numerics.Covering;

/// <summary>
/// The grouping as an integer programme for CP-SAT (Google OR-Tools), the only type here that touches the library, so
/// that small work never loads it. One worker, a fixed seed and limits in deterministic time: the same answer everywhere.
/// The terms of the objective are minimised one after another, each held at its best for the next.
/// </summary>
internal sealed class GroupedModel
{
    /// <summary>Deterministic time for each term, roughly seconds.</summary>
    private const double TermTime = .25;

    /// <summary>Largest model that is worth its building; above, the caller gets no groups.</summary>
    private const int MostVariables = 60_000;

    private readonly GroupedProblem _problem;
    private readonly CpModel _model = new();
    private readonly int _groups;
    private readonly IntVar[][] _served;
    private readonly IntVar[][] _taken;
    private readonly BoolVar[] _used;

    private GroupedModel(GroupedProblem problem, int groups)
    {
        _problem = problem;
        _groups = groups;
        _served = new IntVar[groups][];
        _taken = new IntVar[groups][];
        _used = new BoolVar[groups];
        for (var g = 0; g < groups; g++)
        {
            AddGroup(g);
        }

        AddWhole();
    }

    /// <param name="problem">What to cover.</param>
    /// <param name="bound">The best cover of everything at once: no groups do better.</param>
    /// <param name="cancellationToken">Ends the work.</param>
    public static GroupedCover? Solve(GroupedProblem problem, IReadOnlyList<int> bound, CancellationToken cancellationToken)
    {
        var groups = MostGroups(problem);
        return (long)groups * (problem.Demands.Count + problem.Items.Count + 2) > MostVariables
            ? null
            : new GroupedModel(problem, groups).Minimise(bound, cancellationToken);
    }

    /// <summary>
    /// Two groups whose times add up to no more than the limit can be merged without cost, so a best plan has at most
    /// one group that takes half of the limit or less: (groups − 1)·limit/2 is below the time of all groups together. In
    /// each group one item less would not cover it, which bounds the items and so the rounds.
    /// </summary>
    private static int MostGroups(GroupedProblem problem)
    {
        var demands = problem.Demands.Sum(demand => (long)demand.Count);
        var serving = problem.Demands.Sum(demand => (double)demand.Time * demand.Count);
        var size = problem.Demands.Sum(demand => (double)demand.Size * demand.Count);
        var smallest = (double)problem.Items.Min(item => item.Size);
        // Items of g groups: at most (size + g·per group)/smallest + g; a round each at the worst.
        var fixedTime = serving + (problem.RoundTime * size / smallest);
        var perGroup = problem.RoundTime * ((problem.PerGroup / smallest) + 1);
        var room = (problem.TimeLimit / 2.0) - perGroup;
        return room <= 0 ? (int)demands : (int)Math.Min(demands, Math.Ceiling((fixedTime + (problem.TimeLimit / 2.0)) / room) + 1);
    }

    private void AddGroup(int g)
    {
        _used[g] = _model.NewBoolVar($"used{g}");
        _served[g] = new IntVar[_problem.Demands.Count];
        _taken[g] = new IntVar[_problem.Items.Count];
        var capacity = LinearExpr.NewBuilder();
        var need = LinearExpr.NewBuilder().AddTerm(_used[g], _problem.PerGroup);
        var time = LinearExpr.NewBuilder();
        var count = LinearExpr.NewBuilder();
        for (var d = 0; d < _problem.Demands.Count; d++)
        {
            var demand = _problem.Demands[d];
            _served[g][d] = _model.NewIntVar(0, demand.Count, $"served{d}_{g}");
            _model.Add(_served[g][d] <= demand.Count * _used[g]);
            need.AddTerm(_served[g][d], demand.Size);
            time.AddTerm(_served[g][d], demand.Time);
        }

        for (var i = 0; i < _problem.Items.Count; i++)
        {
            var item = _problem.Items[i];
            var most = Math.Min(item.Limit ?? int.MaxValue, MostTaken(item));
            _taken[g][i] = _model.NewIntVar(0, most, $"taken{i}_{g}");
            _model.Add(_taken[g][i] <= most * _used[g]);
            capacity.AddTerm(_taken[g][i], item.Size);
            count.Add(_taken[g][i]);
        }

        if (_problem.RoundTime > 0)
        {
            var rounds = _model.NewIntVar(0, _problem.TimeLimit / _problem.RoundTime, $"rounds{g}");
            _model.Add(rounds * _problem.SideBySide >= count);
            time.AddTerm(rounds, _problem.RoundTime);
        }

        _model.Add(capacity >= need);
        _model.Add(LinearExpr.Sum(_served[g]) >= _used[g]);
        _model.Add(time <= _problem.TimeLimit);
    }

    private void AddWhole()
    {
        for (var d = 0; d < _problem.Demands.Count; d++)
        {
            _model.Add(LinearExpr.Sum(Row(_served, d)) == _problem.Demands[d].Count);
        }

        for (var i = 0; i < _problem.Items.Count; i++)
        {
            if (_problem.Items[i].Limit is { } limit)
            {
                _model.Add(LinearExpr.Sum(Row(_taken, i)) <= limit);
            }
        }

        // Groups are alike, so they are put in order: what each takes in all never grows.
        for (var g = 1; g < _groups; g++)
        {
            _model.Add(Taken(g - 1) >= Taken(g));
        }
    }

    private GroupedCover? Minimise(IReadOnlyList<int> bound, CancellationToken cancellationToken)
    {
        var solver = new CpSolver { StringParameters = FormattableString.Invariant($"num_workers:1 random_seed:1 max_deterministic_time:{TermTime}") };
        using var stop = cancellationToken.Register(solver.StopSearch);
        GroupedCover? best = null;
        AddBound(bound);
        foreach (var term in Terms())
        {
            _model.Minimize(term);
            var status = solver.Solve(_model);
            cancellationToken.ThrowIfCancellationRequested();
            if (status is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible))
            {
                return best is null ? null : best with { IsOptimal = false };
            }

            var proven = status == CpSolverStatus.Optimal;
            var gap = solver.ObjectiveValue <= 0 ? 0 : Math.Max(0, (solver.ObjectiveValue - solver.BestObjectiveBound) / solver.ObjectiveValue);
            best = new(Read(solver), proven && best is not { IsOptimal: false }, best?.Gap ?? gap);
            if (!proven)
            {
                return best;
            }

            Hold(solver, term);
        }

        return best;
    }

    private void AddBound(IReadOnlyList<int> bound)
    {
        Func<CoverItem, long> first = _problem.Objective switch
        {
            CoverObjective.Cost => item => item.Cost,
            CoverObjective.Excess => item => item.Size,
            _ => _ => 1,
        };
        _model.Add(Sum(first) >= bound.Select((taken, i) => taken * first(_problem.Items[i])).Sum());
    }

    private IEnumerable<LinearExpr> Terms()
    {
        var cost = Sum(item => item.Cost);
        var value = Sum(item => item.Value);
        var size = Sum(item => item.Size);
        var number = Sum(_ => 1);
        var groups = LinearExpr.Sum(_used);
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
        foreach (var variable in _served.Concat(_taken).SelectMany(variables => variables).Concat(_used))
        {
            _model.AddHint(variable, solver.Value(variable));
        }
    }

    private CoverGroup[] Read(CpSolver solver) =>
        [.. Enumerable.Range(0, _groups).Where(g => solver.Value(_used[g]) > 0).Select(g => new CoverGroup(
            [.. _served[g].Select(variable => (int)solver.Value(variable))],
            [.. _taken[g].Select(variable => (int)solver.Value(variable))]))];

    private long MostTaken(CoverItem item) =>
        (_problem.Demands.Sum(demand => demand.Size * demand.Count) + _problem.PerGroup + item.Size - 1) / item.Size;

    private LinearExpr Taken(int g) =>
        LinearExpr.WeightedSum(_taken[g], _problem.Items.Select(item => (long)item.Size));

    private LinearExprBuilder Sum(Func<CoverItem, long> weight)
    {
        var sum = LinearExpr.NewBuilder();
        for (var i = 0; i < _problem.Items.Count; i++)
        {
            for (var g = 0; g < _groups; g++)
            {
                sum.AddTerm(_taken[g][i], weight(_problem.Items[i]));
            }
        }

        return sum;
    }

    private static IEnumerable<IntVar> Row(IntVar[][] variables, int row) => variables.Select(group => group[row]);
}
