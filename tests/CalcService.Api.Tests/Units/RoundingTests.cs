using System.Globalization;
using System.Numerics;
using CalcService.Api.Units;
using CsCheck;

namespace CalcService.Api.Tests.Units;

public sealed class RoundingTests
{
    /// <summary>Ties that a double holds exactly; half to even by hand.</summary>
    [Theory]
    [InlineData(.5, 1, .5)]
    [InlineData(2.5, 1, 2)]
    [InlineData(3.5, 1, 4)]
    [InlineData(-2.5, 1, -2)]
    [InlineData(1.25, 2, 1.2)]
    [InlineData(1.75, 2, 1.8)]
    [InlineData(1234565, 6, 1234560)]
    [InlineData(1234575, 6, 1234580)]
    [InlineData(0.00390625, 5, 0.0039062)]
    [InlineData(9.5, 1, 10)]
    [InlineData(999999.5, 6, 1000000)]
    [InlineData(0, 6, 0)]
    [InlineData(1e300, 6, 1e300)]
    [InlineData(1.2345675e-300, 6, 1.23457e-300)]
    [InlineData(double.MaxValue, 12, 1.79769313486e308)]
    [InlineData(double.Epsilon, 12, double.Epsilon)]
    public void ToDigits_of_ties_and_ends_of_the_range_is_half_even(double value, int digits, double expected) =>
        Assert.Equal(expected, Rounding.ToDigits(value, digits));

    [Fact]
    public void ToDigits_of_minus_zero_is_zero() => Assert.False(double.IsNegative(Rounding.ToDigits(-0.0, 6)));

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    public void ToDigits_of_what_is_no_number_leaves_it(double value) => Assert.Equal(value, Rounding.ToDigits(value, 6));

    [Fact]
    public void ToDigits_of_powers_of_ten_leaves_them() => Assert.All(Enumerable.Range(-300, 600), power =>
    {
        var value = double.Parse("1e" + power, CultureInfo.InvariantCulture);
        Assert.Equal(value, Rounding.ToDigits(value, 12));
        Assert.Equal(value, Rounding.ToDigits(value, 6));
    });

    /// <summary>The framework formats the exact value of a double correctly; only within a breath of a tie may it differ.</summary>
    [Fact]
    public void ToDigits_is_the_decimal_formatting_of_the_value_except_at_a_tie() =>
        Gen.Select(Values, Gen.OneOf(6, 12)).Sample((value, digits) =>
            IsNearTie(value, digits)
            || Rounding.ToDigits(value, digits) == double.Parse(value.ToString("E" + (digits - 1), CultureInfo.InvariantCulture),
            CultureInfo.InvariantCulture),
            iter: 50_000);

    [Fact]
    public void ToDigits_of_what_has_so_many_digits_leaves_it() =>
        Gen.Select(Gen.Long[100_000_000_000, 999_999_999_999], Gen.Int[-25, 25]).Sample((digits, power) =>
        {
            var value = double.Parse($"{digits}e{power}", CultureInfo.InvariantCulture);
            return Rounding.ToDigits(value, 12) == value;
        }, iter: 20_000);

    /// <summary>A printed limit never lies beyond the limit, and never further off than one in its last digit.</summary>
    [Fact]
    public void Limits_round_to_the_safe_side() => Gen.Select(Values, Gen.OneOf(3, 4)).Sample((value, digits) =>
    {
        var (down, up) = (Rounding.DownToDigits(value, digits), Rounding.UpToDigits(value, digits));
        var last = Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(value))) - digits + 1);
        var slack = 2e-9 * Math.Abs(value);
        return down <= value + slack && up >= value - slack && value - down <= last + slack && up - value <= last + slack;
    }, iter: 20_000);

    [Fact]
    public void ToDigits_twice_is_ToDigits_once() =>
        Gen.Select(Values, Gen.OneOf(6, 12)).Sample(
            (value, digits) => Rounding.ToDigits(Rounding.ToDigits(value, digits), digits) == Rounding.ToDigits(value, digits),
            iter: 50_000);

    private static Gen<double> Values => Gen.Select(Gen.Double[1, 10], Gen.Int[-20, 20], Gen.Bool)
        .Select((mantissa, power, negative) => (negative ? -mantissa : mantissa) * Math.Pow(10, power));

    /// <summary>Whether the digit sequence after the last kept one is a half to within a few units of the double's last place.</summary>
    private static bool IsNearTie(double value, int digits)
    {
        var text = Math.Abs(value).ToString("E30", CultureInfo.InvariantCulture);
        var rest = BigInteger.Parse(text.Replace(".", "", StringComparison.Ordinal)[digits..31], CultureInfo.InvariantCulture);
        var half = 5 * BigInteger.Pow(10, 30 - digits);
        return BigInteger.Abs(rest - half) < BigInteger.Pow(10, 31 - 15);
    }
}
