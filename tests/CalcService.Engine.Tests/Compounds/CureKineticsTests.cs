using CalcService.Engine.Compounds;
using CalcService.Engine.Provenance;
using CalcService.Engine.Tests.Numerics;
using CalcService.Engine.Tests.Pouring;
using CsCheck;

namespace CalcService.Engine.Tests.Compounds;

public sealed class CureKineticsTests
{
    private const double Zero = 273.15;
    private static readonly ActivationEnergyBand Assumed = new(40e3, 50e3, 60e3);
    private static readonly CureConversions Conversions = new(.05, .90);

    private static readonly CompoundSheet Sheet = GoodPour.Sheet with { FullStrength = [new(20 + Zero, 5400)] };

    [Theory]
    [InlineData(0)]
    [InlineData(2)]
    public void Cure_at_one_temperature_gives_every_row_of_the_sheet_back(int doses)
    {
        var kinetics = CureKinetics.For(Sheet, doses, Assumed, Conversions)!;
        foreach (var row in Sheet.GelTimes.Where(row => row.Doses == doses))
        {
            // By a plain integration of the rate, which knows nothing of ages and closed forms.
            var gelled = Reference.RungeKutta(alpha => kinetics.LawAt(row.TemperatureK).RatePerS(alpha, row.TemperatureK), 0, row.TimeS,
                4000);
            Printed.Matches(.05, gelled, 1e-6);
        }

        var gelTime = kinetics.Expected.TimeS(20 + Zero);
        Printed.Matches(.90, Reference.RungeKutta(alpha => kinetics.LawAt(20 + Zero).RatePerS(alpha, 20 + Zero), 0, gelTime + 5400, 8000),
            1e-6);
    }

    [Theory]
    [InlineData(2)]
    [InlineData(4.75)]
    [InlineData(50)]
    [InlineData(200)]
    [InlineData(43200)]
    public void Shape_meets_both_conversions_however_long_full_strength_takes(double fullAge)
    {
        var shape = CureShape.Calibrated(fullAge, .05, .90);
        Printed.Matches(1, shape.AgeOf(.05), 1e-9);
        Printed.Matches(fullAge, shape.FullAge, 1e-9);
        Printed.Matches(.90, shape.DegreeAt(fullAge), 1e-9);
    }

    [Fact]
    public void Degree_rises_with_age_and_age_gives_it_back() =>
        Gen.Select(Gen.Double[1.5, 500], Gen.Double[1e-6, .999]).Sample((fullAge, degree) =>
            Printed.Matches(degree, CureShape.Calibrated(fullAge, .05, .90) is var shape ? shape.DegreeAt(shape.AgeOf(degree)) : 0, 1e-8));

    [Fact]
    public void Curves_are_the_gel_times_of_the_model()
    {
        foreach (var sheet in new[] { Sheet, Sheet with { GelTimes = [new(20 + Zero, 0, 1440)] } })
        {
            var model = GelModel.For(sheet, 0, Assumed)!;
            var (earliest, expected, latest) = model.Curves();
            for (var celsius = -20.0; celsius < 60; celsius += 2.5)
            {
                var band = model.At(celsius + Zero, Trace.None);
                Printed.Matches(band.EarliestS, earliest.TimeS(celsius + Zero), 1e-10);
                Printed.Matches(band.ExpectedS, expected.TimeS(celsius + Zero), 1e-10);
                Printed.Matches(band.LatestS, latest.TimeS(celsius + Zero), 1e-10);
            }
        }
    }

    [Fact]
    public void Kinetics_need_gel_times_full_strength_and_a_lowest_cure_temperature()
    {
        CureKinetics? Of(CompoundSheet sheet, int doses = 0) => CureKinetics.For(sheet, doses, Assumed, Conversions);
        Assert.NotNull(Of(Sheet));
        Assert.Null(Of(Sheet, doses: 7));
        Assert.Null(Of(Sheet with { FullStrength = [] }));
        Assert.Null(Of(Sheet with { Pouring = null }));
        Assert.NotNull(Of(Sheet with { Pouring = null, LowestCureK = 275 }));
    }

    [Fact]
    public void Gel_time_of_a_cup_that_warms_itself_is_longer_where_the_temperature_is_held()
    {
        var cup = Sheet with
        {
            GelTimes = [.. Sheet.GelTimes.Select(row => row with { SelfHeating = SelfHeating.Yes })],
            Reaction = new(350e3, .45),
            SpecificHeatJPerKgK = 1250,
        };
        var kinetics = CureKinetics.For(cup, 0, Assumed, Conversions)!;
        foreach (var row in cup.GelTimes.Where(row => row.Doses == 0))
        {
            // The cup without loss of heat gives the sheet's time: integrated plainly in time, temperature tied to the degree.
            var law = kinetics.LawAt(row.TemperatureK);
            Printed.Matches(.05, Reference.RungeKutta(alpha => law.RatePerS(alpha, row.TemperatureK + (126 * alpha)), 0, row.TimeS, 4000),
                1e-6);
            Assert.True(kinetics.Expected.TimeS(row.TemperatureK) > row.TimeS);
            Printed.Matches(row.TimeS, kinetics.Earliest.TimeS(row.TemperatureK), 1e-10);
        }
    }

    /// <summary>Ind. Eng. Chem. Res. 2021, SI Table S1: gel time at room temperature against cobalt.</summary>
    [Theory]
    [InlineData(10, 3.5)]
    [InlineData(6, 3.9)]
    [InlineData(3, 5.3)]
    [InlineData(1, 9.8)]
    public void Doses_are_never_interpolated_from_measured_ones(int hundredths, double minutes)
    {
        (int Doses, double Minutes)[] cobalt = [(10, 3.5), (6, 3.9), (3, 5.3), (1, 9.8)];
        var sheet = Sheet with { GelTimes = [.. cobalt.Select(row => new GelTime(23 + Zero, row.Doses, row.Minutes * 60))] };

        Printed.Matches(minutes * 60, CureKinetics.For(sheet, hundredths, Assumed, Conversions)!.Expected.TimeS(23 + Zero));
        Assert.Null(CureKinetics.For(sheet, hundredths + 1, Assumed, Conversions));
    }
}
