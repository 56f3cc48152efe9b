using CalcService.Engine.Numerics.Conduction;

namespace CalcService.Engine.Tests.Numerics.Conduction;

public sealed class ConductionSolverTests
{
    [Fact]
    public void Air_that_changes_is_followed_through_its_kinks()
    {
        // A lump with C = 1, h·A = 1 in air that rises by 1 a second from 1 s to 3 s: T = (t − 1) − (1 − e^−(t−1)) there, exactly.
        var network = new ConductionNetwork(1);
        network.AddMaterial(0, 1);
        network.Expose(0, 1);
        var air = new PiecewiseLinear([1, 3], [0, 2]);
        double Exact(double t) => t <= 1 ? 0 : t <= 3 ? t - 2 + Math.Exp(1 - t) : 2 + ((1 + Math.Exp(-2) - 2) * Math.Exp(3 - t));
        var worst = 0.0;
        var (_, run) = Bodies.At(network, 0, air, 8, new(1e-7, 1), watch: step =>
        {
            worst = Math.Max(worst, Math.Abs(step.TemperaturesAfter[0] - Exact(step.ToS)));
            worst = Math.Max(worst, Math.Abs(step.Temperature(0, (step.FromS + step.ToS) / 2) - Exact((step.FromS + step.ToS) / 2)));
            return true;
        });

        Assert.InRange(worst, 0, 1e-6);
        Assert.InRange(run.Balance.RelativeError, 0, 1e-12);
    }

    [Fact]
    public void Steps_of_a_stiff_body_are_as_few_as_those_of_a_slow_one()
    {
        // A film of steel 10 µm thick has a pace of a microsecond; an explicit step could not be longer.
        var radii = Bodies.Even(.03, 30).Append(.03001).ToArray();
        RingMaterial[] rings = [.. Enumerable.Repeat(new RingMaterial(2e6, .6, .6), 30), new(3.6e6, 50, 50)];
        var (_, run) = Bodies.At(Bodies.SliceOf(radii, rings, 8), 40, PiecewiseLinear.Constant(0), 36000, new(.01, 1));
        Assert.InRange(run.Steps, 1, 60);
        Assert.InRange(run.Balance.RelativeError, 0, 1e-6);
    }

    [Fact]
    public void Run_without_budget_ends_and_says_so()
    {
        var network = Bodies.Slice(Bodies.Even(1, 9), new(1, 1, 1), 1);
        var solver = new ConductionSolver(network, null, PiecewiseLinear.Constant(0), Bodies.Fine);
        var budget = new Budget(25);
        var run = solver.Run(Enumerable.Repeat(1.0, 10).ToArray(), [], 0, 1, _ => true, budget, TestContext.Current.CancellationToken);

        Assert.Equal(ConductionEnd.OutOfBudget, run.End);
        Assert.Equal(5, budget.Left);
    }

    [Fact]
    public async Task Run_that_is_called_off_ends()
    {
        using var source = new CancellationTokenSource();
        await source.CancelAsync();
        var network = Bodies.Slice(Bodies.Even(1, 9), new(1, 1, 1), 1);
        var solver = new ConductionSolver(network, null, PiecewiseLinear.Constant(0), Bodies.Fine);
        Assert.Throws<OperationCanceledException>(() => solver.Run(new double[10], [], 0, 1, _ => true, new Budget(1000), source.Token));
    }

    [Fact]
    public void Run_stops_when_its_watcher_has_seen_enough()
    {
        var (_, run) = Bodies.At(Bodies.Slice(Bodies.Even(1, 9), new(1, 1, 1), 1), 1, PiecewiseLinear.Constant(0), 10,
            watch: step => step.ToS < .1);
        Assert.Equal(ConductionEnd.Stopped, run.End);
        Assert.InRange(run.TimeS, .1, .5);
    }

    [Theory]
    [InlineData(-1, 5, 0)]
    [InlineData(0, 5, 2)]
    [InlineData(1.5, 8, 2)]
    [InlineData(2, 9, -1)]
    [InlineData(3, 8, -1)]
    [InlineData(4, 7, 0)]
    [InlineData(9, 7, 0)]
    public void Series_is_straight_between_its_points_and_constant_outside(double time, double value, double slope)
    {
        var series = new PiecewiseLinear([0, 2, 4], [5, 9, 7]);
        Assert.Equal(value, series.At(time), 12);
        Assert.Equal(slope, series.SlopeAfter(time), 12);
    }

    [Fact]
    public void Series_whose_times_do_not_rise_is_refused()
    {
        Assert.Throws<ArgumentException>(() => new PiecewiseLinear([0, 0], [1, 2]));
        Assert.Throws<ArgumentException>(() => new PiecewiseLinear([0, 1], [1]));
        Assert.Throws<ArgumentException>(() => new PiecewiseLinear([], []));
    }
}
