using System.Globalization;
using System.Text;

namespace CalcService.Api.Reading;

/// <summary>
/// Free text, in any language: what can be printed. So nothing that is in no font, that nobody sees, or that turns a line, a log or a page
/// around. docs/texts.md has the rule.
/// </summary>
public static class PlainText
{
    /// <summary>Marks on one letter; more run into the lines above and below (Unicode TS 39, section 5.4).</summary>
    private const int MostMarks = 4;

    private const string Allowed = "A text takes letters, marks, digits, punctuation, symbols and spaces of any language, without < and >.";

    /// <summary>Letters of joining scripts begin here; the others have no use for a joiner.</summary>
    private const int FirstJoining = 0x0600;

    /// <summary>Whether a character shows wherever it stands, or is a space.</summary>
    public static bool IsShown(Rune c) => c.Value < 0x7F
        ? c.Value >= ' ' && c.Value is not ('<' or '>')
        : !IsBlank(c.Value) && !IsSelector(c.Value) && Rune.GetUnicodeCategory(c) is not (UnicodeCategory.Control or UnicodeCategory.Format
            or UnicodeCategory.Surrogate or UnicodeCategory.PrivateUse or UnicodeCategory.OtherNotAssigned
            or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator);

    /// <summary>What is wrong with a text; null where nothing is.</summary>
    public static string? Fault(string text)
    {
        var (place, marks, isSeen) = (0, 0, false);
        Rune? before = null;
        foreach (var (c, next) in WithNext(text))
        {
            place++;
            if (!IsShown(c) && !(IsSelector(c.Value) && IsSelectable(before)) && !(IsJoiner(c) && Joins(before) && Joins(next)))
            {
                return $"{At(c, place)} can't be printed here. {Allowed}";
            }

            marks = IsMark(c) ? marks + 1 : 0;
            if (marks > MostMarks || (marks > 0 && !isSeen))
            {
                return $"{At(c, place)} is a mark with no letter before it, or more than {MostMarks} on one.";
            }

            isSeen |= !Rune.IsWhiteSpace(c);
            before = c;
        }

        return isSeen ? null : $"The text shows nothing. {Allowed}";
    }

    /// <summary>A character by its number, with itself where it shows, and where it stands.</summary>
    internal static string At(Rune c, int place) => string.Create(CultureInfo.InvariantCulture,
        $"{(IsShown(c) && !IsMark(c) && !Rune.IsWhiteSpace(c) ? $"“{c}” " : "")}U+{c.Value:X4} at character {place}");

    private static IEnumerable<(Rune Character, Rune? Next)> WithNext(string text)
    {
        Rune? held = null;
        foreach (var c in text.EnumerateRunes())
        {
            if (held is { } character)
            {
                yield return (character, c);
            }

            held = c;
        }

        if (held is { } last)
        {
            yield return (last, null);
        }
    }

    /// <summary>Letters, marks and symbols by their category that show nothing all the same.</summary>
    private static bool IsBlank(int c) =>
        c is 0x034F or 0x115F or 0x1160 or 0x17B4 or 0x17B5 or 0x2800 or 0x3164 or 0xFFA0;

    /// <summary>Chooses between forms of the character before it, as names in Japanese and Mongolian need it.</summary>
    private static bool IsSelector(int c) =>
        c is (>= 0xFE00 and <= 0xFE0F) or (>= 0xE0100 and <= 0xE01EF) or (>= 0x180B and <= 0x180D) or 0x180F;

    private static bool IsSelectable(Rune? before) => before is { } c && (Rune.IsLetterOrDigit(c) || Rune.IsSymbol(c));

    private static bool IsJoiner(Rune c) => c.Value is 0x200C or 0x200D;

    private static bool Joins(Rune? beside) => beside is { Value: >= FirstJoining } c && (Rune.IsLetter(c) || IsMark(c) || IsSpacing(c));

    private static bool IsSpacing(Rune c) => Rune.GetUnicodeCategory(c) == UnicodeCategory.SpacingCombiningMark;

    private static bool IsMark(Rune c) => c.Value > 0x7F && !IsSelector(c.Value)
        && Rune.GetUnicodeCategory(c) is UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark;
}
