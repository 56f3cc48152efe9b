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
    public void Gel_seen_sooner_in_the_cone_brings_the_rest_forward_by_most_of_it()
    {
        var ends = GoodCure.Schedule(Two(20, GelPlace.Cone)).Result.Ends;
        Assert.Equal(GoodCure.After(20), ends[0].GelAt.Latest);
        Assert.All(ends, end => Assert.Equal(GoodCure.After(Math.Ceiling(114 * Math.Pow(20.0 / 24, .8))), end.ProofLoadFrom));
    }

    [Fact]
    public void Gel_seen_at_the_mouth_does_not_vouch_for_the_depth()
    {
        var end = GoodCure.First(Two(20, GelPlace.Mouth));
        Assert.Equal(GoodCure.After(20), end.GelAt.Expected);
        Assert.True(end.GelAt.Latest > GoodCure.After(20));
    }

    [Theory]
    [InlineData(10)]
    [InlineData(60)]
    public void Gel_seen_in_a_cup_changes_no_time(double minutes)
    {
        var (with, without) = (GoodCure.First(Two(minutes, GelPlace.Cup)), GoodCure.First(GoodCure.Input));
        Assert.Equal((without.GelAt, without.ServiceFrom), (with.GelAt, with.ServiceFrom));
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
