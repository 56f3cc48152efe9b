using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;
using CalcService.Engine.Tests.Numerics;
using CalcService.Engine.Tests.Provenance;

namespace CalcService.Engine.Tests.Ropes;

public sealed class BroomTests
{
    [Theory]
    [InlineData(1e-6)]
    [InlineData(1e-3)]
    [InlineData(.0099999)] // the closed form takes over from its series at 0.01
    [InlineData(.01)]
    [InlineData(.0100001)]
    [InlineData(.11)]
    [InlineData(.5)]
    [InlineData(1)]
    [Verifies("wire-obliquity", Check.IndependentCode, "Simpson rule over √(1 + t²u²), weighted by area")]
    public void Obliquity_is_the_mean_wire_slope_over_the_section(double t)
    {
        var mean = Reference.Integral(u => Math.Sqrt(1 + (t * t * u * u)) * 2 * u, 0, 1);
        Printed.Matches(mean, Broom.Obliquity(t, Trace.None), 2e-12);
    }

    [Fact]
    [Verifies("wire-obliquity", Check.Analytic, "limits: parallel wires 1; cone of 45° half-angle (2/3)·(2√2 − 1)")]
    public void Obliquity_has_its_limits()
    {
        Assert.Equal(1, Broom.Obliquity(0, Trace.None));
        Printed.Matches(2.0 / 3 * ((2 * Math.Sqrt(2)) - 1), Broom.Obliquity(1, Trace.None));
    }

    [Fact]
    [Verifies("steel-volume", Check.IndependentCode, "wire by wire: a triangular lattice of wires, each with its own slope")]
    public void Steel_is_the_sum_of_its_wires()
    {
        double mouth = .045, lip = .023, length = .100;
        // Wires spread from a common apex, so that the wire at the share u of the radius has the slope t·u.
        var taper = (mouth - lip) / (2 * length);
        var slopes = Lattice(spacing: 1.0 / 150).Select(point => Math.Sqrt(1 + (taper * taper * point.SquaredRadius))).ToArray();
        var summed = slopes.Sum(slope => 184e-6 / slopes.Length * length * slope);

        Printed.Matches(summed, Broom.SteelVolumeM3(184e-6, length, Broom.Obliquity(taper, Trace.None), Trace.None), 1e-6);
    }

    [Fact]
    [Verifies("steel-volume", Check.WorkedExample, "20 mm 6x36 IWRC in a basket 23/45/100 mm: 184 mm² × 100 mm × 1.00302, by hand")]
    [Verifies("wire-obliquity", Check.WorkedExample, "series by hand: 1 + 0.11²/4 − 0.11⁴/24")]
    public void Steel_of_the_example_is_18_455_cm3()
    {
        var obliquity = Broom.Obliquity(.11, Trace.None);
        Printed.Agrees(1.00302, obliquity, 6);
        Printed.Agrees(18.455, Broom.SteelVolumeM3(184e-6, .100, obliquity, Trace.None) * 1e6, 4);
    }

    [Fact]
    [Verifies("steel-volume-by-mass", Check.WorkedExample, "1.636 kg/m over 7850 kg/m³ × 100 mm, by hand")]
    public void Steel_by_mass_of_the_example_is_20_8_cm3() =>
        Printed.Agrees(20.8, Broom.SteelVolumeByMassM3(1.636, .100, Trace.None) * 1e6, 3);

    [Fact]
    [Verifies("steel-volume-by-mass", Check.Analytic, "a solid bar: its mass over its density is its volume")]
    public void Steel_by_mass_of_a_solid_bar_is_the_bar()
    {
        double section = 1e-4;
        Printed.Matches(section * .5, Broom.SteelVolumeByMassM3(section * 7850, .5, Trace.None));
    }

    [Theory]
    [InlineData(.023)]
    [InlineData(.045)]
    [InlineData(1)]
    [Verifies("wire-spacing", Check.IndependentCode, "lattice points counted in the circle")]
    public void Spacing_puts_as_many_lattice_points_into_the_circle_as_there_are_wires(double diameter)
    {
        int wires = 50_000;
        var spacing = Broom.WireSpacingM(diameter, wires, Trace.None);
        // A circle of this size cuts about one point in a thousand more or less than its area asks for.
        Assert.InRange(Lattice(spacing / (diameter / 2)).Count(), wires * .998, wires * 1.002);
    }

    /// <summary>Points of a triangular lattice inside the unit circle, by their squared radius.</summary>
    private static IEnumerable<(double SquaredRadius, int Row)> Lattice(double spacing)
    {
        var rowHeight = spacing * Math.Sin(Math.PI / 3);
        var rows = (int)Math.Ceiling(1 / rowHeight);
        var columns = (int)Math.Ceiling(1 / spacing) + 1;
        for (var row = -rows; row <= rows; row++)
        {
            for (var column = -columns; column <= columns; column++)
            {
                var x = (column + (row % 2 == 0 ? 0 : .5)) * spacing;
                var y = row * rowHeight;
                if ((x * x) + (y * y) <= 1)
                {
                    yield return ((x * x) + (y * y), row);
                }
            }
        }
    }
}
