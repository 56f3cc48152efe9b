using System.Text;

namespace CalcService.Api.Reading;

/// <summary>
/// A text that names something, so that a person has to tell it from others: a smaller set than Unicode TS 39 allows for identifiers.
/// docs/texts.md has the rule. No two of them are the same but for normalisation, since none has combining marks.
/// </summary>
public static class IdText
{
    private const string Allowed = "An id takes letters, digits and ASCII signs without < and >, and single spaces inside; "
        + "letters with their accents as one character.";

    private const Scripts Japanese = Scripts.Latin | Scripts.Han | Scripts.Hiragana | Scripts.Katakana;

    /// <summary>What may stand together (Unicode TS 39, section 5.2, highly restrictive); any other script stands alone.</summary>
    private static readonly Scripts[] Together = [Japanese, Scripts.Latin | Scripts.Han | Scripts.Bopomofo,
        Scripts.Latin | Scripts.Han | Scripts.Hangul];

    /// <summary>What is wrong with an id; null where nothing is.</summary>
    public static string? Fault(string text)
    {
        var place = 0;
        var seen = Scripts.None;
        bool isNamed = false, hasOwn = false, afterSpace = true;
        foreach (var c in text.EnumerateRunes())
        {
            place++;
            var script = IdLetters.ScriptOf(c);
            if (script == Scripts.None && !(c.IsAscii && PlainText.IsShown(c)))
            {
                return $"{PlainText.At(c, place)} is not allowed in an id. {Allowed}";
            }

            if (c.Value == ' ' && afterSpace)
            {
                return $"{PlainText.At(c, place)} is a space that nobody sees. {Allowed}";
            }

            if (!MayStandTogether(seen | script))
            {
                return $"{PlainText.At(c, place)} is {script} beside {seen}; the letters of an id are of one script, or of Latin with "
                    + "Chinese, Japanese or Korean.";
            }

            seen |= script;
            isNamed |= script != Scripts.None || Rune.IsDigit(c);
            hasOwn |= (script & ~Scripts.Latin) != 0 && !IdLetters.LooksLatin(c);
            afterSpace = c.Value == ' ';
        }

        return !isNamed ? $"An id needs a letter or a digit. {Allowed}"
            : afterSpace ? $"The space at the end is one that nobody sees. {Allowed}"
            : (seen & ~Scripts.Latin) != 0 && !hasOwn
            ? $"Each {seen & ~Scripts.Latin} letter of this id looks like a Latin one: write it in Latin letters, or with a letter that "
                + "doesn't."
            : null;
    }

    private static bool MayStandTogether(Scripts scripts) =>
        (scripts & (scripts - 1)) == 0 || Array.Exists(Together, together => (scripts & ~together) == 0);
}
