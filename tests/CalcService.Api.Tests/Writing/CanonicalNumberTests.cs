using System.Globalization;
using System.Text;
using System.Text.Json;
using CalcService.Api.Writing;
using CsCheck;

namespace CalcService.Api.Tests.Writing;

public sealed class CanonicalNumberTests
{
    /// <summary>RFC 8785, appendix B: IEEE 754 doubles and their text; from memory, without the two that are no JSON.</summary>
    [Theory]
    [InlineData("0000000000000000", "0")]
    [InlineData("8000000000000000", "0")]
    [InlineData("0000000000000001", "5e-324")]
    [InlineData("8000000000000001", "-5e-324")]
    [InlineData("7fefffffffffffff", "1.7976931348623157e+308")]
    [InlineData("ffefffffffffffff", "-1.7976931348623157e+308")]
    [InlineData("4340000000000000", "9007199254740992")]
    [InlineData("c340000000000000", "-9007199254740992")]
    [InlineData("4430000000000000", "295147905179352830000")]
    [InlineData("44b52d02c7e14af5", "9.999999999999997e+22")]
    [InlineData("44b52d02c7e14af6", "1e+23")]
    [InlineData("44b52d02c7e14af7", "1.0000000000000001e+23")]
    [InlineData("444b1ae4d6e2ef4e", "999999999999999700000")]
    [InlineData("444b1ae4d6e2ef4f", "999999999999999900000")]
    [InlineData("444b1ae4d6e2ef50", "1e+21")]
    [InlineData("3eb0c6f7a0b5ed8c", "9.999999999999997e-7")]
    [InlineData("3eb0c6f7a0b5ed8d", "0.000001")]
    [InlineData("41b3de4355555553", "333333333.3333332")]
    [InlineData("41b3de4355555554", "333333333.33333325")]
    [InlineData("41b3de4355555555", "333333333.3333333")]
    [InlineData("41b3de4355555556", "333333333.3333334")]
    [InlineData("41b3de4355555557", "333333333.33333343")]
    [InlineData("becbf647612f3696", "-0.0000033333333333333333")]
    [InlineData("43143ff3c1cb0959", "1424953923781206.2")]
    public void Number_of_the_RFC_is_written_as_the_RFC_has_it(string bits, string text) =>
        Assert.Equal(text,
        CanonicalNumber.Write(BitConverter.UInt64BitsToDouble(ulong.Parse(bits, NumberStyles.HexNumber, CultureInfo.InvariantCulture))));

    /// <summary>ECMA-262, Number::toString, one case for each of its branches; worked out by hand.</summary>
    [Theory]
    [InlineData(1e20, "100000000000000000000")]
    [InlineData(123456789012345680000d, "123456789012345680000")]
    [InlineData(1.5e300, "1.5e+300")]
    [InlineData(-12.5, "-12.5")]
    [InlineData(0.1, "0.1")]
    [InlineData(1.25e-5, "0.0000125")]
    [InlineData(1e-7, "1e-7")]
    [InlineData(-1.25e-10, "-1.25e-10")]
    [InlineData(1e15, "1000000000000000")]
    [InlineData(1e16, "10000000000000000")]
    public void Number_in_each_range_of_exponents_is_written_as_ECMAScript_writes_it(double value, string text) =>
        Assert.Equal(text, CanonicalNumber.Write(value));

    [Fact]
    public void Number_written_and_read_by_a_JSON_reader_is_the_same_double() =>
        Gen.Double.Where(double.IsFinite).Sample(
            value => JsonSerializer.Deserialize<double>(CanonicalNumber.Write(value)) == value, iter: 20_000);

    [Fact]
    public void Number_has_no_more_digits_than_the_shortest_that_is_the_same_double() =>
        Gen.Double.Where(value => double.IsFinite(value) && value != 0).Sample(
            value => Digits(CanonicalNumber.Write(value)) == Digits(Shortest(value)), iter: 5_000);

    /// <summary>Against the framework's decimals, which keep the digits that they were made of.</summary>
    [Fact]
    public void Number_of_few_digits_is_written_as_the_decimal_that_it_is() =>
        (from digits in Gen.Int[-9_999_999, 9_999_999]
         from places in Gen.Int[0, 12]
         select new decimal(Math.Abs(digits), 0, 0, digits < 0, (byte)places)).Where(number => Math.Abs(number) >= 1e-6m).Sample(
            number =>
            {
                Span<byte> bytes = stackalloc byte[CanonicalNumber.MostBytes];
                var expected = number.ToString("0.############", CultureInfo.InvariantCulture);
                var value = double.Parse(expected, CultureInfo.InvariantCulture);
                return CanonicalNumber.Write(value) == expected
                    && Encoding.ASCII.GetString(bytes[..CanonicalNumber.Write(value, bytes)]) == expected;
            },
            iter: 50_000);

    private static string Digits(string text) =>
        text.Split('e', 'E')[0].TrimStart('-').Replace(".", "", StringComparison.Ordinal).Trim('0');

    /// <summary>Found by trying one digit more until the double comes back.</summary>
    private static string Shortest(double value) => Enumerable.Range(0, 17)
        .Select(digits => value.ToString("E" + digits, CultureInfo.InvariantCulture))
        .First(text => double.Parse(text, CultureInfo.InvariantCulture) == value);
}
