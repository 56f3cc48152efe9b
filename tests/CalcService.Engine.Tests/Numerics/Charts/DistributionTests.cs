using CalcService.Engine.Numerics.Charts;

namespace CalcService.Engine.Tests.Numerics.Charts;

/// <summary>The normal and the noncentral t against their closed forms and tables.</summary>
public sealed class DistributionTests
{
    /// <summary>Two values of a standard normal have |mean|·√2 over a half-normal as T: for two, t with one degree is Cauchy's.</summary>
    [Theory]
    [InlineData(.75, 1)]
    [InlineData(.9, 3.0776835371752527)]
    [InlineData(.975, 12.706204736174694)]
    public void Noncentral_t_without_a_shift_and_with_one_degree_is_that_of_Cauchy(double share, double quantile)
    {
        Assert.Equal(quantile, Math.Tan(Math.PI * (share - .5)), 1e-9 * quantile);
        Assert.Equal(quantile, NoncentralT.Quantile(share, 1, 0), 1e-7 * quantile);
    }

    /// <summary>For two degrees Student's distribution has a closed form: ½ + t/(2·√(2 + t²)).</summary>
    [Theory]
    [InlineData(.5)]
    [InlineData(2)]
    [InlineData(-3)]
    public void Noncentral_t_without_a_shift_and_with_two_degrees_has_its_closed_form(double t) =>
        Assert.Equal(.5 + (t / (2 * Math.Sqrt(2 + (t * t)))), NoncentralT.Cumulative(t, 2, 0), 1e-10);

    /// <summary>At 0 the shift alone decides: P(T ≤ 0) = Φ(−δ).</summary>
    [Theory]
    [InlineData(3, 1.2)]
    [InlineData(40, -.7)]
    public void Noncentral_t_at_zero_is_the_normal_at_minus_the_shift(double degrees, double shift) =>
        Assert.Equal(Normal.Cumulative(-shift), NoncentralT.Cumulative(0, degrees, shift), 1e-12);

    /// <summary>Abramowitz and Stegun, Table 26.1 and the usual percentage points, from memory.</summary>
    [Theory]
    [InlineData(0, .5)]
    [InlineData(1, .841344746068543)]
    [InlineData(1.96, .975002104851780)]
    [InlineData(-2, .022750131948179)]
    [InlineData(3, .998650101968370)]
    [InlineData(-6, 9.865876450376946e-10)]
    public void Normal_has_the_values_of_the_tables(double x, double expected)
    {
        Assert.Equal(expected, Normal.Cumulative(x), 1e-14);
        Assert.Equal(x, Normal.Quantile(expected), 1e-7);
    }
}
