using CalcService.Engine.Pouring;
using CalcService.Engine.Provenance;
using CalcService.Engine.Tests.Numerics;
using CalcService.Engine.Tests.Provenance;

namespace CalcService.Engine.Tests.Pouring;

public sealed class EvaporationTests
{
    [Fact]
    [Verifies("styrene-vapour-pressure", Check.WorkedExample,
        "Perry's Chemical Engineers' Handbook, Table 2-8, evaluated by hand at 20 °C: 599.4 Pa")]
    public void Styrene_at_20_degrees_has_599_4_Pa() =>
        Printed.Agrees(599.4, Evaporation.StyreneVapourPressurePa(293.15, Trace.None), 4);

    [Theory]
    [InlineData(242.54, 1.0613e1)]
    [InlineData(636.00, 3.8234e6)]
    [Verifies("styrene-vapour-pressure", Check.WorkedExample,
        "Perry's Chemical Engineers' Handbook, Table 2-8, pressures printed at both ends of the range (from memory)")]
    public void Styrene_has_the_pressures_that_the_table_prints_at_its_ends(double kelvins, double pascals) =>
        Printed.Agrees(pascals, Evaporation.StyreneVapourPressurePa(kelvins, Trace.None), 4);

    [Fact]
    [Verifies("styrene-vapour-pressure", Check.WorkedExample, "NIOSH Pocket Guide to Chemical Hazards: styrene boils at 293 °F")]
    public void Styrene_boils_where_NIOSH_says()
    {
        var boils = Reference.Root(kelvins => Evaporation.StyreneVapourPressurePa(kelvins, Trace.None) - 101325, 300, 500);
        Assert.Equal(293, ((boils - 273.15) * 1.8) + 32, 1.0);
    }

    [Fact]
    [Verifies("evaporation-rate", Check.WorkedExample,
        "US EPA ChemSTEER user guide, low-speed relation evaluated by hand in its own units: 6.6563e-3 g/s")]
    public void Evaporation_of_the_example_is_6_6563_mg_per_s()
    {
        var rate = Evaporation.RateKgPerS(
            molarMassGPerMol: 100, moleFraction: .5, vapourPressurePa: 10 * 101325.0 / 760, airSpeedMPerS: 30 * .3048 / 60,
            surfaceM2: .1, kelvins: 298, lengthM: .30, Trace.None);
        Printed.Agrees(6.6563e-3, rate * 1000, 5);
    }

    [Fact]
    [Verifies("evaporation-rate", Check.IndependentCode, "logarithms of the relation in its own units")]
    public void Evaporation_follows_the_powers_of_the_relation()
    {
        // M 104.15 g/mol, P_v 599.4 Pa, v 100 ft/min, A 16 cm², T 293.15 K, d 4.5 cm, P 1 atm.
        var log = Math.Log10(8.24) - 8 + (.835 * Math.Log10(104.15)) + Math.Log10(599.4 / 133.322368)
            + (.25 * Math.Log10((104.15 + 29) / (29 * 104.15))) + 1 + Math.Log10(16) - (.05 * Math.Log10(293.15)) - (.5 * Math.Log10(4.5));
        Printed.Matches(Math.Pow(10, log) / 1000,
            Evaporation.RateKgPerS(104.15, 1, 599.4, .508, 16e-4, 293.15, .045, Trace.None), 1e-8);
    }
}
