using static CalcService.Api.Tests.Problems.BadInput;

namespace CalcService.Api.Tests.Problems;

/// <summary>Words, texts, dates and date-times that are none.</summary>
internal static class BadWords
{
    public static IReadOnlyList<BadInput> Rows { get; } =
    [
        At("word as its number", 400, IsWord, "0", "type"),
        .. new[] { "0", "99", "", "metric, inch", " metric ", "Metric", "METRIC", "bogus" }
            .Select(word => At($"word \"{word}\"", 422, IsWord, $"\"{word}\"", "enum")),
        At("text of 200,000 characters", 422, IsText, $"\"{new string('x', 200_000)}\"", "too-long"),
        At("text of 129 characters", 422, IsText, $"\"{new string('x', 129)}\"", "too-long"),
        At("text that is empty", 422, IsText, "\"\"", "text"),
        At("NUL in a text", 422, IsText, "\"A\\u0000B\"", "text"),
        At("escaped line feed in a text", 422, IsText, "\"A\\n{\\\"level\\\":\\\"Information\\\"}\"", "text"),
        At("escape character in a text", 422, IsText, "\"A\\u001B[2J\"", "text"),
        At("bidi override in a text", 422, IsText, "\"A\u202EB\"", "text"),
        At("bidi isolate in a text", 422, IsText, "\"A\\u2066B\"", "text"),
        At("non-character in a text", 422, IsText, "\"A\\uFFFEB\"", "text"),
        At("zero width space in a text", 422, IsText, "\"A\u200BB\"", "text"),
        At("letter that nobody sees", 422, IsText, "\"\u3164\"", "text"),
        At("private use in a text", 422, IsText, "\"A\uE000B\"", "text"),
        At("HTML in a text", 422, IsText, "\"<script>alert(1)</script>\"", "text"),
        At("lone surrogate in a text", 400, IsText, "\"A\\ud800B\"", "surrogate"),
        At("surrogates the wrong way round", 400, IsText, "\"\\udc00\\ud800\"", "surrogate"),
        .. new[]
        {
            "2026-03-12T08:30:00", "2026-03-12", "2026-02-30T08:30:00Z", "2026-03-12T24:00:00Z", "2026-03-12T08:30:00-00:00",
            "2026-03-12T08:30:60Z", "9999-12-31T23:59:59Z", "0001-01-01T00:00:00Z", "1949-12-31T23:59:59Z", "2026-03-12 08:30:00Z",
            "2026-03-12t08:30:00z", "2026-03-12T08:30:00+01", "2026-03-12T08:30:00+0100", "2026-03-12T08:30:00+25:00", "2026-03-12T08:30Z",
            "2026-3-12T08:30:00Z", " 2026-03-12T08:30:00Z", "2026-03-12T08:30:00Z ", "2026-03-12T08:30:00.Z", "12/03/2026 08:30",
            "1773300600", "now",
        }.Select(text => At($"date-time \"{text}\"", 422, IsInstant, $"\"{text}\"", "date-time")),
        At("date-time as a number", 400, IsInstant, "1773300600", "type"),
        .. new[] { "2026-02-30", "2025-02-29", "2026-13-01", "2026-1-31", "31.01.2027", "2027-01-31T00:00:00Z", "9999-12-31", "0001-01-01",
        "1949-12-31", "" }
            .Select(text => At($"date \"{text}\"", 422, IsDate, $"\"{text}\"", "date")),
        At("date as a number", 400, IsDate, "20270131", "type"),
    ];
}
