using System.Globalization;
using System.Text;

namespace CalcService.Api.Canonical;

/// <summary>
/// Writes a double as RFC 8785 asks (ECMAScript Number::toString): shortest digits, plain from 1e-6 up to below 1e21,
/// else with an exponent that has its sign and no leading zeros. System.Text.Json writes 1E-07 where this is 1e-7.
/// </summary>
public static class CanonicalNumber
{
    /// <summary>Bytes of the longest number.</summary>
    public const int MostBytes = 32;

    /// <summary>Writes a number as UTF-8 and gives its length.</summary>
    public static int Write(double value, Span<byte> bytes)
    {
        // The same digits as below; what has an exponent takes the long way.
        if (value != 0 && value.TryFormat(bytes, out var length, "R", CultureInfo.InvariantCulture) && !bytes[..length].Contains((byte)'E'))
        {
            return length;
        }

        return Encoding.UTF8.GetBytes(Write(value), bytes);
    }

    public static string Write(double value)
    {
        if (value == 0)
        {
            return "0";
        }

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
