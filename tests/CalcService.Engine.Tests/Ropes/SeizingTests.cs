using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;
using CalcService.Engine.Tests.Numerics;
using CalcService.Engine.Tests.Provenance;

namespace CalcService.Engine.Tests.Ropes;

public sealed class SeizingTests
{
    private const double Inch = .0254;

    /// <summary>3·d rounded up; the first row is the manual's own example, the others are worked by hand.</summary>
    [Theory]
    [InlineData(3.0 / 4, 3)] // 2.25
    [InlineData(1.0 / 4, 2)] // 0.75, but never fewer than two
    [InlineData(2.0 / 3, 2)] // 2 exactly
    [InlineData(1, 3)] // 3 exactly
    [InlineData(1 + (1.0 / 8), 4)] // 3.375
    [InlineData(1 + (1.0 / 3), 4)] // 4 exactly
    [InlineData(2, 6)] // 6 exactly
    [InlineData(2 + (1.0 / 16), 7)] // 6.1875
    [Verifies("seizing-count", Check.WorkedExample, "NAVEDTRA 14081: 3/4 in rope, 3 seizings; others by hand")]
    public void Count_is_three_for_each_inch_rounded_up(double inches, int expected) =>
        Assert.Equal(expected, Seizing.Count(inches * Inch, 3, 2, Trace.None));

    [Fact]
    public void Count_of_metric_ropes_rounds_up_as_inches_do()
    {
        // 20 mm is 0.787 in, times 3 is 2.36; 26 mm is 1.024 in, times 3 is 3.07; 25.4 mm is one inch.
        Assert.Equal(3, Seizing.Count(.020, 3, 2, Trace.None));
        Assert.Equal(3, Seizing.Count(.0254, 3, 2, Trace.None));
        Assert.Equal(4, Seizing.Count(.026, 3, 2, Trace.None));
    }

    [Fact]
    [Verifies("seizing-size", Check.WorkedExample,
        "NAVEDTRA 14081 and TM 5-3810-305-10 by hand: 1 to 1.5 d wide, 2 d or 6 d apart, on 20 mm")]
    public void Sizes_are_so_many_diameters()
    {
        Printed.Matches(.020, Seizing.SizeM(.020, 1, Trace.None));
        Printed.Matches(.030, Seizing.SizeM(.020, 1.5, Trace.None));
        Printed.Matches(.040, Seizing.SizeM(.020, 2, Trace.None));
        Printed.Matches(.120, Seizing.SizeM(.020, 6, Trace.None));
    }

    [Fact]
    [Verifies("seizing-wire", Check.WorkedExample,
        "by hand: 3 seizings of 30 mm with wire of 1.5 mm, 20 turns of π·21.5 mm = 67.544 mm each")]
    public void Wire_is_turns_times_their_circle() =>
        // 3 × 20 × 67.5442 mm = 4052.65 mm.
        Printed.Agrees(4.05265, Seizing.WireM(3, .030, .020, .0015, Trace.None), 6);

    [Theory]
    [InlineData(.020, .0015, .030)]
    [InlineData(.008, .001, .010)]
    [InlineData(.050, .003, .075)]
    [Verifies("seizing-wire", Check.Analytic, "length of a helix, √((2πR)² + p²) for each turn")]
    public void Wire_is_a_helix_as_good_as_its_circles(double rope, double wire, double width)
    {
        var turn = Math.Sqrt(Math.Pow(Math.PI * (rope + wire), 2) + (wire * wire));
        Printed.Matches(width / wire * turn, Seizing.WireM(1, width, rope, wire, Trace.None), relative: 1e-3);
    }
}
