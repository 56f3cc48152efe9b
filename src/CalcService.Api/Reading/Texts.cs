using System.Globalization;

namespace CalcService.Api.Reading;

/// <summary>Texts of the contract: ids, free text, dates and date-times.</summary>
public static class Texts
{
    /// <summary>Earlier years are what clients send who never set a date.</summary>
    public const int FirstYear = 1950;

    /// <summary>Later years leave no room to add a schedule.</summary>
    public const int LastYear = 2199;

    /// <summary>What is wrong with a text of a request; null where nothing is.</summary>
    public static (string Code, string Detail)? Fault(string text, int most, bool isId = false) =>
        Length(text) is var length && length > most ? ("too-long", $"{length} characters; at most {most} are allowed.")
        : (isId ? IdText.Fault(text) : PlainText.Fault(text)) is { } detail ? ("text", detail)
        : null;

    /// <summary>Characters as JSON Schema counts them.</summary>
    private static int Length(string text) => text.Length - text.Count(char.IsLowSurrogate);

    /// <summary>yyyy-MM-dd from 1950 to 2199.</summary>
    public static DateOnly? Date(string text) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date)
            && date.Year is >= FirstYear and <= LastYear ? date : null;

    /// <summary>RFC 3339 date-time with Z or an offset; −00:00, which says that the offset is unknown, is none.</summary>
    public static DateTimeOffset? Instant(string text)
    {
        if (text.Length < 20 || text[10] != 'T' || text.EndsWith("-00:00", StringComparison.Ordinal))
        {
            return null;
        }

        // What the framework would let pass: a missing offset, which it takes from the machine, and a point without digits.
        var hasOffset = text[^1] == 'Z' || (text.Length >= 25 && text[^6] is '+' or '-');
        if (!hasOffset || (text[19] == '.' && !char.IsAsciiDigit(text[20])))
        {
            return null;
        }

        var isPlain = DateTimeOffset.TryParseExact(text, Formats, CultureInfo.InvariantCulture, DateTimeStyles.None, out var instant);
        return isPlain && instant.Year is >= FirstYear and <= LastYear ? instant : null;
    }

    public static string Write(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    // K reads Z as UTC; a literal 'Z' would leave the offset to the machine's own time zone.
    private static readonly string[] Formats = ["yyyy-MM-dd'T'HH:mm:ssK", "yyyy-MM-dd'T'HH:mm:ss.FFFFFFFK"];
}
