using CalcService.Engine.Compounds;
using CalcService.Engine.Curing;
using CalcService.Engine.Findings;
using CalcService.Engine.Releases;
using CsCheck;
using static CalcService.Engine.Tests.Chains.Chain;

namespace CalcService.Engine.Tests.Chains;

/// <summary>What must hold between schedules of any job. The names tell the relations by their numbers in docs/relations.md.</summary>
public sealed class ReleaseChainTests
{
    private const double Zero = VirtualJob.Zero;

    [Theory]
    [InlineData(ThermalModel.Uniform)]
    [InlineData(ThermalModel.Coupled)]
    public void Relation_1_load_waits_at_least_the_warmest_rows_time_after_the_latest_gel(ThermalModel model) =>
        VirtualJob.Watched.Sample(job =>
    {
        var end = End(job, model);
        if (end is { ProofLoadFrom: { } load, GelAt.Latest: { } gel })
        {
            Assert.True((load - gel).TotalSeconds >= job.Sheet.FullStrength[^1].AfterGelS - 1, $"{gel:t} {load:t}");
            Assert.True(load >= end.UndisturbedUntil);
        }
    }, iter: CountOf(model));

    [Fact]
    public void Relation_3_warmer_is_never_released_later() =>
        Gen.Select(VirtualJob.Any, Gen.Double[0, 4], Gen.Double[0, 4], Gen.Double[0, 4]).Sample((job, air, steel, compound) =>
    {
        // Warmer than its bands of doses the sheet has no dose, and nothing is released.
        static double Within(double celsius) => Math.Min(celsius, VirtualJob.Warmest);
        var warmer = job with { Air = [.. job.Air.Select(celsius => Within(celsius + air))], Steel = Within(job.Steel + steel),
            Compound = job.Compound + compound };
        Later(End(job).ProofLoadFrom, End(warmer).ProofLoadFrom);
    }, iter: Count);

    [Theory]
    [InlineData(ThermalModel.Uniform)]
    [InlineData(ThermalModel.Coupled)]
    public void Relation_4_gel_that_came_early_moves_no_load_and_a_late_one_only_makes_it_later(ThermalModel model) =>
        VirtualJob.Watched.Sample(job =>
    {
        var (without, with) = (End(job with { Seen = null }, model).ProofLoadFrom, End(job, model).ProofLoadFrom);
        Later(with, without);
        if (job.Seen < .9 && without is not null && job.Steel >= job.Compound && job.Air is [var air] && air == job.Steel)
        {
            Assert.Equal(without, with);
        }
    }, iter: CountOf(model));

    [Fact]
    public void Relation_4_later_gel_is_never_released_earlier() => Gen.Select(VirtualJob.Watched, Gen.Double[1, 1.5]).Sample((job, more) =>
        Later(End(job with { Seen = job.Seen * more }).ProofLoadFrom, End(job).ProofLoadFrom), iter: Count);

    [Theory]
    [InlineData(ThermalModel.Uniform)]
    [InlineData(ThermalModel.Coupled)]
    public void Relation_5_series_cut_after_the_release_changes_nothing_and_before_it_tells_none(ThermalModel model) =>
        VirtualJob.Any.Where(job => job.Air.Length > 1).Sample(job =>
    {
        var input = Cure(job, model);
        var whole = Schedule(input);
        if (whole.Result.Ends[0].ProofLoadFrom is not { } load)
        {
            return;
        }

        var after = Schedule(Cut(input, load.AddMinutes(1)));
        // The solver steps from point to point, and a cut makes one.
        Assert.InRange((after.Result.Ends[0].ProofLoadFrom!.Value - load).Duration().TotalMinutes, 0, model == ThermalModel.Uniform ? 0
            : 1);
        Assert.Equal(whole.Decision, after.Decision);
        Assert.Null(Schedule(Cut(input, load.AddMinutes(-2))).Result.Ends[0].ProofLoadFrom);
    }, iter: CountOf(model));

    [Theory]
    [InlineData(ThermalModel.Uniform)]
    [InlineData(ThermalModel.Coupled)]
    public void Relation_6_constant_air_is_a_flat_series(ThermalModel model) =>
        VirtualJob.Any.Where(job => job.Air.Length == 1).Sample(job =>
    {
        var (constant, flat) = (Minutes(End(job, model).ProofLoadFrom),
            Minutes(End(job with { Air = [.. Enumerable.Repeat(job.Air[0], 5)] }, model).ProofLoadFrom));
        // The solver steps from point to point; a series ends, a constant doesn't.
        Near(constant, flat, model == ThermalModel.Uniform ? 0 : 1);
        Assert.True(flat is null || constant is not null);
    }, iter: CountOf(model));

    [Fact]
    public void Relation_7_more_heat_of_reaction_leaves_the_sheets_clock_alone() =>
        Gen.Select(VirtualJob.Any, Gen.Double[1, 2]).Sample((job, more) =>
    {
        var hotter =
            job with { Sheet =
            job.Sheet with { Reaction = job.Sheet.Reaction! with { HeatJPerKg = job.Sheet.Reaction.HeatJPerKg * more } } };
        var (cool, hot) = (End(job, ThermalModel.Coupled), End(hotter, ThermalModel.Coupled));
        Assert.Equal(cool.Release?.SheetFrom, hot.Release?.SheetFrom);
        // A cone is followed until it is cured, the hotter one not as long: what warmer air adds to the other later is no heat of its own.
        CuredEnd Cooling(VirtualJob of) => End(of with { Air = [of.Air.Append(of.Steel).Append(of.Compound).Min()] }, ThermalModel.Coupled);
        var (less, most) = (Cooling(job).Peak, Cooling(hotter).Peak);
        Assert.True(!(most?.Kelvins < less?.Kelvins - .05), $"{less} {most}");
    }, iter: CoupledCount);

    [Fact]
    public void Relation_8_uniform_is_never_released_before_coupled() => VirtualJob.Any.Sample(job =>
    {
        var (uniform, coupled) = (End(job).ProofLoadFrom, End(job, ThermalModel.Coupled).ProofLoadFrom);
        // The solver knows temperatures to a hundredth of a kelvin.
        Later(uniform?.AddMinutes(1), coupled);
    }, iter: CoupledCount);

    [Fact]
    public void Relation_8_without_heat_and_all_equal_both_models_are_one() => VirtualJob.Any.Sample(job =>
    {
        var flat = job with
        {
            Air = [job.Steel], Compound = job.Steel,
            Sheet = job.Sheet with { Reaction = job.Sheet.Reaction! with { HeatJPerKg = 1 } },
        };
        var (uniform, coupled) = (Minutes(End(flat).ProofLoadFrom), Minutes(End(flat, ThermalModel.Coupled).ProofLoadFrom));
        Assert.True(uniform is null == coupled is null && (uniform is null || Math.Abs(uniform.Value - coupled!.Value) <= 1),
            $"{uniform} {coupled}");
    }, iter: CoupledCount);

    [Fact]
    public void Relation_9_colder_and_slower_row_never_releases_earlier() =>
        Gen.Select(VirtualJob.Any, Gen.Double[1.5, 3]).Where((job, _) => job.Sheet.FullStrength.Count == 1).Sample((job, slower) =>
    {
        // Slower than the line through the one row by 60 kJ/mol would be.
        var row = job.Sheet.FullStrength[0];
        var more = job with { Sheet = job.Sheet with { FullStrength = [new(5 + Zero, row.AfterGelS * slower * 4), row] } };
        Later(End(more).ProofLoadFrom, End(job).ProofLoadFrom);
    }, iter: Count);

    [Fact]
    public void Relation_34_all_times_of_the_sheet_longer_makes_all_times_longer() =>
        Gen.Select(VirtualJob.Any, Gen.Double[1, 3]).Where((job, _) => job.Air.Length == 1).Sample((job, k) =>
    {
        var slower = job with
        {
            Sheet = job.Sheet with
            {
                GelTimes = [.. job.Sheet.GelTimes.Select(row => row with { TimeS = row.TimeS * k })],
                FullStrength = [.. job.Sheet.FullStrength.Select(row => row with { AfterGelS = row.AfterGelS * k })],
                MinimumHoldS = job.Sheet.MinimumHoldS * k,
            },
        };
        var (one, other) = (End(job), End(slower));
        // Steel and compound are read once; the coldest path of constant air is constant, so everything scales. Printed minutes round up.
        Near(Minutes(one.ProofLoadFrom) * k, Minutes(other.ProofLoadFrom), k + 1);
        Near(Minutes(one.UndisturbedUntil) * k, Minutes(other.UndisturbedUntil), k + 1);
    }, iter: Count);

    [Fact]
    public void Relation_35_all_dates_later_shift_all_times_and_nothing_else() =>
        Gen.Select(VirtualJob.Watched, Gen.Int[1, 100_000]).Sample((job, minutes) =>
    {
        var input = Cure(job);
        var shift = TimeSpan.FromMinutes(minutes);
        var later = input with
        {
            MixedAt = input.MixedAt + shift,
            Conditions =
            input.Conditions with { AirSeries = [.. input.Conditions.AirSeries.Select(point => point with { At = point.At + shift })] },
            Observations = [.. input.Observations.Select(seen => seen with { GelAt = seen.GelAt + shift })],
        };
        var (one, other) = (Schedule(input), Schedule(later));
        Assert.Equal(one.Decision, other.Decision);
        Assert.Equal(one.Result.Ends[0].ProofLoadFrom + shift, other.Result.Ends[0].ProofLoadFrom);
        Assert.Equal(one.Findings.Select(finding => finding.Definition.Code), other.Findings.Select(finding => finding.Definition.Code));
    }, iter: Count);

    [Fact]
    public void Relation_27_reading_that_is_missing_is_never_better() => Gen.Select(VirtualJob.Any, Gen.Int[0, 2]).Sample((job, missing) =>
    {
        var input = Cure(job);
        var without = input with
        {
            Conditions = missing switch
            {
                0 => input.Conditions with { SteelK = null },
                1 => input.Conditions with { CompoundK = null },
                _ => input.Conditions with { ConstantAirK = null, AirSeries = [] },
            },
        };
        Assert.True(Schedule(without).Decision >= (Decision)Math.Min((int)Decision.Undetermined, (int)Schedule(input).Decision));
        Assert.Null(End(without).ProofLoadFrom);
    }, iter: Count);

    private static int CountOf(ThermalModel model) => model == ThermalModel.Uniform ? Count : CoupledCount;

    private static CureScheduleInput Cut(CureScheduleInput input, DateTimeOffset at)
    {
        var history = new TemperatureHistory([.. input.Conditions.AirSeries.Select(point => (point.At - input.MixedAt).TotalSeconds)],
            [.. input.Conditions.AirSeries.Select(point => point.Kelvins)]);
        return input with
        {
            Conditions = input.Conditions with
            {
                AirSeries = [.. input.Conditions.AirSeries.Where(point => point.At < at),
                    new(at, history.At((at - input.MixedAt).TotalSeconds))],
            },
        };
    }

    /// <summary>One is no earlier than the other; what is never released is later than anything.</summary>
    private static void Later(DateTimeOffset? late, DateTimeOffset? early) =>
        Assert.True(late is null || (early is not null && late >= early), $"{early:u} {late:u}");

    private static void Near(double? expected, double? actual, double within) =>
        Assert.True(expected is null || actual is null || Math.Abs(expected.Value - actual.Value) <= within, $"{expected} {actual}");
}
