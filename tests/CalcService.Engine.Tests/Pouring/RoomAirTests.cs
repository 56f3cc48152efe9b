using CalcService.Engine.Pouring;
using CalcService.Engine.Provenance;
using CalcService.Engine.Tests.Numerics;
using CalcService.Engine.Tests.Provenance;

namespace CalcService.Engine.Tests.Pouring;

public sealed class RoomAirTests
{
    private const double Hour = 3600;

    [Theory]
    [InlineData(10, .1535)]
    [InlineData(40, .4866)]
    [InlineData(160, .9305)]
    [Verifies("room-concentration", Check.WorkedExample, "well-mixed room with one air change an hour, share of the final concentration, by hand: 1 − e^{−t}")]
    public void Room_with_one_change_an_hour_fills_as_the_table_says(double minutes, double share)
    {
        // G = n·V·C∞ with C∞ = 1.
        var concentration = RoomAir.ConcentrationKgPerM3(50 / Hour, 50, 1 / Hour, minutes * 60, Trace.None);
        Printed.Agrees(share, concentration, 4);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1e-9)]
    [InlineData(.9e-4)] // the series hands over to the closed form at n·τ = 1e-4
    [InlineData(1.1e-4)]
    [InlineData(.6)]
    [InlineData(30)]
    [Verifies("room-concentration", Check.IndependentCode, "fourth-order Runge–Kutta on V·dC/dt = G − n·V·C")]
    public void Room_fills_as_its_balance_integrates(double changes)
    {
        const double source = 2e-6, volume = 180, seconds = 1440;
        var rate = changes / seconds;
        var exact = Reference.RungeKutta(c => (source / volume) - (rate * c), 0, seconds, 20_000);
        Printed.Matches(exact, RoomAir.ConcentrationKgPerM3(source, volume, rate, seconds, Trace.None), 1e-9);
    }

    [Theory]
    [InlineData(0, 1440, 28800)]
    [InlineData(1e-6, 1440, 28800)]
    [InlineData(1.1e-5, 28800, 28800)] // just below where the series hands over to the closed form
    [InlineData(1.4e-5, 28800, 28800)]
    [InlineData(.6, 1440, 28800)]
    [InlineData(6, 1440, 28800)]
    [InlineData(6, 28800, 28800)]
    [InlineData(6, 50000, 28800)] // the source outlasts the time that is averaged
    [Verifies("room-mean", Check.IndependentCode, "Simpson rule over the concentration integrated by Runge–Kutta")]
    public void Mean_is_the_area_under_the_balance(double changesPerHour, double sourceS, double overS)
    {
        const double source = 2e-6, volume = 180;
        var rate = changesPerHour / Hour;
        var running = Math.Min(sourceS, overS);
        double Rising(double t) => Reference.RungeKutta(c => (source / volume) - (rate * c), 0, t, 400);
        var end = Rising(running);
        double Clearing(double t) => Reference.RungeKutta(c => -rate * c, end, t, 800);
        var area = Reference.Integral(Rising, 0, running, 400) + Reference.Integral(Clearing, 0, overS - running, 1600);

        Printed.Matches(area / overS, RoomAir.MeanKgPerM3(source, volume, rate, sourceS, overS, Trace.None), 1e-6);
    }

    [Fact]
    [Verifies("air-fraction", Check.WorkedExample, "NIOSH Pocket Guide to Chemical Hazards: 1 ppm of styrene is 4.26 mg/m³")]
    public void Styrene_of_6_39_g_in_30_m3_of_still_air_is_50_ppm()
    {
        var concentration = RoomAir.ConcentrationKgPerM3(6.39e-3 / 600, 30, 0, 600, Trace.None);
        Printed.Agrees(50, RoomAir.AirFraction(concentration, 104.15, Trace.None) * 1e6, 3);
        Printed.Agrees(1, RoomAir.AirFraction(4.26e-6, 104.15, Trace.None) * 1e6, 3);
    }

    [Fact]
    [Verifies("air-fraction", Check.Analytic, "ideal gas: R·T/P at 25 °C and 101.325 kPa")]
    public void Molar_volume_is_that_of_the_ideal_gas()
    {
        const double litresPerMole = 8.31446261815324 * 298.15 / 101.325;
        Printed.Matches(litresPerMole, RoomAir.AirFraction(1, 1, Trace.None), 3e-5);
    }
}
