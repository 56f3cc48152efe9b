using CalcService.Engine.Curing;
using CalcService.Engine.Findings;
using CalcService.Engine.Releases;

namespace CalcService.Engine.Tests.Curing;

public sealed class ShopTests
{
    private static readonly DateTimeOffset Start = GoodCure.MixedAt.AddMinutes(-60);

    private static readonly ShopInput Shop = new()
    {
        Crew = 2, Stands = 4, Mixers = 1, TestBeds = 1,
        Shifts = [new(Start, Start.AddHours(8)), new(Start.AddHours(8), Start.AddHours(16)), new(Start.AddHours(16), Start.AddHours(24))],
        TaskTimes = new(40 * 60, 15 * 60, 20 * 60, 10 * 60),
    };

    /// <summary>A forecast that ends with an hour, in a shift that goes on: a pour at its very end has nothing to be followed by.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(6)]
    public void Forecast_that_ends_a_whole_number_of_hours_after_mixing_is_followed_to_its_end_and_no_further(int hours)
    {
        var input = GoodCure.Through((-1, 18), (hours, 17));
        var schedule = Schedule(GoodCure.Coupled with { Conditions = input.Conditions, Shop = Shop, Ends = [GoodCure.End("A", 2)] });
        Assert.True(schedule.Decision == Decision.Undetermined
            || schedule.Result.Shop!.Tasks.Where(task => task.Task == "proof").All(task => task.From <= GoodCure.MixedAt.AddHours(hours)));
    }

    [Theory]
    [InlineData(ThermalModel.Uniform)]
    [InlineData(ThermalModel.Coupled)]
    public void Shift_beyond_what_a_constant_temperature_is_followed_is_no_fault(ThermalModel model)
    {
        var late = Start.AddDays(20);
        var schedule =
            Schedule((model == ThermalModel.Coupled ? GoodCure.Coupled : GoodCure.Input) with { Ends = [GoodCure.End("A", 1)],
            Shop = Shop with { Shifts = [.. Shop.Shifts, new(late, late.AddHours(8))] } });
        Assert.Equal(Decision.Proceed, schedule.Decision);
    }

    [Fact]
    public void One_end_in_an_empty_shop_takes_the_sum_of_its_tasks()
    {
        var shop = Schedule(GoodCure.Input with { Ends = [GoodCure.End("A", 1)], Shop = Shop }).Result.Shop!;

        // By hand: 40 + 15 min, ready 55 min after the shift began, but mixed 60 min after it at the earliest; gel 24 min and 90 more, 20
        // min proof, 10 min record.
        Assert.Equal(GoodCure.After(24 + 90 + 20 + 10), shop.FinishedAt);
        Assert.True(shop.IsOptimal);
        Assert.Equal(0, shop.Gap);
        var pour = shop.Tasks.Single(task => task.Task == "pour");
        Assert.Equal((GoodCure.MixedAt, GoodCure.After(5)), (pour.From, pour.To));
        Assert.Matches("^crew [12], mixer 1, stand 1$", pour.On);
        Assert.Equal(GoodCure.After(24), shop.Tasks.Single(task => task.Task == "undisturbed").To);
        Assert.Equal(("cure", ""), shop.Tasks.Where(task => task.On.Length == 0).Select(task => (task.Task, task.On)).Single());
    }

    [Fact]
    public void Shop_of_sixty_ends_and_a_cold_night_breaks_no_rule()
    {
        var input = GoodCure.Through((-1, 18), (6, 20), (16, 11), (48, 11)) with { Ends = [GoodCure.End("A", 40), GoodCure.End("B", 20)],
            Shop = Shop };
        input = input with { Shop = Shop with { Crew = 6, Mixers = 2, Stands = 12, TestBeds = 2 } };
        var shop = Schedule(input).Result.Shop!;

        Assert.Equal(60 * 7, shop.Tasks.Count);
        Assert.Equal(shop.FinishedAt, shop.Tasks.Max(task => task.To));
        Assert.InRange(shop.Gap, 0, 1);
        foreach (var (resource, most) in new[] { ("crew", 6), ("mixer", 2), ("stand", 12), ("test bed", 2) })
        {
            var uses = shop.Tasks.SelectMany(task =>
                task.On.Split(", ").Where(on => on.StartsWith(resource, StringComparison.Ordinal)).Select(on => (on, task))).ToArray();
            Assert.All(uses,
                use => Assert.InRange(int.Parse(use.on[(resource.Length + 1)..], System.Globalization.CultureInfo.InvariantCulture), 1,
                most));
            // Nobody and nothing is in two tasks of different ends at once.
            Assert.All(uses.GroupBy(use => use.on), own => Assert.DoesNotContain(own, one => own.Any(other =>
                (one.task.End, one.task.Unit) != (other.task.End, other.task.Unit) && one.task.From < other.task.To
                && other.task.From < one.task.To)));
        }

        foreach (var unit in shop.Tasks.GroupBy(task => (task.End, task.Unit)))
        {
            ShopTask Of(string task) => unit.Single(one => one.Task == task);
            Assert.True(Of("prepare").To <= Of("position").From && Of("position").To <= Of("pour").From);
            Assert.True(Of("cure").To <= Of("proof").From && Of("proof").To <= Of("record").From);
            Assert.True(Of("pour").From >= GoodCure.MixedAt);
            // Each pour by itself, asked for as a cure of its own.
            var own = GoodCure.First(input with { MixedAt = Of("pour").From, Shop = null });
            Assert.Equal(own.UndisturbedUntil, Of("undisturbed").To);
            Assert.Equal(own.ProofLoadFrom, Of("cure").To);
            Assert.All(unit.Where(task => task.On.Contains("crew", StringComparison.Ordinal)), task =>
                Assert.Contains(Shop.Shifts, shift => shift.From <= task.From && task.To <= shift.To));
        }
    }

    [Fact]
    public void Same_shop_gives_the_same_schedule_again()
    {
        var input = GoodCure.Input with { Ends = [GoodCure.End("A", 6)], Shop = Shop };
        Assert.Equal(Schedule(input).Result.Shop!.Tasks, Schedule(input).Result.Shop!.Tasks);
    }

    [Fact]
    public void Pours_stay_where_the_sheet_has_the_same_dose()
    {
        // From the second hour on it is too cold for the dose: everything is poured before.
        var input = GoodCure.Through((-1, 9), (1.5, 9), (1.6, 6), (12, 6)) with { Ends = [GoodCure.End("A", 2)], Shop = Shop };
        input = input with { Conditions = input.Conditions with { SteelK = 9 + GoodCure.Zero, CompoundK = 12 + GoodCure.Zero } };
        Assert.All(Schedule(input).Result.Shop!.Tasks.Where(task => task.Task == "pour"),
            pour => Assert.True(pour.From <= GoodCure.After(96)));
    }

    [Fact]
    public void Cone_by_its_own_heat_is_released_no_sooner_than_by_itself()
    {
        var input = GoodCure.Coupled with { Ends = [GoodCure.End("A", 2)], Shop = Shop };
        var shop = Schedule(input).Result.Shop!;
        var own = GoodCure.First(input with { Shop = null });
        Assert.All(shop.Tasks.Where(task => task.Task == "cure").Zip(shop.Tasks.Where(task => task.Task == "pour")), pair =>
            Assert.True(pair.First.To - pair.Second.From >= own.ProofLoadFrom - GoodCure.MixedAt - TimeSpan.FromMinutes(1)));
    }

    private static Outcome<CureScheduleResult> Schedule(CureScheduleInput input) => GoodCure.Schedule(input);
}
