using System.Text;

namespace CalcService.Api.Reading;

/// <summary>The text that stands between the quotes of a JSON string.</summary>
public static class JsonText
{
    /// <summary>The text; null where an escape is half a surrogate pair. The bytes are UTF-8 and every escape is well formed.</summary>
    public static string? Decode(ReadOnlySpan<byte> raw, bool escaped)
    {
        if (!escaped)
        {
            return Encoding.UTF8.GetString(raw);
        }

        var text = new StringBuilder(raw.Length);
        while (raw.IndexOf((byte)'\\') is var next and >= 0)
        {
            text.Append(Encoding.UTF8.GetString(raw[..next]));
            raw = raw[(next + 1)..];
            var length = raw[0] == (byte)'u' ? 5 : 1;
            text.Append(Escape(raw[..length]));
            raw = raw[length..];
        }

        text.Append(Encoding.UTF8.GetString(raw));
        return HasLoneSurrogate(text) ? null : text.ToString();
    }

    /// <summary>Value of hexadecimal digits, or −1 where one is none.</summary>
    public static int Hex(ReadOnlySpan<byte> digits)
    {
        var value = 0;
        foreach (var digit in digits)
        {
            if (!char.IsAsciiHexDigit((char)digit))
            {
                return -1;
            }

            value = (value << 4) | ((digit & 0xF) + (digit > '9' ? 9 : 0));
        }

        return value;
    }

    private static char Escape(ReadOnlySpan<byte> escape) => escape[0] switch
    {
        (byte)'u' => (char)Hex(escape[1..]),
        (byte)'n' => '\n',
        (byte)'t' => '\t',
        (byte)'r' => '\r',
        (byte)'b' => '\b',
        (byte)'f' => '\f',
        var itself => (char)itself,
    };

    private static bool HasLoneSurrogate(StringBuilder text)
    {
        for (var i = 0; i < text.Length; i++)
        {
            if (char.IsSurrogate(text[i]) && !(i + 1 < text.Length && char.IsSurrogatePair(text[i], text[++i])))
            {
                return true;
            }
        }

        return false;
    }
}
