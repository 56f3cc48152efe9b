using System.Globalization;
using System.Text;

namespace CalcService.Api.Reading;

/// <summary>The scripts whose letters an id takes.</summary>
[Flags]
internal enum Scripts
{
    None = 0,
    Latin = 1,
    Greek = 1 << 1,
    Cyrillic = 1 << 2,
    Armenian = 1 << 3,
    Georgian = 1 << 4,
    Ethiopic = 1 << 5,
    Han = 1 << 6,
    Hiragana = 1 << 7,
    Katakana = 1 << 8,
    Bopomofo = 1 << 9,
    Hangul = 1 << 10,
}

/// <summary>The letters of id-letters.txt.</summary>
internal static class IdLetters
{
    private const string Source = "CalcService.Api.Reading.id-letters.txt";
    private const string LookAlike = "LookAlike";

    private static readonly Dictionary<string, string[]> Lines = Read();

    private static readonly (int First, int Last, Scripts Script)[] Letters =
        [.. Lines.Where(line => line.Key != LookAlike).SelectMany(line => Ranges(line.Value, Enum.Parse<Scripts>(line.Key)))
            .OrderBy(range => range.First)];

    private static readonly (int First, int Last, Scripts Script)[] LikeLatin = [.. Ranges(Lines[LookAlike], Scripts.Latin)];

    /// <summary>The script of a letter; none where an id doesn't take the character as a letter.</summary>
    public static Scripts ScriptOf(Rune c) => c.IsAscii ? (Rune.IsLetter(c) ? Scripts.Latin : Scripts.None) : Find(Letters, c.Value);

    /// <summary>Whether a letter of another script looks like a Latin one.</summary>
    public static bool LooksLatin(Rune c) => Find(LikeLatin, c.Value) != Scripts.None;

    private static Dictionary<string, string[]> Read()
    {
        using var file = new StreamReader(typeof(IdLetters).Assembly.GetManifestResourceStream(Source)!);
        return file.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
            .Where(line => line[0] != '#').Select(line => line.Split(' ')).ToDictionary(line => line[0], line => line[1..]);
    }

    private static Scripts Find((int First, int Last, Scripts Script)[] ranges, int c)
    {
        var (low, high) = (0, ranges.Length - 1);
        while (low <= high)
        {
            var middle = (low + high) / 2;
            if (c < ranges[middle].First)
            {
                high = middle - 1;
            }
            else if (c > ranges[middle].Last)
            {
                low = middle + 1;
            }
            else
            {
                return ranges[middle].Script;
            }
        }

        return Scripts.None;
    }

    private static IEnumerable<(int First, int Last, Scripts Script)> Ranges(string[] texts, Scripts script) => texts.Select(text =>
        (Number(text.Split('-')[0]), Number(text.Split('-')[^1]), script));

    private static int Number(string hex) => int.Parse(hex, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture);
}
