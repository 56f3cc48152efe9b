using CalcService.Engine.Compounds;
using CalcService.Engine.Provenance;
using CalcService.Engine.Tests.Numerics;
using CalcService.Engine.Tests.Provenance;
using CsCheck;

namespace CalcService.Engine.Tests.Compounds;

public sealed class GelAgeTests
{
    private const double Zero = 273.15;

    [Fact]
    [Verifies("gel-age", Check.IndependentCode,
        "ramp 10 → 30 °C in 60 min, 30 min at 20 °C, 60 kJ/mol: gel at 38.713 min, computed with an independent quadrature")]
    public void Gel_on_a_ramp_comes_when_an_independent_quadrature_says()
    {
        var curve = new GelCurve([new(0, 20 + Zero, 30 * 60, 60e3)]);
        var age = GelAge.Along(curve, new([0, 3600], [10 + Zero, 30 + Zero]));
        Printed.Agrees(38.713, age.TimeOf(1)!.Value / 60, 5);
    }

    [Fact]
    [Verifies("gel-age", Check.IndependentCode, "equivalent age in the form of ASTM C1074, 10 → 30 °C in 1 h, Q 5000 K, 20 °C: 1.050201 "
        + "h, computed with an independent quadrature")]
    public void Equivalent_age_on_a_ramp_is_more_than_that_of_its_mean_temperature()
    {
        var energy = 5000 * GelModel.GasConstant;
        Printed.Agrees(1.050201, GelAge.OverPiece(3600, 10 + Zero, 30 + Zero, 20 + Zero, 3600, energy, Trace.None), 7);
        var cut = GelAge.Along(new([new(0, 20 + Zero, 3600, energy)]), new([0, 3600], [10 + Zero, 30 + Zero]));
        Printed.Agrees(1.050201, cut.Last, 7);
    }

    [Fact]
    public void Age_over_irregular_pieces_and_bends_of_the_curve_is_the_integral()
    {
        var curve =
            new GelCurve([new(0, 278, 4000, 46e3),
            new(293, 293, 4000 * Math.Exp(46e3 / GelModel.GasConstant * ((1 / 293.0) - (1 / 278.0))), 44e3)]);
        var history = new TemperatureHistory([-600, 0, 100, 7000, 7001, 40000], [300, 285, 310, 262, 295, 291]);
        var age = GelAge.Along(curve, history);

        var expected = Enumerable.Range(1, 5).Sum(i => Reference.Integral(
            t => 1 / curve.TimeS(history.At(t)), history.Seconds[i - 1], history.Seconds[i], 200000));
        Printed.Matches(expected, age.Last, 1e-9);
    }

    [Fact]
    public void Time_of_an_age_is_where_it_has_that_age() =>
        Gen.Select(Gen.Double[250, 320].Array[2, 12], Gen.Double[.001, .999]).Sample((kelvins, share) =>
    {
        var curve = new GelCurve([new(0, 290, 3000, 55e3)]);
        var age = GelAge.Along(curve, new([.. kelvins.Select((_, i) => i * 3600.0)], kelvins));
        var time = age.TimeOf(share * age.Last)!.Value;
        Printed.Matches(share * age.Last, age.At(time), 1e-8);
    });

    [Fact]
    public void Age_beyond_what_is_known_has_no_time()
    {
        var age = GelAge.Along(new([new(0, 290, 3000, 55e3)]), TemperatureHistory.Constant(290, 0, 1500));
        Assert.Null(age.TimeOf(.51));
        Printed.Matches(1500, age.TimeOf(.5)!.Value, 1e-9);
    }

    [Fact]
    public void Cold_piece_ages_no_further_than_the_ceiling()
    {
        var shape = CureShape.Calibrated(4, .05, .90);
        var ceiling = new CureCeiling(shape, 275, 293);
        var curve = new GelCurve([new(0, 293, 1000, 50e3)]);
        var cold = GelAge.Along(curve, TemperatureHistory.Constant(272, 0, 1e7), ceiling);
        var warm = GelAge.Along(curve, TemperatureHistory.Constant(275, 0, 1e7), ceiling);

        Printed.Matches(ceiling.DegreeAt(272), shape.DegreeAt(cold.Last), 1e-9);
        Assert.True(cold.Last < shape.FullAge);
        Assert.True(warm.Last > shape.FullAge);
    }

    [Fact]
    [Verifies("cure-ceiling", Check.WorkedExample, "by hand: .90 at 2 °C and 1 at 20 °C, so .95 at 11 °C and .85 at −7 °C")]
    public void Ceiling_is_the_line_through_two_statements_of_the_sheet()
    {
        double At(double celsius) => CureCeiling.Degree(celsius + Zero, 2 + Zero, 20 + Zero, .90, Trace.None);
        Assert.Equal([.85, .90, .95], new[] { At(-7), At(2), At(11) }.Select(degree => Math.Round(degree, 12)));
        Assert.Equal(0, At(-200));
        Assert.True(At(50) < 1);
    }

    [Fact]
    public void History_bent_at_a_temperature_is_the_lower_or_higher_of_both()
    {
        var history = new TemperatureHistory([0, 10, 20], [280, 290, 270]);
        foreach (var t in Enumerable.Range(0, 201).Select(i => i / 10.0))
        {
            Printed.Matches(Math.Min(history.At(t), 285), history.NotAbove(285).At(t));
            Printed.Matches(Math.Max(history.At(t), 285), history.NotBelow(285).At(t));
        }
    }
}
