using System.Globalization;
using System.Text;
using CalcService.Api.Reading;
using CalcService.Api.Writing;
using CsCheck;

namespace CalcService.Api.Tests.Writing;

/// <summary>How date-times are written.</summary>
public sealed class InstantTests
{
    private static readonly Gen<DateTimeOffset> Instants =
        from ticks in Gen.Long[new DateTime(1950, 1, 2).Ticks, new DateTime(2199, 12, 30).Ticks]
        from unit in Gen.OneOf(1L, 1000L, TimeSpan.TicksPerMillisecond, TimeSpan.TicksPerSecond, TimeSpan.TicksPerMinute,
            TimeSpan.TicksPerDay)
        from minutes in Gen.Int[-840, 840]
        select new DateTimeOffset(ticks / unit * unit, TimeSpan.FromMinutes(minutes));

    [Fact]
    public void Instant_is_written_as_the_framework_writes_its_pattern() => Instants.Sample(instant =>
        Written(instant) == instant.ToString("yyyy-MM-dd'T'HH:mm:ss.FFFFFFFzzz", CultureInfo.InvariantCulture));

    [Fact]
    public void Instant_written_and_read_again_is_itself() => Instants.Sample(instant =>
        Texts.Instant(Written(instant)) is { } read && read.EqualsExact(instant));

    private static string Written(DateTimeOffset instant)
    {
        using var writer = new ShapeWriter(JsonForm.Sent);
        writer.Instant(instant);
        return Encoding.UTF8.GetString(writer.Written.Span)[1..^1];
    }
}
