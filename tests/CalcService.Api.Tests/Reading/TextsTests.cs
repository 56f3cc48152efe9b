using System.Globalization;
using CalcService.Api.Reading;
using CsCheck;

namespace CalcService.Api.Tests.Reading;

public sealed class TextsTests
{
    [Theory]
    [InlineData("2026-03-12T08:30:00Z", 8.5, 0)]
    [InlineData("2026-03-12T08:30:00+01:00", 7.5, 60)]
    [InlineData("2026-03-12T08:30:00-03:30", 12, -210)]
    [InlineData("2026-03-12T08:30:00.5Z", 8.5 + (.5 / 3600), 0)]
    [InlineData("2026-03-12T08:30:00.0000001+14:00", -5.5 + (1e-7 / 3600), 840)]
    public void Instant_with_an_offset_is_that_instant_with_that_offset(string text, double utcHours, int offsetMinutes)
    {
        var instant = Texts.Instant(text);

        Assert.Equal(new DateTime(2026, 3, 12, 0, 0, 0, DateTimeKind.Utc).AddTicks((long)Math.Round(utcHours * TimeSpan.TicksPerHour)),
            instant!.Value.UtcDateTime);
        Assert.Equal(TimeSpan.FromMinutes(offsetMinutes), instant.Value.Offset);
    }

    /// <summary>XmlConvert reads RFC 3339 date-times by the rules of XML Schema, which are the same here.</summary>
    [Fact]
    public void Instant_agrees_with_the_XML_Schema_reader_of_the_framework() =>
        Gen.Select(Gen.Int[1950, 2199], Gen.Int[1, 13], Gen.Int[1, 31], Gen.Int[0, 24], Gen.Int[0, 60], Gen.Int[0, 60],
        Gen.OneOf("Z", "+01:00", "-12:30", "+14:00"))
            .Sample((year, month, day, hour, minute, second, offset) =>
            {
                var text = string.Create(CultureInfo.InvariantCulture,
                    $"{year:0000}-{month:00}-{day:00}T{hour:00}:{minute:00}:{second:00}{offset}");
                DateTimeOffset? expected = null;
                try
                {
                    // The contract has no hour 24.
                    expected = hour == 24 ? null : System.Xml.XmlConvert.ToDateTimeOffset(text);
                }
                catch (FormatException)
                {
                }

                return Texts.Instant(text) == expected && (expected is null || Texts.Instant(text)!.Value.Offset == expected.Value.Offset);
            }, iter: 5_000);

    [Theory]
    [InlineData("1950-01-01", true)]
    [InlineData("1949-12-31", false)]
    [InlineData("2199-12-31", true)]
    [InlineData("2200-01-01", false)]
    [InlineData("2024-02-29", true)]
    [InlineData("2100-02-29", false)]
    [InlineData("2026-4-1", false)]
    [InlineData("\u0662\u0660\u0662\u0666-01-01", false)]
    public void Date_is_a_day_of_the_Gregorian_calendar_in_the_years_of_the_contract(string text, bool isDate) =>
        Assert.Equal(isDate, Texts.Date(text) is not null);
}
