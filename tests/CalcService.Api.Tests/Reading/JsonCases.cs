using System.Text;

namespace CalcService.Api.Tests.Reading;

/// <summary>The well-known corners of JSON (RFC 8259), with whether the text is valid. Written for these tests.</summary>
internal static class JsonCases
{
    public static IReadOnlyList<(string Text, bool IsValid)> All { get; } =
    [
        // Structure.
        ("", false), (" ", false), ("null", true), ("true", true), ("false", true), ("0", true), ("\"\"", true), ("[]", true), ("{}", true),
        (" [ ] ", true), ("\t{\r\n}\n", true), ("[1,2]", true), ("[1 ,\n2]", true), ("[[],[[]]]", true), ("""{"a":{"b":[{}]}}""", true),
        ("""{"a":1,"a":2}""", true), ("""{"":0}""", true), ("""{"a":1 , "b" : 2}""", true),
        ("[", false), ("]", false), ("{", false), ("}", false), ("[1", false), ("[1,", false), ("[1,]", false), ("[,1]", false),
        ("[,]", false), ("[1,,2]", false),
        ("[1 2]", false), ("[1;2]", false), ("[}", false), ("{]", false), ("[]]", false), ("[][]", false), ("{}{}", false), ("{} x", false),
        ("[],", false),
        ("{,}", false), ("""{"a"}""", false), ("""{"a":}""", false), ("""{"a" 1}""", false), ("""{"a":1,}""", false), ("""{"a":1 "b":2}""", false),
        ("{a:1}", false), ("{1:1}", false), ("{null:1}", false), ("""{"a"::1}""", false), ("""{"a":1,,"b":2}""", false), ("""{"a":1:2}""", false), ("{'a':1}", false),
        ("[1]//", false), ("/**/[1]", false), ("[1/**/]", false), ("#", false), ("[\u00A0]", false), ("[\f1]", false), ("[\v1]", false),
        ("\uFEFF[]", false), ("\0", false), ("[\0]", false),
        // Words.
        ("nul", false), ("nulll", false), ("NULL", false), ("True", false), ("tru", false), ("truee", false), ("[true false]", false),
            ("[nullnull]", false), ("undefined", false),
        // Numbers.
        ("-0", true), ("-1", true), ("10", true), ("1.5", true), ("1.50", true), ("0.0", true), ("-0.0", true), ("1e5", true),
            ("1E5", true), ("1e+5", true), ("1e-5", true),
        ("1e05", true), ("0e0", true), ("0e-0", true), ("1e400", true), ("-1e400", true), ("1e-400", true),
        ("123456789012345678901234567890", true), (" 1 ", true),
        ("+1", false), ("-", false), ("--1", false), ("01", false), ("-01", false), ("00", false), ("1.", false), (".1", false),
        ("-.1", false), ("1.e1", false), ("1e", false), ("1e+", false),
        ("1e1.5", false), ("1e1e1", false), ("1.2.3", false), ("0x10", false), ("1_000", false), ("1,000", false), ("1a", false),
        ("1f", false), ("- 1", false), ("1 .5", false), ("1. 5", false),
        ("NaN", false), ("-NaN", false), ("Infinity", false), ("-Infinity", false), ("Inf", false), ("\uFF11", false), ("1\0", false),
        ("[1+2]", false), ("[1-2]", false),
        // Texts.
        ("\"a\"", true), ("\"\\\"\"", true), ("\"\\\\\"", true), ("\"\\/\"", true), ("\"/\"", true), ("\"\\b\\f\\n\\r\\t\"", true),
            ("\"\\u0041\"", true), ("\"\\u00e9\\u00E9\"", true),
        ("\"\\u0000\"", true), ("\"\\ud83d\\ude00\"", true), ("\"\\ud800\"", true), ("\"\\udc00\\ud800\"", true), ("\"\u007F\"", true),
        ("\"\u0080\u2028\u2029\"", true), ("\"\uFEFF\"", true),
        ("\"\U0001F600\"", true), ("\"\uFFFF\"", true), ("\"'\"", true), ("{\"\\u0061\":1}", true),
        ("\"", false), ("\"a", false), ("\"\\\"", false), ("a\"", false), ("\"\"\"", false), ("\"a\"b\"", false), ("'a'", false),
        ("\"\n\"", false), ("\"\t\"", false), ("\"\0\"", false), ("\"\u001F\"", false),
        ("\"\\a\"", false), ("\"\\x41\"", false), ("\"\\'\"", false), ("\"\\0\"", false), ("\"\\U0041\"", false), ("\"\\u\"", false),
        ("\"\\u004\"", false), ("\"\\u004G\"", false), ("\"\\u 041\"", false),
        ("\"\\u+041\"", false), ("\"\\u-001\"", false), ("\"\\u0041", false), ("\"\\", false), ("\"\\u", false), ("{\"\\q\":1}", false),
        ("{\"a\n\":1}", false),
        // Depth: sixteen levels are taken.
        (Nested(16), true), (Nested(17), false), (Nested(100_000), false), (new string('[', 100_000), false), (NestedObjects(16), true),
            (NestedObjects(17), false),
    ];

    /// <summary>Bytes that are no UTF-8 (Unicode 16, table 3-7), each inside a text.</summary>
    public static IReadOnlyList<byte[]> NotUtf8 { get; } =
    [
        .. new byte[][]
        {
            [0x80], [0xBF], [0xC0, 0x80], [0xC1, 0xBF], [0xC2], [0xC2, 0x41], [0xE0, 0x80, 0x80], [0xE0, 0x9F, 0xBF], [0xE2, 0x82],
                [0xED, 0xA0, 0x80], [0xED, 0xBF, 0xBF],
            [0xF0, 0x80, 0x80, 0x80], [0xF0, 0x8F, 0xBF, 0xBF], [0xF0, 0x9F, 0x98], [0xF4, 0x90, 0x80, 0x80], [0xF5, 0x80, 0x80, 0x80],
                [0xFE], [0xFF],
        }.Select(bytes => (byte[])[.. "[\""u8, .. bytes, .. "\"]"u8]),
        Encoding.Unicode.GetBytes("[\"\u00FC\"]"),
        Encoding.BigEndianUnicode.GetBytes("[\"\u00FC\"]"),
    ];

    private static string Nested(int depth) => new string('[', depth) + new string(']', depth);

    private static string NestedObjects(int depth) =>
        string.Concat(Enumerable.Repeat("{\"a\":", depth - 1)) + "{}" + new string('}', depth - 1);
}
