using CalcService.Engine.Compounds;
using CalcService.Engine.Cones.Heat;
using CalcService.Engine.Provenance;
using CalcService.Engine.Releases;
using CalcService.Engine.Rules;
using CalcService.Engine.Tests.Curing;
using CalcService.Engine.Tests.Provenance;

namespace CalcService.Engine.Tests.Releases;

/// <summary>
/// The law of release against an independent quadrature (SciPy) of the same integrals: gel times 66, 24 and 10 min at 5, 20 and 35 °C,
/// 90 min after gel at 20 °C, below that row 60 kJ/mol (upper end of the band of J. Appl. Polym. Sci. 102:1870). Minutes from mixing.
/// </summary>
public sealed class ReleaseTests
{
    private const double Zero = GoodCure.Zero, Forever = 14 * 86400, Printed = .0001;

    private static readonly FullStrength At10 = new(10 + Zero, 180 * 60), At20 = new(20 + Zero, 90 * 60), At30 = new(30 + Zero, 60 * 60);

    public static TheoryData<string, double[][], double[][], double, double[], double, double> Cases => new()
    {
        // name, air (min, °C), steel (min, °C), compound, rows used, gel, end of the sheet's time
        { "all 20", [[0, 20]], [[0, 20]], 20, [20], 24, 114 },
        { "all 30", [[0, 30]], [[0, 30]], 30, [20], 13.2604, 103.2604 },
        { "all 10", [[0, 10]], [[0, 10]], 10, [20], 46.5509, 261.2401 },
        { "12 to 3 in 12 h, begun half an hour before", [[-30, 12], [690, 3]], [[0, 8]], 18, [20], 53.4475, 311.0622 },
        { "cold steel", [[0, 20]], [[0, 8]], 20, [20], 53.4475, 310.8109 },
        { "two rows at 15", [[0, 15]], [[0, 15]], 15, [10, 20], 33.2333, 159.7494 },
        { "two rows at 5", [[0, 5]], [[0, 5]], 5, [10, 20], 66, 350.6014 },
        { "two rows at 30", [[0, 30]], [[0, 30]], 30, [10, 20], 13.2604, 103.2604 },
        { "three rows at 27", [[0, 27]], [[0, 27]], 27, [10, 20, 30], 15.7779, 83.3468 },
        { "evening", [[0, 20], [240, 5], [2000, 5]], [[0, 20]], 20, [20], 25.2360, 175.4723 },
        { "morning, steel read once", [[0, 10], [120, 25], [2000, 25]], [[0, 10]], 25, [20], 46.5509, 261.2401 },
        { "morning, steel read again", [[0, 10], [120, 25], [2000, 25]], [[0, 10], [120, 25]], 25, [20], 39.2401, 136.9126 },
        { "morning, compound read at 10 and held", [[0, 10], [120, 25], [2000, 25]], [[0, 10], [120, 25]], 10, [20], 46.5509, 141.8354 },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    [Verifies("sheet-release", Check.IndependentCode, "SciPy quadrature of the same integral")]
    [Verifies("after-gel-time", Check.IndependentCode, "SciPy, Arrhenius lines through the rows")]
    public void Sheet_alone_releases_when_an_independent_quadrature_says(string name, double[][] air, double[][] steel, double compound,
        double[] rows, double gel, double release)
    {
        var times = Of(Path(air, steel, compound), Sheet(rows));
        Assert.Equal(gel, times.GelS!.Value / 60, Printed);
        Assert.Equal(release, times.SheetS!.Value / 60, Printed);
        Assert.Equal((times.SheetS, Governor.Sheet, name), (times.LoadS, times.GovernedBy, name));
    }

    [Fact]
    public void Energy_that_the_sheet_states_for_after_the_gel_takes_the_place_of_the_band() =>
        Assert.Equal(221.113, Of(Flat(10), Sheet(20) with { AfterGelEnergyJPerMol = 45.72e3 }).SheetS!.Value / 60, .002);

    /// <summary>A lumped cone without heat: 20 °C air, evens out at 9.5445 °C, 89.963 min.</summary>
    [Fact]
    public void Coldest_place_of_a_cone_counts_where_it_is_followed()
    {
        double[] minutes = [.. Enumerable.Range(0, 4001).Select(i => i / 5.0)];
        var cone = new TemperatureHistory([.. minutes.Select(t => t * 60)],
            [.. minutes.Select(t => 20 + Zero - ((20 - 9.5445) * Math.Exp(-t / 89.963)))]);
        var times = Of(CurePath.Of(cone, 20 + Zero), Sheet(20));
        Assert.Equal(41.5566, times.GelS!.Value / 60, .001);
        Assert.Equal(163.1294, times.SheetS!.Value / 60, .001);
    }

    [Fact]
    public void Late_gel_in_the_cone_makes_all_that_follows_later()
    {
        var times = Of(Flat(20), Sheet(20), new SeenGel(30 * 60, null, GelPlace.Cone));
        Assert.Equal((30 * 60, 1.25, 142.5 * 60), (times.GelS!.Value, Math.Round(times.Slower, 9), Math.Round(times.SheetS!.Value, 6)));
    }

    [Fact]
    public void Early_gel_ends_the_rest_and_nothing_else()
    {
        var times = Of(Flat(20), Sheet(20), new SeenGel(18 * 60, null, GelPlace.Cone));
        Assert.Equal((18 * 60, 24 * 60, 114 * 60),
            (times.UndisturbedS!.Value, Math.Round(times.GelS!.Value, 6), Math.Round(times.LoadS!.Value, 6)));
    }

    [Fact]
    public void Look_at_which_it_was_still_soft_takes_the_middle() =>
        Assert.Equal((27.0 / 24, 30 * 60), Of(Flat(20), Sheet(20), new SeenGel(30 * 60, 24 * 60, GelPlace.Cone)) is var times
        ? (Math.Round(times.Slower, 9), times.GelS!.Value) : default);

    [Theory]
    [InlineData(GelPlace.Cup, 15, 1)]
    [InlineData(GelPlace.Vessel, 20, 1)]
    [InlineData(GelPlace.Cup, 36, 1.5)]
    [InlineData(GelPlace.Unknown, 18, 1)]
    [InlineData(GelPlace.Unknown, 36, 1.5)]
    public void Gel_of_the_mix_can_make_it_later_only(GelPlace place, double minutes, double slower)
    {
        var times = Of(Flat(20), Sheet(20), new SeenGel(minutes * 60, null, place));
        Assert.Equal(slower, times.Slower, 1e-9);
        Assert.Equal(24 * slower * 60, times.GelS!.Value, 1e-6);
        Assert.Equal((24 + 90) * slower * 60, times.LoadS!.Value, 1e-6);
    }

    [Fact]
    public void Hold_of_the_sheet_can_be_the_longest()
    {
        var times = Of(Flat(20), Sheet(20) with { MinimumHoldS = 120 * 60 });
        Assert.Equal((144 * 60, Governor.MinimumHold, 114 * 60),
            (Math.Round(times.LoadS!.Value, 6), times.GovernedBy, Math.Round(times.SheetS!.Value, 6)));
    }

    [Fact]
    public void Clock_stands_below_the_lowest_cure_temperature_and_says_nothing_beyond_the_series()
    {
        // 12 → 0 °C in 120 min, readings 12, lowest cure 2 °C.
        var times = Of(Path([[0, 12], [120, 0]], [[0, 12]], 12), Sheet(20));
        Assert.Equal(47.5893, times.GelS!.Value / 60, Printed);
        Assert.Equal((null, null), (times.SheetS, times.LoadS));
        // Six hours of cold in the middle are six hours more.
        TemperatureHistory With(double coldS) =>
            new([0, 1800, 1801, 1801 + coldS, 1802 + coldS, Forever], [20 + Zero, 20 + Zero, Zero, Zero, 20 + Zero, 20 + Zero]);
        double Released(double coldS) => Of(CurePath.Of(With(coldS), 20 + Zero), Sheet(20)).LoadS!.Value;
        Assert.Equal(Released(1) + (6 * 3600), Released(1 + (6 * 3600)), 1e-6);
    }

    [Fact]
    public void Lot_that_gels_late_makes_its_other_ends_later()
    {
        var lot = Release.Lot([1.25, 1.15], Editions.Known.Current.Curing, Trace.None);
        Assert.Equal(1.175027, lot, 1e-6);
        var times = Release.Of(Kinetics(Sheet(20)), Sheet(20), Flat(20), [], lot, null, Trace.None);
        Assert.Equal((28.2007, 133.9531), (Math.Round(times.GelS!.Value / 60, 4), Math.Round(times.SheetS!.Value / 60, 4)));
        Assert.Equal(1, Release.Lot([.8, .9], Editions.Known.Current.Curing, Trace.None));
    }

    [Fact]
    public void Load_on_the_printed_minute_is_released_and_a_minute_before_it_is_not()
    {
        var mixed = GoodCure.MixedAt;
        var cold = Of(Flat(10), Sheet(20));
        Assert.Equal(LoadVerdict.Released, cold.Judge(mixed, mixed.AddMinutes(262)));
        // Colder than the sheet's row the release is a guess: what its own time allows is left to people.
        Assert.Equal(LoadVerdict.Undetermined, cold.Judge(mixed, mixed.AddMinutes(261)));
        Assert.Equal(LoadVerdict.Undetermined, cold.Judge(mixed, mixed.AddMinutes(137)));
        Assert.Equal(LoadVerdict.Early, cold.Judge(mixed, mixed.AddMinutes(136)));
        var warm = Of(Flat(20), Sheet(20));
        Assert.Equal((LoadVerdict.Released, LoadVerdict.Early),
            (warm.Judge(mixed, mixed.AddMinutes(114)), warm.Judge(mixed, mixed.AddMinutes(113))));
    }

    [Fact]
    public void Rows_of_another_dose_are_taken_at_their_longest()
    {
        var sheet = Sheet(20) with { FullStrength = [At10 with { Doses = [2] }, At20 with { Doses = [1] }] };
        Assert.True(Kinetics(sheet).AfterGel.IsOfOtherDose);
        Assert.Equal((24 + 180) * 60, Of(Flat(20), sheet).LoadS!.Value, 1e-6);
        Assert.False(Kinetics(sheet with { FullStrength = [.. sheet.FullStrength, At20] }).AfterGel.IsOfOtherDose);
    }

    [Fact]
    public void Own_heat_counts_only_where_every_row_was_held_at_its_temperature()
    {
        var cone = new ModelledCone { FullS = 60 * 60, Peak = new(353, 30 * 60, default), LeastCured = ("middleAxis", 1) };
        ReleaseTimes With(bool isothermal) =>
            Release.Of(Kinetics(Held(isothermal)), Held(isothermal), Flat(20), [], 1, _ => cone, Trace.None);
        CompoundSheet Held(bool isothermal) => Sheet(20) with { FullStrength = [At20 with { IsIsothermal = isothermal }] };
        Assert.Equal((114 * 60, false), (Math.Round(With(false).LoadS!.Value, 6), With(false).IsByOwnHeat));
        Assert.Equal((60 * 60.0, true, Governor.LeastCuredPlace), (With(true).LoadS, With(true).IsByOwnHeat, With(true).GovernedBy));
    }

    private static ReleaseTimes Of(CurePath path, CompoundSheet sheet, params SeenGel[] seen)
    {
        var kinetics = Kinetics(sheet);
        var lot = Release.Lot(seen.Where(gel => gel.IsOfCone).Select(gel => Release.AgeSeen(kinetics, path, gel)),
            Editions.Known.Current.Curing, Trace.None);
        return Release.Of(kinetics, sheet, path, seen, lot, null, Trace.None);
    }

    private static CureKinetics Kinetics(CompoundSheet sheet) => CureKinetics.For(sheet, 0, new(40e3, 50e3, 60e3), new(.05, .90))!;

    private static CompoundSheet Sheet(params double[] rows) => GoodCure.Sheet with
    {
        FullStrength = [.. rows.Select(celsius => celsius switch { 10 => At10, 20 => At20, _ => At30 })],
    };

    private static CurePath Flat(double celsius) => Path([[0, celsius]], [[0, celsius]], celsius);

    private static CurePath Path(double[][] air, double[][] steel, double compound)
    {
        var history = air.Length == 1
            ? TemperatureHistory.Constant(air[0][1] + Zero, 0, Forever)
            : new TemperatureHistory([.. air.Select(point => point[0] * 60)], [.. air.Select(point => point[1] + Zero)]).From(0);
        return CurePath.Uniform(history,
            SteelHistory.Of(steel[0][1] + Zero, [.. steel.Skip(1).Select(point => (point[0] * 60, point[1] + Zero))], history.EndS),
            compound + Zero);
    }
}
