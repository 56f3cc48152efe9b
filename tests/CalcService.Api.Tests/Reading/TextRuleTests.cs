using System.Globalization;
using System.Text;
using CalcService.Api.Reading;

namespace CalcService.Api.Tests.Reading;

/// <summary>docs/texts.md: what a text and an id take.</summary>
public sealed class TextRuleTests
{
    private const int Most = 128;

    public static TheoryData<string> Languages => [
        "O'Brien-Müller", "D\u2019Angelo", "Łukasz Żółć", "Nguyễn Thị Hương", "Пётр Ильич", "王小明", "山田 太郎", "김철수", "محمد بن علي",
        "می\u200Cخواهم", "יוסף כהן", "राम प्रसाद", "क्\u200Dष", "สมชาย ใจดี", "தமிழ்", "葛\U000E0100城", "Ω 5 µm ± ½ °C", "Zoe\u0308", "🙂",
        "“x” — 50 %, 6×36",
    ];

    public static TheoryData<string> Unprintable => [
        "", " ", "\u3000", "\u0000", "a\nb", "a\u0085b", "a\u200Bb", "a\u200Db", "\u200C", "a\u2060b", "a\u00ADb", "a\uFEFFb", "a\u061Cb",
        "a\u200Eb", "a\u202Eb", "a\u2066b", "a\u2028b", "a\uFFF9b", "a\uFFFEb", "a\uFFFFb", "a\uFDD0b", "a\U0001FFFEb", "a\uE000b",
        "a\U000F0000b", "a\u0378b", "a\U000E0041b", "\u3164", "\u115F\u1160", "\uFFA0", "\u2800", "\u034F", "\u17B4", "\uFE0F", " \uFE0F",
        "<b>", "a>b", "\u0301", " \u0301", "e\u0301\u0301\u0301\u0301\u0301",
    ];

    public static TheoryData<string> Ids => [
        "A", "1", "SOCK-31", "No. 12/3 (left)", "A&B + C_#%", "O'Neill", "Ende-Ö", "Łódź 7", "Конец-1", "Τέλος 2", "末端A", "末端エンド", "끝 1",
        "ծայր", "ბოლო", "\"quoted\"",
    ];

    public static TheoryData<string> NoIds => [
        "А", "СОСНА 1", "SОCK", "Α1", "AБ", "末Б", "e\u0301", "\u212B", "\uFF21", "\u00B2", "a\u2011b", "a\u00A0b", " A", "A ", "A  B", "-",
        "#/", "٣", "محمد", "יוסף", "राम", "🙂", "a\uFFFDb", "\u02BC", "\u0131\u0307", "ノ", "끝中あ",
    ];

    [Theory]
    [MemberData(nameof(Languages))]
    [MemberData(nameof(Ids))]
    public void Text_in_any_language_is_taken(string text) => Assert.Null(Texts.Fault(text, Most));

    [Theory]
    [MemberData(nameof(Ids))]
    public void Id_that_a_person_can_tell_apart_is_taken(string text) => Assert.Null(Texts.Fault(text, Most, isId: true));

    [Theory]
    [MemberData(nameof(Unprintable))]
    public void Text_that_can_not_be_seen_is_neither_text_nor_id(string text)
    {
        Assert.Equal("text", Texts.Fault(text, Most)?.Code);
        Assert.Equal("text", Texts.Fault(text, Most, isId: true)?.Code);
    }

    [Theory]
    [MemberData(nameof(NoIds))]
    public void Id_that_looks_like_another_is_none(string text) => Assert.Equal("text", Texts.Fault(text, Most, isId: true)?.Code);

    [Theory]
    [InlineData("ab\uFFFE", false, "U+FFFE at character 3 can't be printed")]
    [InlineData("🙂\u200B", false, "U+200B at character 2 ")]
    [InlineData("a<", false, "U+003C at character 2 ")]
    [InlineData("A‑1", true, "“‑” U+2011 at character 2 is not allowed in an id")]
    [InlineData("SОCK", true, "“О” U+041E at character 2 is Cyrillic beside Latin")]
    [InlineData("А1", true, "Each Cyrillic letter")]
    public void Refusal_names_the_character_and_its_place(string text, bool isId, string says) =>
        Assert.StartsWith(says, Texts.Fault(text, Most, isId)!.Value.Detail, StringComparison.Ordinal);

    [Fact]
    public void Refusal_has_nothing_in_it_that_can_not_be_printed()
    {
        foreach (var text in Unprintable.Concat(NoIds).Select(row => row.Data))
        {
            var detail = Texts.Fault(text, Most, isId: true)!.Value.Detail.Replace("< and >", "", StringComparison.Ordinal);
            Assert.All(detail.EnumerateRunes(), c => Assert.True(PlainText.IsShown(c), detail));
        }
    }

    [Theory]
    [InlineData(128, null)]
    [InlineData(129, "too-long")]
    public void Characters_outside_of_the_first_plane_count_once_as_the_schema_counts_them(int count, string? code) =>
        Assert.Equal(code, Texts.Fault(string.Concat(Enumerable.Repeat("🙂", count)), Most)?.Code);

    /// <summary>Every character there is, alone and behind a letter: what an XML parser can't read is never taken.</summary>
    [Fact]
    public void Character_that_is_taken_stands_in_XML_and_has_a_place_in_Unicode()
    {
        for (var value = 0; value <= 0x10FFFF; value++)
        {
            if (!Rune.TryCreate(value, out var c) || Texts.Fault("x" + c, Most) is not null)
            {
                continue;
            }

            var text = c.ToString();
            Assert.True(text.Length == 1 ? System.Xml.XmlConvert.IsXmlChar(text[0]) : System.Xml.XmlConvert.IsXmlSurrogatePair(text[1], text[0]),
                $"U+{value:X4}");
            Assert.NotEqual(UnicodeCategory.OtherNotAssigned, Rune.GetUnicodeCategory(c));
        }
    }

    /// <summary>The letters of an id against the runtime's table of Unicode, which is of another source and version.</summary>
    [Fact]
    public void Letter_of_an_id_is_a_letter_of_free_text_too_and_has_no_mark_of_its_own()
    {
        var count = 0;
        for (var value = 0x80; value <= 0x10FFFF; value++)
        {
            if (Rune.TryCreate(value, out var c) && Texts.Fault(c + "1x", Most, isId: true) is null)
            {
                count++;
                Assert.True(Rune.IsLetter(c), $"U+{value:X4}");
                Assert.Null(Texts.Fault(c.ToString(), Most));
            }
        }

        // Latin and Han, which may stand beside x, are most of what there is.
        Assert.InRange(count, 80_000, 110_000);
    }
}
