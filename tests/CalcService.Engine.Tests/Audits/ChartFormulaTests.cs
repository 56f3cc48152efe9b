using CalcService.Engine.Audits;
using CalcService.Engine.Provenance;
using CalcService.Engine.Tests.Provenance;

namespace CalcService.Engine.Tests.Audits;

/// <summary>Control charts and tolerance factors against the NIST/SEMATECH e-Handbook and published tables.</summary>
public sealed class ChartFormulaTests
{
    private const string Handbook = "NIST/SEMATECH e-Handbook of Statistical Methods, ";

    /// <summary>The ten flow rates of 6.3.2.2.</summary>
    private static readonly double[] Flows = [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1];

    [Fact]
    [Verifies("moving-range-deviation", Check.WorkedExample, Handbook + "6.3.2.2")]
    [Verifies("individuals-limit", Check.WorkedExample, Handbook + "6.3.2.2")]
    public void Individuals_have_the_limits_that_the_handbook_prints()
    {
        var chart = Chart(Flows);
        var deviation = chart.Deviation!.Value;

        Assert.Equal(50.81, chart.Mean, 1e-9);
        // It prints a mean moving range of 1.8778 and carries that on.
        Assert.Equal(1.8778 / 1.128, deviation, 5e-5);
        Assert.Equal(55.8041, ChartFormulas.Limit(chart.Mean, 3, deviation, Trace.None), 1e-4);
        Assert.Equal(45.8159, ChartFormulas.Limit(chart.Mean, -3, deviation, Trace.None), 1e-4);
    }

    /// <summary>Data and averages as the handbook lists them, to two decimals.</summary>
    [Fact]
    [Verifies("ewma", Check.WorkedExample, Handbook + "6.3.2.4")]
    public void Moving_average_goes_as_the_handbook_lists_it()
    {
        double[] data = [52.0, 47.0, 53.0, 49.3, 50.1, 47.0, 51.0, 50.1, 51.2, 50.5, 49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6,
            52.1];
        double[] printed = [50.60, 49.52, 50.56, 50.18, 50.16, 49.21, 49.75, 49.85, 50.26, 50.33, 50.11, 49.36, 49.52, 50.05, 49.38, 49.92,
            50.73, 51.23, 51.94, 51.99];
        var average = 50.0;
        foreach (var (value, expected) in data.Zip(printed))
        {
            average = ChartFormulas.Average(.3, value, average, Trace.None);
            Assert.Equal(expected, average, .0051);
        }
    }

    [Fact]
    [Verifies("ewma-width", Check.WorkedExample, Handbook + "6.3.2.4")]
    public void Moving_average_has_the_limits_that_the_handbook_prints()
    {
        var width = ChartFormulas.AverageWidth(3, 2.0539, .3, Trace.None);
        Assert.Equal(52.5884, 50 + width, 1e-4);
        Assert.Equal(47.4116, 50 - width, 1e-4);
    }

    /// <summary>
    /// NIST/SEMATECH 7.2.6.3 prints 2.9110 for ten values; the others are the three decimals of the published tables (ISO 16269-6, Odeh and
    /// Owen), from memory.
    /// </summary>
    [Theory]
    [InlineData(10, .95, .95, 2.9110, 1e-4)]
    [InlineData(3, .95, .95, 7.656, 1e-3)]
    [InlineData(5, .95, .95, 4.203, 1e-3)]
    [InlineData(15, .95, .95, 2.566, 1e-3)]
    [InlineData(20, .95, .95, 2.396, 1e-3)]
    [InlineData(50, .95, .95, 2.065, 1e-3)]
    [InlineData(100, .95, .95, 1.927, 1e-3)]
    [InlineData(10, .90, .95, 2.355, 1e-3)]
    [InlineData(10, .99, .95, 3.981, 1e-3)]
    [Verifies("tolerance-factor", Check.WorkedExample, Handbook + "7.2.6.3; tables of one-sided tolerance factors, from memory")]
    public void Tolerance_factor_is_that_of_the_tables(int count, double coverage, double confidence, double printed, double last) =>
        Assert.Equal(printed, ChartFormulas.ToleranceFactor(count, coverage, confidence, Trace.None), last);

    [Fact]
    public void Chart_keeps_the_first_values_and_the_mean_of_all()
    {
        var chart = new IndividualsChart(3);
        foreach (var value in Flows)
        {
            chart.Add(value);
        }

        Assert.Equal(Flows[..3], chart.Kept);
        Assert.Equal((10, Flows.Average()), (chart.Count, Math.Round(chart.Mean, 10)));
        Assert.Equal(Chart(Flows).Deviation, chart.Deviation);
    }

    [Fact]
    public void Chart_of_one_value_has_no_deviation() => Assert.Null(Chart([50]).Deviation);

    private static IndividualsChart Chart(double[] values)
    {
        var chart = new IndividualsChart(100);
        foreach (var value in values)
        {
            chart.Add(value);
        }

        return chart;
    }
}
