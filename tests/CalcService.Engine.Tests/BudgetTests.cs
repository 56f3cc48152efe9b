namespace CalcService.Engine.Tests;

public sealed class BudgetTests
{
    [Fact]
    public void Budget_gives_what_it_has_and_nothing_more()
    {
        var budget = new Budget(10);
        Assert.True(budget.TrySpend(4));
        Assert.False(budget.TrySpend(7));
        Assert.Equal(6, budget.Left);
        Assert.True(budget.TrySpend(6));
        Assert.False(budget.TrySpend(1));
        Assert.True(budget.TrySpend(0));
    }
}
