using CalcService.Benchmarks.Measuring;
using CalcService.Engine;
using CalcService.Engine.Compounds;
using CalcService.Engine.Curing;
using CalcService.Engine.Releases;
using CalcService.Engine.Ropes;
using CalcService.Engine.Rules;

namespace CalcService.Benchmarks.Rows;

/// <summary>Gel and cure that follow the air, through a week of hourly forecast. The compound is invented.</summary>
internal static class CureRows
{
    private const double BarNs = 100e3;
    private const double Zero = 273.15;
    private static readonly DateTimeOffset Mixed = new(2026, 3, 12, 8, 30, 0, TimeSpan.FromHours(1));

    private static readonly CompoundSheet Sheet = new()
    {
        Name = "invented for measuring",
        Kits = [new("small", 300e-6, null)],
        GelTimes = [new(5 + Zero, 0, 66 * 60), new(20 + Zero, 0, 24 * 60), new(35 + Zero, 0, 10 * 60)],
        Doses = [new(2 + Zero, 34 + Zero, 0)],
        Pouring = new(2 + Zero, 34 + Zero),
        FullStrength = [new(20 + Zero, 7200)],
        LowestCureK = 2 + Zero,
    };

    public static IReadOnlyList<Row> Measure()
    {
        var kinetics = CureKinetics.For(Sheet, 0, new(40e3, 50e3, 60e3), new(.05, .9))!;
        var week = Week();
        var found = Interleaved.Measure(warmUp: 50, rounds: 15, times: 200,
            [Contender.OnThread("age", () => GelAge.Along(kinetics.Latest, week, kinetics.Ceiling)),
            Contender.OnThread("schedule", () => Schedule())]);
        return
        [
            Row("gel and cure along a week of hourly forecast, the compound as warm as the air", found[0].Median, BarNs),
            Row("the whole schedule of one end by it, calibration, band, curve and findings included", found[1].Median, null),
        ];
    }

    public static object Schedule() => CureSchedule.Calculate(
        new()
        {
            Compound = Sheet,
            Doses = 0,
            MixedAt = Mixed,
            ThermalModel = ThermalModel.Uniform,
            Conditions = new() { AirSeries = [.. Enumerable.Range(0, 169).Select(hour => new AirPoint(Mixed.AddHours(hour), Air(hour)))],
            SteelK = 9 + Zero, CompoundK = 18 + Zero },
            Ends = [new("A", 1, new() { DiameterM = .020, Construction = "6x36", Core = RopeCore.Iwrc },
            new() { SmallEndDiameterM = .023, LargeEndDiameterM = .045, LengthM = .100 })],
        },
        Editions.Known.Current, new Budget(Budget.DefaultSteps), CancellationToken.None);

    private static TemperatureHistory Week() =>
        new([.. Enumerable.Range(0, 169).Select(hour => hour * 3600.0)], [.. Enumerable.Range(0, 169).Select(Air)]);

    /// <summary>Cool days, colder nights.</summary>
    private static double Air(int hour) => 10 + Zero + (6 * Math.Cos((hour - 6) * Math.PI / 12));

    private static Row Row(string work, double ns, double? bar) => new(work, $"{ns / 1000:0.0} µs", bar is null ? "" : "100 µs", ns / bar);
}
