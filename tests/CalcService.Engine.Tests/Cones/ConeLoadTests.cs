using CalcService.Engine.Cones;
using CalcService.Engine.Provenance;
using CalcService.Engine.Tests.Numerics;

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

    /// <summary>What the force loses there, −dN/dx = 2π·r·p·(t + μ), by differences of a fine march; the hoop stress is Lamé's.</summary>
    [Theory]
    [InlineData(20e3)]
    [InlineData(250e3)]
    public void Pressure_at_the_small_end_takes_what_the_force_loses(double loadN)
    {
        var cone = SomeCones.Full;
        var trace = new Trace(on: true);
        var fine = ConeLoad.Solve(cone, loadN, new Budget(Budget.DefaultSteps), TestContext.Current.CancellationToken, 2400,
            trace)!.Stations;
        var lost = ((3 * fine[0].ForceN) - (4 * fine[1].ForceN) + fine[2].ForceN) / (2 * fine[1].XM);
        var pressure = lost / (2 * Math.PI * .0115 * (((.045 - .023) / .2) + cone.Friction));

        Printed.Matches(pressure, fine[0].PressurePa, 1e-4);
        Printed.Matches(pressure * ((1.6 * 1.6) + 1) / ((1.6 * 1.6) - 1), fine[0].HoopPa, 1e-4);
        // The trace leads to these numbers.
        Printed.Matches(fine[0].PressurePa, Value("cone-pressure"), 1e-9);
        Assert.Equal(fine[0].HoopPa, Value("cone-hoop-stress"));
        Assert.Equal(loadN, fine[0].ForceN, loadN * 1e-9);

        double Value(string id) => trace.Steps.Single(step => step.Formula.Id == id).Value.Si;
    }

    [Fact]
    public void Cancelled_calculation_ends() =>
        Assert.Throws<OperationCanceledException>(() =>
            ConeLoad.Solve(SomeCones.Full, 50e3, new Budget(Budget.DefaultSteps), new CancellationToken(canceled: true)));

    [Fact]
    public void Load_that_overflows_gives_no_answer() =>
        Assert.Null(ConeLoad.Solve(SomeCones.Full, double.MaxValue, new Budget(Budget.DefaultSteps),
        TestContext.Current.CancellationToken));

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
