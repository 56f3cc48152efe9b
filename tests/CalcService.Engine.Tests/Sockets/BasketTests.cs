using CalcService.Engine.Provenance;
using CalcService.Engine.Sockets;
using CalcService.Engine.Tests.Numerics;
using CalcService.Engine.Tests.Provenance;

namespace CalcService.Engine.Tests.Sockets;

public sealed class BasketTests
{
    [Fact]
    [Verifies("basket-volume", Check.WorkedExample, "frustum 23/45/100 mm worked by hand: 93.96 cm³")]
    public void Volume_of_the_example_is_93_96_cm3() =>
        Printed.Agrees(93.960, Basket.VolumeM3(.023, .045, .100, Trace.None) * 1e6, 5);

    [Theory]
    [InlineData(.023, .045, .100)]
    [InlineData(.060, .061, .020)]
    [InlineData(.001, .400, 1.5)]
    [Verifies("basket-volume", Check.IndependentCode, "Simpson rule over the sections of the cone")]
    public void Volume_is_the_integral_of_the_sections(double smallEnd, double mouth, double length)
    {
        var summed = Reference.Integral(z => Math.PI / 4 * Math.Pow(smallEnd + ((mouth - smallEnd) * z / length), 2), 0, length);
        Printed.Matches(summed, Basket.VolumeM3(smallEnd, mouth, length, Trace.None));
    }

    [Fact]
    [Verifies("basket-volume", Check.Analytic, "limits: cylinder πd²L/4 and cone a third of it")]
    public void Volume_has_the_cylinder_and_the_cone_as_limits()
    {
        var cylinder = Math.PI / 4 * .05 * .05 * .2;
        Printed.Matches(cylinder, Basket.VolumeM3(.05, .05, .2, Trace.None));
        Printed.Matches(cylinder / 3, Basket.VolumeM3(0, .05, .2, Trace.None));
    }

    [Theory]
    [InlineData(60)]
    [InlineData(90)]
    [InlineData(14)]
    [Verifies("included-angle", Check.Analytic, "a cone drawn with the angle: D = d + 2·L·tan(angle/2)")]
    public void Included_angle_is_the_one_the_cone_was_drawn_with(double degrees)
    {
        var radians = degrees * Math.PI / 180;
        var mouth = .02 + (2 * .1 * Math.Tan(radians / 2));
        Printed.Matches(radians, Basket.IncludedAngleRad(.02, mouth, .1, Trace.None));
    }

    [Fact]
    [Verifies("included-angle", Check.WorkedExample, "23/45/100 mm by hand: 2·arctan(0.11) = 12.55°")]
    public void Included_angle_of_the_example_is_12_55_degrees() =>
        Printed.Agrees(12.55, Basket.IncludedAngleRad(.023, .045, .100, Trace.None) * 180 / Math.PI, 4);

    [Fact]
    public void Bore_runs_straight_from_small_end_to_mouth()
    {
        var basket = new Basket { SmallEndDiameterM = .023, LargeEndDiameterM = .045, LengthM = .1 };
        Assert.Equal(.023, basket.DiameterAtM(0), 1e-15);
        Assert.Equal(.034, basket.DiameterAtM(.5), 1e-15);
        Assert.Equal(.045, basket.DiameterAtM(1), 1e-15);
        Assert.Equal(.11, basket.Taper, 1e-15);
    }
}
