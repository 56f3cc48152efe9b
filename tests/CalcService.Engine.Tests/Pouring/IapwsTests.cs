using CalcService.Engine.Tests.Numerics;

namespace CalcService.Engine.Tests.Pouring;

/// <summary>The yardstick itself, held against its published check values (numbers from memory).</summary>
public sealed class IapwsTests
{
    [Theory]
    [InlineData(300, .353658941e-2)]
    [InlineData(500, .263889776e1)]
    [InlineData(600, .123443146e2)]
    public void Saturation_over_water_has_the_values_of_IF97_Table_35(double kelvins, double megapascals) =>
        Printed.Agrees(megapascals, Iapws.OverWaterPa(kelvins) / 1e6, 9);

    [Fact]
    public void Sublimation_has_the_check_value_of_its_release() => Printed.Agrees(8.94735, Iapws.OverIcePa(230), 6);

    [Fact]
    public void Supercooled_water_goes_over_into_water_at_0_degrees() =>
        Printed.Matches(Iapws.OverWaterPa(273.15), Iapws.OverSupercooledWaterPa(273.15), 1e-4);
}
