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
    [Verifies("room-concentration", Check.WorkedExample,
        "well-mixed room with one air change an hour, share of the final concentration, by hand: 1 − e^{−t}")]
    public void Room_with_one_change_an_hour_fills_as_the_table_says(double minutes, double share)
    {
        // G = n·V·C∞ with C∞ = 1.
        var concentration = new RoomAir(50 / Hour, 0, 50, 1 / Hour).ConcentrationKgPerM3(minutes * 60, Trace.None);
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
        double source = 2e-6, volume = 180, seconds = 1440;
        var rate = changes / seconds;
        var exact = Reference.RungeKutta(c => (source / volume) - (rate * c), 0, seconds, 20_000);
        Printed.Matches(exact, new RoomAir(source, 0, volume, rate).ConcentrationKgPerM3(seconds, Trace.None), 1e-9);
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
        double source = 2e-6, volume = 180;
        var rate = changesPerHour / Hour;
        var running = Math.Min(sourceS, overS);
        double Rising(double t) => Reference.RungeKutta(c => (source / volume) - (rate * c), 0, t, 400);
        var end = Rising(running);
        double Clearing(double t) => Reference.RungeKutta(c => -rate * c, end, t, 800);
        var area = Reference.Integral(Rising, 0, running, 400) + Reference.Integral(Clearing, 0, overS - running, 1600);

        Printed.Matches(area / overS, new RoomAir(source, 0, volume, rate).MeanKgPerM3(sourceS, overS, Trace.None), 1e-6);
    }

    [Fact]
    [Verifies("air-fraction", Check.WorkedExample, "NIOSH Pocket Guide to Chemical Hazards: 1 ppm of styrene is 4.26 mg/m³")]
    public void Styrene_of_6_39_g_in_30_m3_of_still_air_is_50_ppm()
    {
        var concentration = new RoomAir(6.39e-3 / 600, 0, 30, 0).ConcentrationKgPerM3(600, Trace.None);
        Printed.Agrees(50, RoomAir.AirFraction(concentration, 104.15, Trace.None) * 1e6, 3);
        Printed.Agrees(1, RoomAir.AirFraction(4.26e-6, 104.15, Trace.None) * 1e6, 3);
    }

    [Fact]
    [Verifies("air-fraction", Check.Analytic, "ideal gas: R·T/P at 25 °C and 101.325 kPa")]
    public void Molar_volume_is_that_of_the_ideal_gas()
    {
        double litresPerMole = 8.31446261815324 * 298.15 / 101.325;
        Printed.Matches(litresPerMole, RoomAir.AirFraction(1, 1, Trace.None), 3e-5);
    }

    [Fact]
    [Verifies("room-peak-time", Check.WorkedExample,
        "G0 50 mg/min, k 0.05/min, V 60 m³, Q 6 m³/min, by hand: ln 2/0.05 min, peak 25/6 mg/m³")]
    [Verifies("room-concentration", Check.WorkedExample,
        "G0 50 mg/min, k 0.05/min, V 60 m³, Q 6 m³/min, by hand: ln 2/0.05 min, peak 25/6 mg/m³")]
    public void Fading_source_peaks_where_the_hand_calculation_says()
    {
        var room = new RoomAir(50e-6 / 60, .05 / 60, 60, 6.0 / 60 / 60);
        var peak = room.PeakTimeS(28800, Trace.None);
        Printed.Agrees(13.863, peak / 60, 5);
        Printed.Agrees(4.1667, room.ConcentrationKgPerM3(peak, Trace.None) * 1e6, 5);
        Assert.Equal(600, room.PeakTimeS(600, Trace.None));
    }

    [Theory]
    [InlineData(.05, .1)]
    [InlineData(.1, .05)]
    [InlineData(.1, .1)] // one rate only: the closed form is 0/0
    [InlineData(.1, .1000001)]
    [InlineData(.1, 0)]
    [InlineData(0, .1)]
    [Verifies("room-concentration", Check.IndependentCode, "fourth-order Runge–Kutta on the room and its source together")]
    [Verifies("room-mean", Check.IndependentCode, "Simpson rule over the concentration integrated by Runge–Kutta")]
    [Verifies("room-peak-time", Check.Analytic, "at the peak what comes in is what goes out")]
    public void Fading_source_fills_the_room_as_its_balance_integrates(double decayPerMinute, double changesPerMinute)
    {
        double source = 2e-6, volume = 60, ends = 3600;
        var (k, n) = (decayPerMinute / 60, changesPerMinute / 60);
        var room = new RoomAir(source, k, volume, n);
        double At(double t) => Reference.RungeKutta((c, s) => (source / volume * Math.Exp(-k * s)) - (n * c), 0, 0, t, 2000);

        Printed.Matches(At(ends), room.ConcentrationKgPerM3(ends, Trace.None), 1e-8);
        Printed.Matches(Reference.Integral(At, 0, ends, 400) / ends, room.MeanKgPerM3(ends, ends, Trace.None), 1e-6);
        if (k > 0 && n > 0)
        {
            var peak = room.PeakTimeS(1e9, Trace.None);
            Printed.Matches(source / volume * Math.Exp(-k * peak), n * room.ConcentrationKgPerM3(peak, Trace.None), 1e-6);
        }
    }
}
