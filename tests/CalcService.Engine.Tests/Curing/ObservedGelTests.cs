using CalcService.Engine.Compounds;
using CalcService.Engine.Curing;

namespace CalcService.Engine.Tests.Curing;

public sealed class ObservedGelTests
{
    [Fact]
    public void Gel_seen_later_in_the_cone_moves_its_end_by_all_and_the_others_by_most_of_it()
    {
        var input = Two(30, GelPlace.Cone);
        var schedule = GoodCure.Schedule(input).Result;

        // 30 min instead of 24: its own times are 1.25 as long, those of the lot 1.25^0.8.
        Assert.Equal(new(GoodCure.After(30), GoodCure.After(30), GoodCure.After(30)), schedule.Ends[0].GelAt);
        Assert.Equal("observedGel", schedule.Ends[0].GovernedBy.GelAt);
        Assert.Equal(GoodCure.After(Math.Ceiling(114 * 1.25)), schedule.Ends[0].ProofLoadFrom);
        Assert.Equal(GoodCure.After(Math.Ceiling(114 * Math.Pow(1.25, .8))), schedule.Ends[1].ProofLoadFrom);
    }

    [Fact]
    public void Gel_seen_sooner_in_the_cone_ends_its_rest_and_moves_no_load()
    {
        var ends = GoodCure.Schedule(Two(20, GelPlace.Cone)).Result.Ends;
        Assert.Equal((GoodCure.After(20), GoodCure.After(20)), (ends[0].GelAt.Latest!.Value, ends[0].UndisturbedUntil!.Value));
        Assert.Equal(GoodCure.After(24), ends[1].UndisturbedUntil);
        Assert.All(ends, end => Assert.Equal(GoodCure.After(114), end.ProofLoadFrom));
    }

    [Fact]
    public void Gel_seen_at_the_mouth_does_not_vouch_for_the_depth()
    {
        var end = GoodCure.First(Two(20, GelPlace.Mouth));
        Assert.Equal(GoodCure.After(20), end.GelAt.Expected);
        Assert.True(end.GelAt.Latest > GoodCure.After(20));
    }

    [Theory]
    [InlineData(10, 114)]
    [InlineData(24, 114)]
    [InlineData(60, 114 * 60.0 / 24)]
    public void Gel_seen_in_a_cup_can_make_the_load_later_only(double minutes, double load)
    {
        var (with, without) = (GoodCure.First(Two(minutes, GelPlace.Cup)), GoodCure.First(GoodCure.Input));
        Assert.Equal((without.GelAt.Earliest, GoodCure.After(load)), (with.GelAt.Earliest, with.ServiceFrom!.Value));
    }

    [Fact]
    public void Gel_seen_nobody_knows_where_can_only_make_it_later()
    {
        var sheet = GoodCure.First(GoodCure.Input).ServiceFrom;
        Assert.Equal(sheet, GoodCure.First(Two(18, GelPlace.Unknown)).ServiceFrom);
        Assert.True(GoodCure.First(Two(30, GelPlace.Unknown)).ServiceFrom > sheet);
    }

    private static CureScheduleInput Two(double minutes, GelPlace place) =>
        CureFindingCases.Seen(minutes, place)(GoodCure.Input with { Ends = [GoodCure.End("A", 1), GoodCure.End("B", 1)] });
}
