using CalcService.Engine.Compounds;

namespace CalcService.Engine.Tests.Compounds;

public sealed class CompoundSheetTests
{
    private const double Zero = 273.15;

    private static readonly CompoundSheet Sheet = new()
    {
        Name = "test",
        Kits = [],
        Doses = [new(2 + Zero, 4 + Zero, 5), new(4 + Zero, 7 + Zero, 2), new(7 + Zero, 34 + Zero, 0)],
    };

    // Bands are [from, below); the last includes its maximum.
    [Theory]
    [InlineData(1.999, null)]
    [InlineData(2, 5)]
    [InlineData(3.999, 5)]
    [InlineData(4, 2)]
    [InlineData(5, 2)]
    [InlineData(6.999, 2)]
    [InlineData(7, 0)]
    [InlineData(34, 0)]
    [InlineData(34.001, null)]
    public void Dose_is_that_of_the_band_that_holds_the_temperature(double celsius, int? doses) =>
        Assert.Equal(doses, Sheet.DosesPerKitAt(celsius + Zero));

    [Theory]
    [InlineData("2027-01-31", "2026-01-10", 14, "2027-01-31")] // what is printed counts
    [InlineData(null, "2026-01-10", 14, "2027-03-10")]
    [InlineData(null, "2025-12-31", 2, "2026-02-28")] // the month ends before the day comes
    [InlineData(null, "2026-01-10", null, null)]
    [InlineData(null, null, 14, null)]
    public void Last_good_day_is_the_printed_one_else_from_the_date_of_manufacture(string? expires, string? made, int? months,
        string? expected) =>
        Assert.Equal(Day(expected), new LotDates(new("A", "small", 1, Day(expires), Day(made)), months, withDose: false).Earliest?.Day);

    private static DateOnly? Day(string? text) =>
        text is null ? null : DateOnly.ParseExact(text, "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
}
