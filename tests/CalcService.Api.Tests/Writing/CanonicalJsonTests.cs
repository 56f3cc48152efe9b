using System.Text;
using CalcService.Api.Reading;
using CalcService.Api.Units;
using CalcService.Api.Writing;

namespace CalcService.Api.Tests.Writing;

/// <summary>The example of RFC 8785, section 3.2.2.</summary>
public sealed record RfcExample
{
    public required IReadOnlyList<double> Numbers { get; init; }

    public required string String { get; init; }

    public required IReadOnlyList<bool?> Literals { get; init; }
}

/// <summary>RFC 8785, its examples from memory.</summary>
public sealed class CanonicalJsonTests
{
    [Fact]
    public void Example_of_the_RFC_is_written_as_the_RFC_has_it()
    {
        var example = new RfcExample
        {
            Numbers = [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
            String = "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"/",
            Literals = [null, true, false],
        };

        using var written = ShapeWriter.Write(JsonForm.CanonicalAnswer, ShapeTable.Of<RfcExample>(), example);
        var text = Encoding.UTF8.GetString(written.Written.Span);

        Assert.Equal(
            """{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\u000f\nA'B\"\\\\\"/"}""", text);
    }

    /// <summary>Section 3.2.3: by UTF-16 code units, so the emoji stands before U+FB33.</summary>
    [Fact]
    public void Members_of_the_RFC_are_sorted_as_the_RFC_has_it()
    {
        string[] names = ["\u20ac", "\r", "\ufb33", "1", "\ud83d\ude00", "\u0080", "\u00f6"];
        var property = typeof(RfcExample).GetProperty(nameof(RfcExample.String))!;

        var shape = new ObjectShape(typeof(RfcExample),
            [.. names.Select(name => new MemberShape<RfcExample, string>(property, name, new TextShape(1), required: true, nullable: false))]);

        Assert.Equal(["\r", "1", "\u0080", "\u00f6", "\u20ac", "\ud83d\ude00", "\ufb33"], shape.Sorted.Select(member => member.Name));
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Number_that_JSON_does_not_have_is_refused(double number)
    {
        var example = new RfcExample { Numbers = [number], Literals = [], String = "" };

        Assert.Throws<NonFiniteResultException>(() => ShapeWriter.Write(JsonForm.Sent, ShapeTable.Of<RfcExample>(), example));
    }

    [Fact]
    public void Control_characters_are_escaped_the_short_way_where_there_is_one()
    {
        var example = new RfcExample { Numbers = [], Literals = [], String = string.Concat(Enumerable.Range(0, 0x20).Select(c => (char)c)) + "\u007F\u2028" };

        using var written = ShapeWriter.Write(JsonForm.CanonicalAnswer, ShapeTable.Of<RfcExample>(), example);
        var text = Encoding.UTF8.GetString(written.Written.Span);

        Assert.Equal(
            """{"literals":[],"numbers":[],"string":"\u0000\u0001\u0002\u0003\u0004\u0005\u0006\u0007\b\t\n\u000b\f\r\u000e\u000f\u0010\u0011\u0012\u0013\u0014\u0015\u0016\u0017\u0018\u0019\u001a\u001b\u001c\u001d\u001e\u001f"""
                + "\u007F\u2028\"}", text);
    }
}
