using CalcService.Engine.Cones;

namespace CalcService.Engine.Tests.Cones;

/// <summary>How the solution of a cone ends where it can't.</summary>
public sealed class ConeLoadTests
{
    [Theory]
    [InlineData(20e3)]
    [InlineData(250e3)]
    public void Budget_that_is_spent_gives_no_answer(double loadN)
    {
        var enough = new Budget(Budget.DefaultSteps);
        Assert.NotNull(ConeLoad.Solve(SomeCones.Full, loadN, enough, TestContext.Current.CancellationToken));
        var spent = Budget.DefaultSteps - enough.Left;
        // Wherever it runs out.
        for (var steps = 0L; steps < spent; steps += Math.Max(1, spent / 40))
        {
            Assert.Null(ConeLoad.Solve(SomeCones.Full, loadN, new Budget(steps), TestContext.Current.CancellationToken));
        }

        Assert.Null(ConeLoad.FullContactLoadN(SomeCones.Full, new Budget(3), TestContext.Current.CancellationToken));
    }

    [Fact]
    public void Cancelled_calculation_ends() =>
        Assert.Throws<OperationCanceledException>(() =>
            ConeLoad.Solve(SomeCones.Full, 50e3, new Budget(Budget.DefaultSteps), new CancellationToken(canceled: true)));

    [Fact]
    public void Load_that_overflows_gives_no_answer() =>
        Assert.Null(ConeLoad.Solve(SomeCones.Full, double.MaxValue, new Budget(Budget.DefaultSteps), TestContext.Current.CancellationToken));

    [Theory]
    [InlineData(.023, .072)]
    [InlineData(.037, .0449)]
    public void Socket_without_a_wall_gives_no_answer(double atSmallEnd, double atMouth)
    {
        var cone = SomeCones.Full with { OuterAtSmallEndM = atSmallEnd, OuterAtMouthM = atMouth };
        Assert.Null(ConeLoad.Solve(cone, 50e3, new Budget(Budget.DefaultSteps), TestContext.Current.CancellationToken));
        Assert.Null(ConeLoad.FullContactLoadN(cone, new Budget(Budget.DefaultSteps), TestContext.Current.CancellationToken));
    }
}
