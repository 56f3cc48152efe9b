using CalcService.Engine.Cones.Heat;
using CalcService.Engine.Provenance;
using CalcService.Engine.Tests.Numerics;
using CalcService.Engine.Tests.Provenance;

namespace CalcService.Engine.Tests.Cones.Heat;

public sealed class ConeMixtureTests
{
    [Theory]
    [InlineData(11.5, .4429)]
    [InlineData(15.1667, .2546)]
    [InlineData(22.5, .1157)]
    [Verifies("wire-fraction", Check.WorkedExample,
        "184 mm² of wire in bores of 23, 30.33 and 45 mm, by hand: 184/415.48, 184/722.65, 184/1590.43")]
    public void Wires_of_the_example_fill_44_25_and_12_per_cent(double radiusMm, double printed) =>
        Printed.Agrees(printed, ConeMixture.WireFraction(184e-6, radiusMm / 1000, Trace.None), 4);

    [Fact]
    [Verifies("cone-density", Check.WorkedExample,
        "a quarter steel of 7850 and three quarters compound of 1750 kg/m³, by hand: 1962.5 + 1312.5")]
    [Verifies("cone-specific-heat", Check.WorkedExample,
        "the same with 460 and 1250 J/(kg·K), by hand: (902,750 + 1,640,625)/3275 = 776.603")]
    [Verifies("cone-reaction-heat", Check.WorkedExample,
        "the same with 45 % resin of 350 kJ/kg, by hand: .75·.45·1750·350,000/3275 = 63,120.2")]
    public void Quarter_of_steel_is_as_worked_by_hand()
    {
        var density = ConeMixture.DensityKgPerM3(.25, Cones.Materials, Trace.None);

        Assert.Equal(3275, density, 1e-9);
        Printed.Agrees(776.603, ConeMixture.SpecificHeatJPerKgK(.25, density, Cones.Materials, Trace.None), 6);
        Printed.Agrees(63120.2, ConeMixture.ReactionHeatJPerKg(.25, density, Cones.Materials, Trace.None), 6);
    }

    [Fact]
    [Verifies("cone-start-temperature", Check.WorkedExample,
        "a quarter steel at 8 °C and three quarters compound at 18 °C, by hand: (902,750·8 + 1,640,625·18)/2,543,375 = 14.4506 °C")]
    public void Cold_wires_cool_the_compound_when_they_meet() =>
        Assert.Equal(14.4506, ConeMixture.StartK(.25, 8 + Cones.Zero, 18 + Cones.Zero, Cones.Materials, Trace.None) - Cones.Zero, 5e-5);

    [Theory]
    [InlineData(0, .6)]
    [InlineData(.25, 12.95)]
    [InlineData(1, 50)]
    [Verifies("cone-axial-conductivity", Check.WorkedExample, "bars side by side, by hand: .25·50 + .75·.6")]
    public void Along_the_wires_the_paths_add(double fraction, double worked) =>
        Assert.Equal(worked, ConeMixture.AxialConductivityWPerMK(fraction, 50, .6, Trace.None), 1e-12);

    [Theory]
    [InlineData(.1)]
    [InlineData(.25)]
    [InlineData(.44)]
    [Verifies("cone-radial-conductivity", Check.Analytic, "Keller's theorem (J. Math. Phys. 5 (1964) 548, from memory): with the two "
        + "materials exchanged the conductivities multiply to k_s·k_m")]
    public void Across_the_wires_the_exchange_of_materials_gives_the_reciprocal(double fraction) =>
        Printed.Matches(50 * .6,
        ConeMixture.RadialConductivityWPerMK(fraction, 50, .6, Trace.None) * ConeMixture.RadialConductivityWPerMK(fraction, .6, 50,
        Trace.None));

    [Theory]
    [InlineData(.12)]
    [InlineData(.25)]
    [InlineData(.44)]
    [Verifies("cone-radial-conductivity", Check.IndependentCode,
        "finite differences over one cell of a square array of round wires, relaxed to rest")]
    public void Across_the_wires_a_cell_of_the_array_conducts_as_much(double fraction) =>
        Printed.Matches(SquareArray.Conductivity(fraction, 50, .6), ConeMixture.RadialConductivityWPerMK(fraction, 50, .6, Trace.None),
        .03);
}
