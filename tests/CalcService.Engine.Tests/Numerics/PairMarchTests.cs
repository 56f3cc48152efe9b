using CalcService.Engine.Numerics;
using CalcService.Engine.Numerics.BoundaryValue;

namespace CalcService.Engine.Tests.Numerics;

public sealed class PairMarchTests
{
    [Theory]
    [InlineData(0, 10)]
    [InlineData(10, 0)]
    public void March_of_an_oscillator_follows_the_circle(double from, double to)
    {
        var end = March(new Oscillator(), from, to, new(Math.Cos(from), -Math.Sin(from)));
        Assert.Equal(Math.Cos(to), end.First, 1e-9);
        Assert.Equal(-Math.Sin(to), end.Second, 1e-9);
    }

    [Fact]
    public void March_of_a_growing_pair_is_exact_in_each_digit_that_counts()
    {
        var end = March(new Growth(), 0, 12, new(1, 1));
        Printed.Matches(Math.Exp(12), end.First, 1e-9);
        Printed.Matches(Math.Exp(12), end.Second, 1e-9);
    }

    [Fact]
    public void March_over_a_kink_loses_nothing()
    {
        // y′ = max(0, x − π/10): y(1) = (1 − π/10)²/2.
        var end = March(new Kink(), 0, 1, default);
        Printed.Matches(Math.Pow(1 - (Math.PI / 10), 2) / 2, end.First, 1e-9);
    }

    [Fact]
    public void March_in_pieces_gives_what_one_way_gives()
    {
        var march = new PairMarch<Oscillator>(default, 1e-12, new Budget(100000), TestContext.Current.CancellationToken);
        var y = new Pair(1, 0);
        for (var i = 0; i < 100; i++)
        {
            y = march.Go(i * .1, (i + 1) * .1, y)!.Value;
        }

        Assert.Equal(Math.Cos(10), y.First, 1e-9);
        Assert.Equal(y, march.Go(10, 10, y));
    }

    [Fact]
    public void March_that_overflows_or_spends_its_budget_has_no_end()
    {
        Assert.Null(new PairMarch<Blowup>(default, 1e-10, new Budget(100000), TestContext.Current.CancellationToken)
            .Go(0, 1000, new(1, 1)));
        Assert.Null(new PairMarch<Oscillator>(default, 1e-12, new Budget(5), TestContext.Current.CancellationToken).Go(0, 10, new(1, 0)));
    }

    [Theory]
    [InlineData(2, 0, 3)]
    [InlineData(1e-3, 0, 1)]
    [InlineData(.999, 0, 1)]
    public void Root_of_a_rising_function_is_found(double root, double low, double high)
    {
        foreach (var power in (int[])[1, 3, 9])
        {
            double? F(double x) => Math.Pow(x, power) - Math.Pow(root, power);
            var found = RisingRoot.Find(F, (low, F(low)!.Value), (high, F(high)!.Value), 0);
            Assert.Equal(root, found!.Value, (root * 1e-6) + 1e-12);
        }
    }

    [Fact]
    public void Root_that_is_not_between_the_ends_or_has_no_value_is_not_found()
    {
        Assert.Null(RisingRoot.Find(x => x, (1, 1), (2, 2), 0));
        Assert.Null(RisingRoot.Find(x => x, (-2, -2), (-1, -1), 0));
        Assert.Null(RisingRoot.Find(_ => null, (-1, -1), (1, 2), 0));
        Assert.Null(RisingRoot.Find(x => x, (0, double.NaN), (1, 1), 0));
    }

    private static Pair March<TSlope>(TSlope slope, double from, double to, Pair y)
        where TSlope : struct, IPairSlope =>
        new PairMarch<TSlope>(slope, 1e-12, new Budget(1_000_000), TestContext.Current.CancellationToken).Go(from, to, y)!.Value;

    private readonly struct Oscillator : IPairSlope
    {
        public Pair At(double x, Pair y) => new(y.Second, -y.First);
    }

    private readonly struct Growth : IPairSlope
    {
        public Pair At(double x, Pair y) => new(y.Second, y.First);
    }

    private readonly struct Kink : IPairSlope
    {
        public Pair At(double x, Pair y) => new(Math.Max(0, x - (Math.PI / 10)), 0);
    }

    private readonly struct Blowup : IPairSlope
    {
        public Pair At(double x, Pair y) => new(y.First * y.First, 0);
    }
}
