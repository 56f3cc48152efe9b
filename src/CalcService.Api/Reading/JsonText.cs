using System.Globalization;

namespace CalcService.Api.Reading;

/// <summary>What the framework's reader finds out too late, and then throws.</summary>
internal static class JsonText
{
    private const int EscapeLength = 6;

    /// <summary>Whether an escape in a well-formed JSON string is half a surrogate pair, of which no text can be made.</summary>
    public static bool HasLoneSurrogate(ReadOnlySpan<byte> raw)
    {
        while (raw.IndexOf((byte)'\\') is var next and >= 0)
        {
            raw = raw[next..];
            if (raw[1] != (byte)'u')
            {
                raw = raw[2..];
                continue;
            }

            var first = CodeUnit(raw);
            raw = raw[EscapeLength..];
            if (!char.IsSurrogate(first))
            {
                continue;
            }

            if (!raw.StartsWith("\\u"u8) || !char.IsSurrogatePair(first, CodeUnit(raw)))
            {
                return true;
            }

            raw = raw[EscapeLength..];
        }

        return false;
    }

    private static char CodeUnit(ReadOnlySpan<byte> escape) =>
        (char)ushort.Parse(escape[2..EscapeLength], NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture);
}
