using CalcService.Engine.Audits;
using CalcService.Engine.Findings;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Tests.Audits;

public sealed class RecordStatisticsTests
{
    /// <summary>NIST/SEMATECH 6.3.2.2, its data a fiftieth as large: 50.81, 55.8041 and 45.8159.</summary>
    [Fact]
    public void Lot_has_the_chart_that_the_handbook_prints()
    {
        var statistics = new RecordStatistics(Editions.Known.Current);
        foreach (var (flow, i) in new[] { 49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1 }.Select((flow, i) => (flow, i)))
        {
            statistics.Add(Record(i + 1, "L", flow / 50));
        }

        var lot = Assert.Single(statistics.Result().Lots);
        Assert.Equal(50.81 / 50, lot.Mean!.Value, 1e-12);
        Assert.Equal(55.8041 / 50, lot.Upper!.Value, 1e-5);
        Assert.Equal(45.8159 / 50, lot.Lower!.Value, 1e-5);
        Assert.Equal(2.9110, lot.Tolerance!.Factor, 1e-4);
        Assert.Equal((10, 10, true, false), (lot.Charted, lot.Tested, lot.IsProvisional, lot.IsOutOfFamily));
    }

    [Fact]
    public void Signal_names_the_line_that_made_it()
    {
        var statistics = new RecordStatistics(Editions.Known.Current);
        double[] ratios = [.98, 1.02, .99, 1.01, .98, 1.02, .99, 1.01, .98, 1.02, 1.5, 1];
        for (var i = 0; i < ratios.Length; i++)
        {
            statistics.Add(Record(100 + i, "L", ratios[i]));
        }

        Assert.Contains(statistics.Result().Lots[0].Signals, signal => signal is { Rule: "one-beyond-three", Line: 110 });
    }

    /// <summary>A lot's mean beyond exp(3·√(.10² + .05²/100)) = 1.35 of the sheet's.</summary>
    [Theory]
    [InlineData(1.34, false)]
    [InlineData(1.37, true)]
    [InlineData(.75, false)]
    [InlineData(.73, true)]
    public void Lot_whose_gels_come_far_from_the_sheet_is_out_of_family(double ratio, bool isOut)
    {
        var statistics = new RecordStatistics(Editions.Known.Current);
        for (var i = 0; i < 100; i++)
        {
            statistics.Add(Record(i, "L", ratio));
        }

        Assert.Equal(isOut, statistics.Result().Lots[0].IsOutOfFamily);
    }

    [Fact]
    public void Number_that_comes_again_is_counted_and_listed_with_its_line()
    {
        var statistics = new RecordStatistics(Editions.Known.Current);
        foreach (var (number, line) in new[] { ("A", 1), ("B", 2), ("A", 3), (null, 4), ("A", 5) })
        {
            statistics.Add(Record(line, "L", 1) with { Number = number });
        }

        var numbers = statistics.Result().Numbers;
        Assert.Equal((2, 1, 0, 2), (numbers.Remembered, numbers.Missing, numbers.Beyond, numbers.Repeated));
        Assert.Equal([new RepeatedNumber("A", 3), new("A", 5)], numbers.First);
    }

    /// <summary>What found no room is told, never lost in silence: every record is in a group or among those beyond.</summary>
    [Fact]
    public void Lots_and_numbers_beyond_the_bound_are_counted()
    {
        var statistics = new RecordStatistics(Editions.Known.Current);
        var most = RecordStatistics.MostNumbers + 10;
        for (var i = 0; i < most; i++)
        {
            statistics.Add(Record(i, $"L{i % (RecordStatistics.MostGroups + 5)}", null) with { Number = $"N{i}" });
        }

        var result = statistics.Result();
        Assert.Equal(RecordStatistics.MostGroups, result.Lots.Count);
        Assert.Equal(most, result.Lots.Sum(lot => lot.Records) + result.LotsBeyond);
        Assert.Equal((RecordStatistics.MostNumbers, 10), (result.Numbers.Remembered, result.Numbers.Beyond));
        Assert.Equal(most, result.WithoutRatio);
    }

    [Fact]
    public void Ratios_beyond_those_kept_count_for_mean_and_limits_alone()
    {
        var statistics = new RecordStatistics(Editions.Known.Current);
        for (var i = 0; i < 2 * RecordStatistics.MostKept; i++)
        {
            statistics.Add(Record(i, "L", i % 2 == 0 ? .9 : 1.1));
        }

        var lot = statistics.Result().Lots[0];
        Assert.Equal((2 * RecordStatistics.MostKept, RecordStatistics.MostKept), (lot.Charted, lot.Tested));
        Assert.Equal(1, lot.Mean!.Value, 1e-12);
    }

    private static AuditedRecord Record(long line, string lot, double? ratio) =>
        new(line, $"N{line}", [lot], ["R. Vos"], ratio, Decision.Proceed);
}
