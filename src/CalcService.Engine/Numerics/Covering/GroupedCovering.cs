namespace CalcService.Engine.Numerics.Covering;

/// <summary>Covers demands in groups that must each be done in time.</summary>
public static class GroupedCovering
{
    /// <summary>The best groups, or null where a demand can't be served in time or the items don't suffice.</summary>
    /// <param name="problem">What to cover.</param>
    /// <param name="budget">Pays for the tables.</param>
    /// <param name="cancellationToken">Ends the work.</param>
    public static GroupedCover? Solve(GroupedProblem problem, Budget budget, CancellationToken cancellationToken)
    {
        // The items of any groups together cover everything, so no grouping is better than the best cover of it all.
        var size = problem.PerGroup + problem.Demands.Sum(demand => demand.Size * demand.Count);
        if (CoveringTable.Solve(problem.Items, size, problem.Objective, budget, cancellationToken) is not { } bound)
        {
            return null;
        }

        var time = (Rounds(problem, bound.Sum()) * problem.RoundTime) + problem.Demands.Sum(demand => demand.Time * demand.Count);
        if (time <= problem.TimeLimit)
        {
            return new([new([.. problem.Demands.Select(demand => demand.Count)], bound)], IsOptimal: true, Gap: 0);
        }

        return CanServeEach(problem) ? GroupedModel.Solve(problem, bound, cancellationToken) : null;
    }

    /// <summary>Whether each demand alone could be served in time with the largest items.</summary>
    private static bool CanServeEach(GroupedProblem problem)
    {
        var largest = problem.Items.Max(item => item.Size);
        return problem.Demands.All(demand =>
            (Rounds(problem, (demand.Size + problem.PerGroup + largest - 1) / largest) * problem.RoundTime)
            + demand.Time <= problem.TimeLimit);
    }

    private static long Rounds(GroupedProblem problem, long items) => (items + problem.SideBySide - 1) / problem.SideBySide;
}
