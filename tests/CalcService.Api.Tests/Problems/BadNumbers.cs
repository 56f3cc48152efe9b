using CalcService.Api.Tests.Fixtures;
using static CalcService.Api.Tests.Problems.BadInput;

namespace CalcService.Api.Tests.Problems;

/// <summary>Numbers that are none, or none that a size, temperature or count can be.</summary>
internal static class BadNumbers
{
    public static IReadOnlyList<BadInput> Rows { get; } =
    [
        .. new[] { "NaN", "Infinity", "-Infinity", "01", "-01", "+1", ".5", "1.", "0x10", "1_000", "1e", "1e+", "--1", "- 1" }
            .Select(token => Syntax(token)),
        Size("\"NaN\"", 400, "type", "/value"),
        Size("\"1.0\"", 400, "type", "/value"),
        Size("true", 400, "type", "/value"),
        Size("1e400", 422, "not-finite", "/value"),
        Size("-1e400", 422, "not-finite", "/value"),
        Size("1e308", 422, "range"),
        Size("1e-400", 422, "range"),
        Size("-0.0", 422, "range"),
        Size("0", 422, "range"),
        Size("-20", 422, "range"),
        new("size of 100,000 digits", 422, route => SizeOf(route, new string('9', 100_000), "not-finite", "/value")),
        new("size of 100,000 decimals", 422, route => SizeOf(route, "0." + new string('0', 100_000) + "1", "range")),
        At("below absolute zero", 422, IsTemperature, """{"value":-273.16,"unit":"degC"}""", "range"),
        At("below absolute zero in K", 422, IsTemperature, """{"value":-1,"unit":"K"}""", "range"),
        At("temperature too large in K", 422, IsTemperature, $$"""{"value":{{double.MaxValue:R}},"unit":"degF"}""", "range"),
        At("below absolute zero by far", 422, IsTemperature, $$"""{"value":-{{double.MaxValue:R}},"unit":"degF"}""", "range"),
        At("half a count", 422, IsInteger, "3.5", "not-integer"),
        At("count above 2147483647", 422, IsInteger, "2147483648", "not-integer"),
        At("count far above", 422, IsInteger, "1e400", "not-integer"),
        At("count as a text", 400, IsInteger, "\"3\"", "type"),
        At("count as true", 400, IsInteger, "true", "type"),
        Unit("unit of another dimension", "kg"),
        Unit("unit in the wrong case", "MM"),
        Unit("unit in full-width letters", "\uFF4D\uFF4D"),
        Unit("unit with Cyrillic letters", "\u043C\u043C"),
        Unit("unit with a space", "mm "),
        Unit("unit that is empty", ""),
        Unit("unit with a superscript", "mm\u00B2"),
    ];

    private static BadInput Syntax(string token) => At("number " + token, 400, IsSize, $$"""{"value":{{token}},"unit":"mm"}""", "syntax") is var row
        ? row with { Make = route => row.Make(route) is { } request ? request with { Pointers = [""] } : null }
        : null!;

    private static BadInput Size(string token, int status, string code, string below = "") =>
        new("size " + token, status, route => SizeOf(route, token, code, below));

    private static BadRequest? SizeOf(CalculationRoute route, string token, string code, string below = "") =>
        At("", 0, IsSize, $$"""{"value":{{token}},"unit":"mm"}""", code, below).Make(route);

    /// <summary>The refusal lists the units that there are.</summary>
    private static BadInput Unit(string name, string unit)
    {
        var row = At(name, 422, IsSize, $$"""{"value":20,"unit":"{{unit}}"}""", "unit", "/unit");
        return row with { Make = route => row.Make(route) is { } request ? request with { Says = "allowed: mm, cm, m, in, ft" } : null };
    }
}
