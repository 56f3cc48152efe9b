using System.Globalization;
using CalcService.Engine.Numerics;

namespace CalcService.Engine.Tests.Numerics;

/// <summary>The functions against values of 50 digits by mpmath (Data/elementary.py), and at the places that ISO C, Annex F names.</summary>
public sealed class ElementaryTests
{
    private const double Infinity = double.PositiveInfinity;
    private const double NaN = double.NaN;
    private const double Least = double.Epsilon;

    private static readonly Dictionary<string, Func<double, double, double>> Functions = new()
    {
        ["exp"] = (x, _) => Elementary.Exp(x),
        ["log"] = (x, _) => Elementary.Log(x),
        ["pow"] = Elementary.Pow,
        ["tan"] = (x, _) => Elementary.Tan(x),
        ["atan"] = (x, _) => Elementary.Atan(x),
    };

    [Theory]
    [InlineData("exp", .52, .8)]
    [InlineData("log", .53, 0)]
    [InlineData("pow", .53, .8)]
    [InlineData("tan", 3, .5)]
    [InlineData("atan", 2, .5)]
    public void Function_is_as_near_to_the_value_of_fifty_digits_as_it_says(string function, double units, double ofSubnormals)
    {
        var rows = File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Data", "elementary.csv"))
            .Select(line => line.Split(',')).Where(cells => cells[0] == function)
            .Select(cells => cells[1..].Select(cell => cell.Length > 0 ? double.Parse(cell, CultureInfo.InvariantCulture) : 0).ToArray())
            .ToArray();

        Assert.InRange(rows.Length, 400, 5000);
        Assert.All(rows, row =>
        {
            var (x, y, nearest, rest) = (row[0], row[1], row[2], row[3]);
            var off = ((Functions[function](x, y) - nearest) / Ulp(nearest)) - rest;
            Assert.InRange(Math.Abs(off), 0, double.IsNormal(nearest) ? units : ofSubnormals);
        });
    }

    [Fact]
    public void Exponential_at_its_ends()
    {
        (double X, double Expected)[] ends =
        [
            (0.0, 1), (-0.0, 1), (Infinity, Infinity), (-Infinity, 0), (NaN, NaN), (709.782712893384, 1.7976931348622732e308),
            (709.7827128933841, Infinity), (1e308, Infinity), (-745.1332191019411, Least), (-745.1332191019413, 0), (-1e308, 0),
            (Least, 1)
        ];
        Assert.All(ends, end => AssertSame(end.Expected, Elementary.Exp(end.X)));
    }

    [Fact]
    public void Logarithm_at_its_ends()
    {
        (double X, double Expected)[] ends =
        [
            (0.0, -Infinity), (-0.0, -Infinity), (1, 0), (-Least, NaN), (-1, NaN), (-Infinity, NaN), (Infinity, Infinity), (NaN, NaN)
        ];
        Assert.All(ends, end => AssertSame(end.Expected, Elementary.Log(end.X)));
    }

    [Fact]
    public void Power_at_its_ends()
    {
        (double X, double Y, double Expected)[] ends =
        [
            (0.0, -3, Infinity), (-0.0, -3, -Infinity), (-0.0, -2, Infinity), (-0.0, -.5, Infinity), (0.0, -Infinity, Infinity),
            (-0.0, 3, -0.0), (-0.0, 2, 0), (0.0, .5, 0), (0.0, Infinity, 0), (-1, Infinity, 1), (-1, -Infinity, 1), (1, NaN, 1),
            (NaN, 0, 1), (NaN, -0.0, 1), (-2, .5, NaN), (NaN, 1, NaN), (2, NaN, NaN), (.5, -Infinity, Infinity), (-2, -Infinity, 0),
            (.5, Infinity, 0), (2, Infinity, Infinity), (-Infinity, -3, -0.0), (-Infinity, -2, 0), (-Infinity, 3, -Infinity),
            (-Infinity, 2.5, Infinity), (Infinity, -1, 0), (Infinity, 1, Infinity), (-2, 3, -8), (-2, 2, 4), (-2, -1, -.5),
            (10, 309, Infinity), (-10, 309, -Infinity), (10, -400, 0), (-10, -401, -0.0), (1.0000000000000002, 1e300, Infinity),
            (1.0000000000000002, -1e300, 0), (.9999999999999999, 1e300, 0), (5, Least, 1), (-1, 1e300, 1), (-1, 9007199254740991, -1)
        ];
        Assert.All(ends, end => AssertSame(end.Expected, Elementary.Pow(end.X, end.Y)));
    }

    [Fact]
    public void Inverse_tangent_at_its_ends()
    {
        (double X, double Expected)[] ends =
        [
            (0.0, 0.0), (-0.0, -0.0), (Infinity, Math.PI / 2), (-Infinity, -Math.PI / 2), (NaN, NaN)
        ];
        Assert.All(ends, end => AssertSame(end.Expected, Elementary.Atan(end.X)));
    }

    [Fact]
    public void Tangent_keeps_its_sign_and_takes_no_more_than_a_right_angle()
    {
        AssertSame(-0.0, Elementary.Tan(-0.0));
        AssertSame(NaN, Elementary.Tan(NaN));
        Assert.Equal(-Elementary.Tan(1.2), Elementary.Tan(-1.2));
        Assert.Throws<ArgumentOutOfRangeException>(() => Elementary.Tan(-1.6));
    }

    /// <summary>Where one piece of a table ends and the next begins nothing may step back.</summary>
    [Fact]
    public void Exponential_and_logarithm_never_fall()
    {
        for (var k = -4000; k < 4000; k++)
        {
            var border = (k + .5) * Math.Log(2) / 128;
            Assert.InRange(Elementary.Exp(border), Elementary.Exp(Math.BitDecrement(border)), Elementary.Exp(Math.BitIncrement(border)));
        }

        for (var i = 128; i < 4096; i++)
        {
            var border = i / 256.0;
            Assert.InRange(Elementary.Log(border), Elementary.Log(Math.BitDecrement(border)), Elementary.Log(Math.BitIncrement(border)));
        }
    }

    private static double Ulp(double x) => Math.BitIncrement(Math.Abs(x)) - Math.Abs(x);

    /// <summary>The sign of nothing counts too.</summary>
    private static void AssertSame(double expected, double found) =>
        Assert.True(expected.Equals(found) && (double.IsNaN(expected) || double.IsNegative(expected) == double.IsNegative(found)),
        $"{found} is not {expected}");
}
