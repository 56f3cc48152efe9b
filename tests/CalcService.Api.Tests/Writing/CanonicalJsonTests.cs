using System.Text;
using System.Text.Json;
using CalcService.Api.Contract;
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

/// <summary>All that may stand in a result, in an order that isn't the canonical one.</summary>
public sealed record Sample
{
    public required Quantity? Size { get; init; }

    public required IReadOnlyList<Part?> Parts { get; init; }

    public required IReadOnlyList<string> Names { get; init; }
}

/// <summary>A part of it.</summary>
public sealed record Part
{
    [Undigested]
    public required string Words { get; init; }

    public required IReadOnlyList<Quantity> Limits { get; init; }

    public required decimal? Amount { get; init; }

    public required JsonElement Any { get; init; }
}

/// <summary>An object with another one in it.</summary>

/// <summary>The other one.</summary>

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

        var text = Canonical(example);

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
            [.. names.Select(name =>
            new MemberShape<RfcExample, string>(property, name, new TextShape(1), required: true, nullable: false))]);

        Assert.Equal(["\r", "1", "\u0080", "\u00f6", "\u20ac", "\ud83d\ude00", "\ufb33"], shape.Digested.Select(member => member.Name));
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Number_that_JSON_does_not_have_is_refused(double number)
    {
        var example = new RfcExample { Numbers = [number], Literals = [], String = "" };

        Assert.Throws<RefusedException>(() => ShapeWriter.Write(JsonForm.Sent, ShapeTable.Of<RfcExample>(), example));
    }

    [Fact]
    public void Control_characters_are_escaped_the_short_way_where_there_is_one()
    {
        var example = new RfcExample { Numbers = [], Literals = [],
            String = string.Concat(Enumerable.Range(0, 0x20).Select(c => (char)c)) + "\u007F\u2028" };

        var text = Canonical(example);

        Assert.Equal(
            """{"literals":[],"numbers":[],"string":"\u0000\u0001\u0002\u0003\u0004\u0005\u0006\u0007\b\t\n\u000b\f\r\u000e\u000f\u0010\u0011\u0012\u0013\u0014\u0015\u0016\u0017\u0018\u0019\u001a\u001b\u001c\u001d\u001e\u001f"""
                + "\u007F\u2028\"}", text);
    }

    [Fact]
    public void Digested_form_is_sorted_without_what_no_digest_covers_and_keeps_nulls()
    {
        var part = new Part
        {
            Words = "n{[,",
            Limits = [new() { Value = 1e-7, Unit = "mm" }, new() { Value = -2.5, Unit = "kN" }],
            Amount = 12.50m,
            Any = JsonElement.Parse("""{ "b" : [1.50, null], "a" : "\u00e9" }"""),
        };
        var sample = new Sample
        {
            Size = new() { Value = 20, Unit = "mm" },
            Parts = [null, part, part with { Limits = [], Amount = null, Any = JsonElement.Parse("null") }],
            Names = ["b", "a"],
        };

        using var written = ShapeWriter.Write(JsonForm.Digested, ShapeTable.Of<Sample>(), sample);

        Assert.Equal(
            """{"names":["b","a"],"parts":[null,"""
                + """{"amount":12.5,"any":{"a":"é","b":[1.5,null]},"limits":[{"unit":"mm","value":1e-7},{"unit":"kN","value":-2.5}]},"""
                + """{"amount":null,"any":null,"limits":[]}],"size":{"unit":"mm","value":20}}""",
            Encoding.UTF8.GetString(written.Written.Span));
    }

    /// <summary>As the digest of a request covers it, and as that of an answer does: without nulls in objects both are the same.</summary>
    private static string Canonical(RfcExample example)
    {
        using var request = ShapeWriter.Write(JsonForm.Canonical, ShapeTable.Of<RfcExample>(), example);
        using var answer = ShapeWriter.Write(JsonForm.Digested, ShapeTable.Of<RfcExample>(), example);
        Assert.Equal(request.Written.Span, answer.Written.Span);
        return Encoding.UTF8.GetString(answer.Written.Span);
    }
}
