using System.Globalization;

namespace CalcService.Api.Reading;

/// <content>Texts, words, dates and plain numbers.</content>
public ref partial struct BodyReader
{
    private object? ReadText(Shape shape)
    {
        if (!_cursor.TakeString(out var raw, out var escaped))
        {
            return null;
        }

        if (Decode(raw, escaped) is not { } text)
        {
            return null;
        }

        switch (shape)
        {
            case EnumShape words:
                return ReadWord(words, text);
            case DateShape when Texts.Date(text) is { } date:
                return date;
            case DateShape:
                return Refuse("date", $"“{ReadErrors.Show(text)}” is no date yyyy-MM-dd from {Texts.FirstYear} to {Texts.LastYear}.");
            case InstantShape when Texts.Instant(text) is { } instant:
                return instant;
            case InstantShape:
                return Refuse("date-time", $"“{ReadErrors.Show(text)}” is no date-time yyyy-MM-ddThh:mm:ss with Z or an offset, from {Texts.FirstYear} to {Texts.LastYear}.");
            case TextShape { MaxLength: var most } when Texts.Fault(text, most) is { } fault:
                return Refuse(fault.Code, fault.Detail);
            default:
                return text;
        }
    }

    private readonly object? ReadWord(EnumShape words, string text)
    {
        foreach (var word in words.Words)
        {
            if (word.Key == text)
            {
                return word.Value;
            }
        }

        return Refuse("enum", $"“{ReadErrors.Show(text)}” is not allowed; allowed: {string.Join(", ", words.Words.Select(word => word.Key))}.");
    }

    private object? ReadNumber(Shape shape)
    {
        if (!_cursor.TakeNumber(out var raw))
        {
            return null;
        }

        if (shape is DecimalShape)
        {
            return decimal.TryParse(raw, NumberStyles.Float, CultureInfo.InvariantCulture, out var amount)
                ? amount
                : Refuse("not-finite", "The number is too large.");
        }

        // 3.0 and 3e0 are the same number as 3.
        return double.TryParse(raw, NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
            && number is >= int.MinValue and <= int.MaxValue && number == Math.Floor(number)
                ? (int)number
                : Refuse("not-integer", $"A whole number up to {int.MaxValue} is expected.");
    }

    private readonly object? Refuse(string code, string detail)
    {
        _errors.NotComputable(code, detail);
        return null;
    }
}
