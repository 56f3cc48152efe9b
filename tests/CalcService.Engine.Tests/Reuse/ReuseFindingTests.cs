using CalcService.Engine.Findings;
using CalcService.Engine.Matching;
using CalcService.Engine.Pouring;
using CalcService.Engine.Reuse;
using CalcService.Engine.Tests.Findings;

namespace CalcService.Engine.Tests.Reuse;

public sealed class ReuseFindingTests
{
    public static TheoryData<int, string> Cases => CatalogueCases.Numbered(ReuseCases.All);

    public static TheoryData<int, string> Gaps => CatalogueCases.Numbered(ReuseGaps.All);

    [Theory]
    [MemberData(nameof(Cases))]
    public void Socket_with_one_thing_wrong_has_that_finding_and_no_other(int index, string what) =>
        CatalogueCases.Raises(ReuseCases.All[index], what, ReuseCases.All[index].Assess().Findings);

    [Theory]
    [MemberData(nameof(Cases))]
    public void Check_shows_what_the_finding_says(int index, string what)
    {
        var one = ReuseCases.All[index];
        if (one.Check.Length == 0)
        {
            // The finding is about what the rows went by.
            return;
        }

        var check = one.Assess().Result.Checks.Single(check => check.Id == one.Check);
        // No row forbids what the decision allows.
        var expected = one.Severity switch { Severity.Stop => CheckOutcome.Fail, Severity.Note => CheckOutcome.Pass,
            _ => CheckOutcome.Undetermined };
        Assert.True(expected == check.Outcome, $"{what}: {check}");
        Assert.Equal(one.Severity == Severity.Unknown ? [one.Pointer] : [], check.Missing);
        if (expected == CheckOutcome.Fail)
        {
            Assert.Equal(one.Code, check.Rule);
        }
    }

    /// <summary>A fault shows in its own check alone, a gap in every check that needs what is missing.</summary>
    [Theory]
    [MemberData(nameof(Cases))]
    public void No_other_check_is_touched(int index, string what)
    {
        var one = ReuseCases.All[index];
        var open = one.Assess().Result.Checks.Where(check => check.Outcome is CheckOutcome.Fail or CheckOutcome.Undetermined).ToArray();
        if (one.Severity == Severity.Unknown)
        {
            Assert.All(open, check => Assert.Equal([one.Pointer], check.Missing));
        }
        else if (one.Besides.Count == 0)
        {
            Assert.True(one.Severity == Severity.Note || one.Check.Length == 0 ? open.Length == 0 : open.Single().Id == one.Check, what);
        }
    }

    /// <summary>What was missing is never made good by what was not.</summary>
    [Theory]
    [MemberData(nameof(Gaps))]
    public void Socket_of_which_one_fact_is_missing_is_held_and_never_reused(int index, string what)
    {
        var outcome = ReuseGaps.All[index].Assess();
        Assert.True(Decision.Undetermined == outcome.Decision, what);
        // What isn't known of the rope holds the job, not the socket.
        Assert.True((outcome.Findings[0].Definition == ReuseFindings.RopeStrengthUnknown ? Disposition.Reuse
            : Disposition.Hold) == outcome.Result.Disposition, what);
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Finding_fills_every_word_of_its_message(int index, string what) =>
        CatalogueCases.FillTheirWords(what, ReuseCases.All[index].Assess().Findings);

    [Fact]
    public void Cases_raise_every_finding_in_each_of_its_severities() => CatalogueCases.AreAllRaised(ReuseFindings.All, ReuseCases.All);

    [Fact]
    public void Catalogue_holds_every_definition_of_the_room_once_in_the_order_of_codes() =>
        CatalogueCases.AreCatalogued(ReuseFindings.All, typeof(ReuseFindings));

    [Fact]
    public void Code_that_two_rooms_raise_is_one_definition() =>
        CatalogueCases.AreOneDefinition(ReuseFindings.All, PouringFindings.All.Union(MatchingFindings.All));

    [Fact]
    public void Definition_says_what_it_means_what_to_do_and_where_it_comes_from() => CatalogueCases.SayWhatTheyMean(ReuseFindings.All);

    [Fact]
    public void Rule_from_memory_or_practice_alone_never_stops() =>
        CatalogueCases.NeverStopOnMemory(ReuseFindings.All, ReuseCases.All.SelectMany(one => one.Assess().Findings));
}
