using CalcService.Engine.Compounds;
using CalcService.Engine.Provenance;
using CalcService.Engine.Tests.Numerics;
using CalcService.Engine.Tests.Provenance;
using CsCheck;

namespace CalcService.Engine.Tests.Compounds;

public sealed class GelModelTests
{
    private const double Zero = 273.15;
    private static readonly ActivationEnergyBand Assumed = new(40e3, 50e3, 60e3);

    [Fact]
    [Verifies("gel-time", Check.Analytic, "on an Arrhenius line the time half-way in 1/T is the geometric mean")]
    [Verifies("gel-activation-energy", Check.Analytic, "on an Arrhenius line the time half-way in 1/T is the geometric mean")]
    public void Gel_time_half_way_in_1_over_T_is_the_geometric_mean()
    {
        var energy = GelModel.ActivationEnergyJPerMol(280, 40 * 60, 300, 10 * 60, Trace.None);
        var halfWay = 2 / ((1 / 280.0) + (1 / 300.0));
        Printed.Matches(20 * 60, GelModel.GelTimeS(40 * 60, 280, energy, halfWay, Trace.None));
    }

    [Fact]
    [Verifies("gel-time", Check.IndependentCode,
        "ramp 10 → 30 °C in 60 min, 30 min at 20 °C, 60 kJ/mol: gel at 38.713 min, computed with an independent quadrature")]
    public void Gel_on_a_ramp_comes_when_its_age_is_one()
    {
        double Rate(double seconds) => 1 / GelModel.GelTimeS(30 * 60, 20 + Zero, 60e3, 10 + Zero + (seconds / 180), Trace.None);
        var gel = Reference.Root(time => Reference.Integral(Rate, 0, time) - 1, 60, 3600);
        Printed.Agrees(38.713, gel / 60, 5);
    }

    [Fact]
    [Verifies("gel-activation-energy", Check.WorkedExample,
        "by hand: a time that halves from 20 to 30 °C, R·ln 2/(1/293.15 K − 1/303.15 K) = 51.2 kJ/mol")]
    public void Energy_of_a_time_that_halves_over_10_K_is_51_kJ_per_mol() =>
        Printed.Agrees(51.2, GelModel.ActivationEnergyJPerMol(20 + Zero, 20, 30 + Zero, 10, Trace.None) / 1000, 3);

    [Fact]
    [Verifies("gel-activation-energy", Check.Analytic, "rows made with an energy give it back")]
    public void Energy_that_made_two_rows_is_found_again() =>
        Gen.Select(Gen.Double[10e3, 200e3], Gen.Double[250, 300], Gen.Double[1, 60]).Sample(
            (energy, cold, apart) =>
            {
                var warmS = 3600 * Math.Exp(energy / 8.31446261815324 * ((1 / (cold + apart)) - (1 / cold)));
                Printed.Matches(energy, GelModel.ActivationEnergyJPerMol(cold, 3600, cold + apart, warmS, Trace.None), 1e-8);
            });

    [Fact]
    public void Model_gives_every_row_of_the_sheet_back()
    {
        GelTime[] rows = [Row(5, 66), Row(20, 24), Row(35, 10)];
        var model = GelModel.For(Sheet([.. rows.Reverse()]), 0, Assumed)!;
        Assert.All(rows, row =>
        {
            var band = model.At(row.TemperatureK, Trace.None);
            Printed.Matches(row.TimeS, band.ExpectedS);
            Assert.Equal((band.ExpectedS, band.ExpectedS), (band.EarliestS, band.LatestS));
        });
        Assert.Equal(new TemperatureRange(5 + Zero, 35 + Zero), model.Measured);
        Assert.False(model.IsAssumed);
    }

    [Fact]
    public void Model_beyond_its_rows_goes_on_with_the_nearest_pair()
    {
        // Both pairs are made with their own energy, so that each side shows which pair it took.
        var cold = Arrhenius(60 * 60, 5, 40e3);
        var model = GelModel.For(Sheet([Row(5, 60), Row(20, cold(20) / 60), Row(35, Arrhenius(cold(20), 20, 80e3)(35) / 60)]), 0, Assumed)!;

        Printed.Matches(cold(-5), model.At(-5 + Zero, Trace.None).ExpectedS, 1e-10);
        Printed.Matches(cold(12), model.At(12 + Zero, Trace.None).ExpectedS, 1e-10);
        Printed.Matches(Arrhenius(cold(20), 20, 80e3)(50), model.At(50 + Zero, Trace.None).ExpectedS, 1e-10);
    }

    [Theory]
    [InlineData(10, 60e3, 40e3)]
    [InlineData(30, 40e3, 60e3)]
    public void Model_from_one_row_carries_the_assumed_band(double celsius, double latestBy, double earliestBy)
    {
        // Colder than the row the higher energy slows most, warmer than the row it hastens most.
        var model = GelModel.For(Sheet([Row(20, 24)]), 0, Assumed)!;
        var band = model.At(celsius + Zero, Trace.None);

        Assert.True(model.IsAssumed);
        Printed.Matches(Arrhenius(24 * 60, 20, 50e3)(celsius), band.ExpectedS, 1e-10);
        Printed.Matches(Arrhenius(24 * 60, 20, latestBy)(celsius), band.LatestS, 1e-10);
        Printed.Matches(Arrhenius(24 * 60, 20, earliestBy)(celsius), band.EarliestS, 1e-10);
    }

    [Fact]
    public void Model_from_one_row_takes_the_energy_of_the_sheet_where_it_states_one()
    {
        var model = GelModel.For(Sheet([Row(20, 24)]) with { ActivationEnergyJPerMol = 70e3 }, 0, Assumed)!;
        var band = model.At(10 + Zero, Trace.None);

        Assert.False(model.IsAssumed);
        Printed.Matches(Arrhenius(24 * 60, 20, 70e3)(10), band.ExpectedS, 1e-10);
        Assert.Equal(band.EarliestS, band.LatestS);
    }

    [Fact]
    public void Model_for_a_dose_that_the_sheet_does_not_have_is_none() => Assert.Null(GelModel.For(Sheet([Row(20, 24)]), 1, Assumed));

    private static Func<double, double> Arrhenius(double seconds, double atCelsius, double energy) =>
        celsius => seconds * Math.Exp(energy / 8.31446261815324 * ((1 / (celsius + Zero)) - (1 / (atCelsius + Zero))));

    private static GelTime Row(double celsius, double minutes) => new(celsius + Zero, 0, minutes * 60);

    private static CompoundSheet Sheet(GelTime[] rows) => new() { Name = "test", Kits = [], GelTimes = rows };
}
