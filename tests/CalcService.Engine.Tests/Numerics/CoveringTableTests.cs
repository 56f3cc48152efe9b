using CalcService.Engine.Numerics.Covering;

namespace CalcService.Engine.Tests.Numerics;

public sealed class CoveringTableTests
{
    /// <summary>Sizes and costs invented; covers computed with an independent integer programme.</summary>
    private static readonly CoverItem[] Kits = [new(300, 19, 0, null), new(700, 41, 0, null), new(1100, 62, 0, null)];

    [Theory]
    [InlineData(2950, 179, 4, 1, 1)]
    [InlineData(5000, 286, 2, 0, 4)]
    [InlineData(7777, 448, 4, 0, 6)]
    public void Cover_of_least_cost_is_the_known_one(long demand, long cost, int small, int medium, int large)
    {
        var taken = Solve(Kits, demand, CoverObjective.Cost)!;
        Assert.Equal([small, medium, large], taken);
        Assert.Equal(cost, taken.Zip(Kits, (count, kit) => count * kit.Cost).Sum());
    }

    [Theory]
    [InlineData(CoverObjective.Cost)]
    [InlineData(CoverObjective.Excess)]
    [InlineData(CoverObjective.Number)]
    public void Cover_of_nothing_takes_nothing(CoverObjective objective)
    {
        Assert.Equal([0, 0, 0], Solve(Kits, 0, objective));
        Assert.Equal([0, 0, 0], Solve(Kits, -1, objective));
    }

    [Fact]
    public void Cover_without_items_is_none() => Assert.Null(Solve([], 1, CoverObjective.Cost));

    [Fact]
    public void Cover_beyond_the_limits_is_none() => Assert.Null(Solve([new(3, 1, 0, 2), new(5, 1, 0, 1)], 12, CoverObjective.Cost));

    [Fact]
    public void Cover_of_all_there_is_takes_all() =>
        Assert.Equal([2, 1], Solve([new(3, 1, 0, 2), new(5, 1, 0, 1)], 11, CoverObjective.Cost));

    // One pair for each place in the order of the objective: all before it are equal.
    [Theory]
    [InlineData(CoverObjective.Cost, 4, 1, 9, 9, 3, 2, 0, 0, 4, "1 0")] // cost before value, excess
    [InlineData(CoverObjective.Cost, 4, 1, 1, 9, 3, 1, 2, 0, 3, "1 0")] // then value, though it leaves more
    [InlineData(CoverObjective.Cost, 4, 1, 1, 9, 3, 1, 1, 9, 3, "0 1")] // then excess
    [InlineData(CoverObjective.Cost, 2, 1, 1, 9, 4, 2, 2, 9, 4, "0 1")] // then number
    [InlineData(CoverObjective.Cost, 4, 1, 1, 9, 4, 1, 1, 9, 4, "0 1")] // then the counts that come first
    [InlineData(CoverObjective.Excess, 4, 1, 0, 9, 3, 9, 9, 9, 3, "0 1")]
    [InlineData(CoverObjective.Excess, 3, 2, 0, 9, 3, 1, 9, 9, 3, "0 1")]
    [InlineData(CoverObjective.Excess, 3, 1, 2, 9, 3, 1, 1, 9, 3, "0 1")]
    [InlineData(CoverObjective.Excess, 2, 1, 1, 9, 4, 2, 2, 9, 4, "0 1")]
    [InlineData(CoverObjective.Number, 9, 9, 9, 9, 2, 0, 0, 9, 4, "1 0")]
    [InlineData(CoverObjective.Number, 5, 1, 1, 9, 4, 9, 9, 9, 4, "0 1")]
    [InlineData(CoverObjective.Number, 4, 2, 0, 9, 4, 1, 9, 9, 4, "0 1")]
    [InlineData(CoverObjective.Number, 4, 1, 2, 9, 4, 1, 1, 9, 4, "0 1")]
    public void Tie_goes_by_the_next_place_in_the_order(
        CoverObjective objective, int sizeA, long costA, long valueA, int limitA, int sizeB, long costB, long valueB, int limitB,
        long demand, string taken) =>
        Assert.Equal(taken,
        string.Join(' ', Solve([new(sizeA, costA, valueA, limitA), new(sizeB, costB, valueB, limitB)], demand, objective)!));

    [Fact]
    public void Budget_that_ends_first_gives_no_answer_and_keeps_its_steps()
    {
        var budget = new Budget(100);
        Assert.Null(CoveringTable.Solve(Kits, 7777, CoverObjective.Cost, budget, CancellationToken.None));
        Assert.Equal(100, budget.Left);
    }

    [Fact]
    public void Budget_pays_for_the_table()
    {
        var budget = new Budget(Budget.DefaultSteps);
        Assert.NotNull(CoveringTable.Solve(Kits, 7777, CoverObjective.Cost, budget, CancellationToken.None));
        // 78 cells of 100 for the demand, 11 beyond it, for each of three sizes and two rows of sums.
        Assert.Equal(Budget.DefaultSteps - (5 * (78 + 11)), budget.Left);
    }

    [Theory]
    [InlineData(10_000_000_000, int.MaxValue)]
    [InlineData(long.MaxValue / 4, null)]
    [InlineData(long.MaxValue / 4, int.MaxValue)]
    public void Budget_ends_first_however_large_the_demand(long demand, int? limit) =>
        Assert.Null(Solve([new(1, 1, 0, limit), new(3, 1, 0, limit)], demand, CoverObjective.Cost));

    [Fact]
    public void Cancellation_ends_the_work()
    {
        using var cancelled = new CancellationTokenSource();
        cancelled.Cancel();
        Assert.Throws<OperationCanceledException>(
            () => CoveringTable.Solve(Kits, 7777, CoverObjective.Cost, new Budget(Budget.DefaultSteps), cancelled.Token));
    }

    private static IReadOnlyList<int>? Solve(CoverItem[] items, long demand, CoverObjective objective) =>
        CoveringTable.Solve(items, demand, objective, new Budget(Budget.DefaultSteps), TestContext.Current.CancellationToken);
}
