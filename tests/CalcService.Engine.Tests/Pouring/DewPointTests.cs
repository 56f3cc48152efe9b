using CalcService.Engine.Compounds;
using CalcService.Engine.Provenance;
using CalcService.Engine.Tests.Provenance;

namespace CalcService.Engine.Tests.Pouring;

public sealed class DewPointTests
{
    private const double Zero = 273.15;

    [Theory]
    [InlineData(20, .60, 12.008)]
    [InlineData(10, .85, 7.598)]
    [InlineData(30, .80, 26.169)]
    [Verifies("dew-point", Check.WorkedExample, "IAPWS saturation pressure, solved for the dew point")]
    public void Dew_point_is_within_3_hundredths_of_IAPWS(double celsius, double humidity, double dewCelsius) =>
        Assert.Equal(dewCelsius, DewPoint.OverWaterK(celsius + Zero, humidity, Trace.None) - Zero, .03);

    [Fact]
    [Verifies("dew-point", Check.IndependentCode, "IAPWS-IF97 region 4, solved for the dew point by bisection")]
    public void Dew_point_follows_IF97_wherever_air_and_dew_are_above_freezing()
    {
        for (var celsius = 0; celsius <= 60; celsius += 4)
        {
            for (var percent = 10; percent <= 100; percent += 5)
            {
                var exact = Iapws.SaturatedAtK(Iapws.OverWaterPa, percent / 100.0 * Iapws.OverWaterPa(celsius + Zero));
                if (exact >= Zero)
                {
                    // The Magnus form is off by up to 0.036 K in dry air and by more in air so hot that nobody pours.
                    Assert.Equal(exact, DewPoint.OverWaterK(celsius + Zero, percent / 100.0, Trace.None), celsius <= 44 ? .04 : .1);
                }
            }
        }
    }

    [Fact]
    [Verifies("dew-point", Check.Analytic, "saturated air is at its dew point")]
    public void Dew_point_of_saturated_air_is_its_temperature()
    {
        foreach (var celsius in new[] { -45.0, -10, 0, 20, 60 })
        {
            Assert.Equal(celsius + Zero, DewPoint.OverWaterK(celsius + Zero, 1, Trace.None), 1e-10);
        }
    }

    [Fact]
    [Verifies("dew-point", Check.IndependentCode, "Murphy and Koop 2005, equation 10 (from memory), solved by bisection")]
    public void Dew_point_of_freezing_air_follows_supercooled_water()
    {
        for (var celsius = -45; celsius <= 0; celsius += 3)
        {
            foreach (var humidity in new[] { .3, .5, .7, .9, 1 })
            {
                var exact = Iapws.SaturatedAtK(Iapws.OverSupercooledWaterPa, humidity * Iapws.OverSupercooledWaterPa(celsius + Zero));
                Assert.Equal(exact, DewPoint.OverWaterK(celsius + Zero, humidity, Trace.None), .1);
            }
        }
    }

    [Fact]
    [Verifies("frost-point", Check.IndependentCode, "IAPWS R14-08(2011) sublimation pressure against IAPWS-IF97, solved by bisection")]
    public void Frost_point_follows_the_IAPWS_sublimation_pressure()
    {
        for (var celsius = 0; celsius <= 20; celsius += 2)
        {
            for (var percent = 10; percent <= 100; percent += 5)
            {
                var vapour = percent / 100.0 * Iapws.OverWaterPa(celsius + Zero);
                if (vapour < Iapws.OverIcePa(Zero))
                {
                    Assert.Equal(Iapws.SaturatedAtK(kelvins => Iapws.OverIcePa(kelvins), vapour),
                        DewPoint.OverIceK(celsius + Zero, percent / 100.0, Trace.None), .06);
                }
            }
        }
    }

    [Fact]
    [Verifies("frost-point", Check.Analytic,
        "water and ice have the same vapour pressure at 0 °C; below it ice has less, so that frost comes first")]
    public void Frost_comes_before_dew_below_freezing()
    {
        Assert.Equal(Zero, DewPoint.OverIceK(Zero, 1, Trace.None), 1e-10);
        Assert.True(DewPoint.OverIceK(Zero, .5, Trace.None) > DewPoint.OverWaterK(Zero, .5, Trace.None));
    }
}
