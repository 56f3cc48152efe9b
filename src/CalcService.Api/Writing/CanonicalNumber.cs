using System.Globalization;
using System.Text;
using CalcService.Api.Units;

namespace CalcService.Api.Writing;

/// <summary>
/// Writes a double as RFC 8785 asks (ECMAScript Number::toString): shortest digits, plain from 1e-6 up to below 1e21,
/// else with an exponent that has its sign and no leading zeros. System.Text.Json writes 1E-07 where this is 1e-7.
/// </summary>
public static class CanonicalNumber
{
    /// <summary>Bytes of the longest number.</summary>
    public const int MostBytes = 32;

    /// <summary>Digits of the numbers that take the short way: those of answers.</summary>
    private const int FewDigits = Rounding.AnswerDigits;

    /// <summary>Writes a number as UTF-8 and gives its length.</summary>
    public static int Write(double value, Span<byte> bytes)
    {
        if (TryWriteFew(value, bytes, out var length))
        {
            return length;
        }

        // The same digits as below; what has an exponent takes the long way.
        if (value.TryFormat(bytes, out length, "R", CultureInfo.InvariantCulture) && !bytes[..length].Contains((byte)'E'))
        {
            return length;
        }

        return Encoding.UTF8.GetBytes(WriteLong(value), bytes);
    }

    public static string Write(double value)
    {
        Span<byte> bytes = stackalloc byte[MostBytes];
        return TryWriteFew(value, bytes, out var length) ? Encoding.ASCII.GetString(bytes[..length]) : WriteLong(value);
    }

    /// <summary>
    /// Writes a whole number, or one that is a decimal of few digits. A double can't be two decimals of up to fifteen digits, so
    /// where such a decimal is the double, its digits are the shortest that there are.
    /// </summary>
    private static bool TryWriteFew(double value, Span<byte> bytes, out int length)
    {
        length = 0;
        var size = Math.Abs(value);
        if (size is not (0 or (>= 1e-6 and < 1e15)))
        {
            return false;
        }

        if (double.IsInteger(value))
        {
            return ((long)value).TryFormat(bytes, out length, default, CultureInfo.InvariantCulture);
        }

        var places = Math.Max(0, FewDigits - 1 - Rounding.DecimalExponent(size));
        var digits = (long)Math.Round(size * Rounding.PowersOfTen[places]);
        if (digits / Rounding.PowersOfTen[places] != size)
        {
            return false;
        }

        // What isn't whole keeps a digit behind the point.
        while (digits % 10 == 0)
        {
            (digits, places) = (digits / 10, places - 1);
        }

        // From the last digit to the first, at least one of them before the point.
        Span<byte> text = stackalloc byte[MostBytes];
        var first = MostBytes;
        for (var place = 0; place <= places || digits > 0; place++, digits /= 10)
        {
            if (place == places)
            {
                text[--first] = (byte)'.';
            }

            text[--first] = (byte)('0' + (digits % 10));
        }

        if (value < 0)
        {
            text[--first] = (byte)'-';
        }

        length = MostBytes - first;
        text[first..].CopyTo(bytes);
        return true;
    }

    private static string WriteLong(double value)
    {
        // The framework finds the shortest digits; only its exponents differ.
        var text = value.ToString("R", CultureInfo.InvariantCulture);
        var e = text.IndexOf('E', StringComparison.Ordinal);
        if (e < 0)
        {
            return text;
        }

        var sign = value < 0 ? "-" : "";
        var mantissa = text[sign.Length..e];
        var digits = mantissa.Replace(".", "", StringComparison.Ordinal);
        var exponent = int.Parse(text.AsSpan(e + 1), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);
        return exponent switch
        {
            >= 21 => $"{sign}{mantissa}e+{exponent.ToString(CultureInfo.InvariantCulture)}",
            >= 0 when digits.Length > exponent + 1 => sign + digits.Insert(exponent + 1, "."),
            >= 0 => sign + digits.PadRight(exponent + 1, '0'),
            >= -6 => $"{sign}0.{new string('0', -exponent - 1)}{digits}",
            _ => $"{sign}{mantissa}e{exponent.ToString(CultureInfo.InvariantCulture)}",
        };
    }
}
