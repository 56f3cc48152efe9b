using CalcService.Engine.Findings;
using CalcService.Engine.Matching;
using CalcService.Engine.Pouring;
using CalcService.Engine.Tests.Findings;
using CalcService.Engine.Tests.Sockets;

namespace CalcService.Engine.Tests.Matching;

public sealed class MatchingFindingTests
{
    public static TheoryData<int, string> Cases => CatalogueCases.Numbered(MatchCases.All);

    [Fact]
    public void Match_with_nothing_wrong_proceeds_without_a_finding()
    {
        var match = GoodMatch.Match(GoodMatch.Input);
        Assert.Empty(match.Findings);
        Assert.Equal(Decision.Proceed, match.Decision);
        Assert.NotEmpty(match.SafetyNotes);
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Match_with_one_thing_wrong_has_that_finding(int index, string what) =>
        CatalogueCases.Raises(MatchCases.All[index], what, MatchCases.All[index].Match().Findings);

    [Theory]
    [MemberData(nameof(Cases))]
    public void Decision_is_the_worst_severity(int index, string what)
    {
        var outcome = MatchCases.All[index].Match();
        CatalogueCases.DecidesByTheWorst(outcome.Decision, what, outcome.Findings);
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Finding_fills_every_word_of_its_message(int index, string what) =>
        CatalogueCases.FillTheirWords(what, MatchCases.All[index].Match().Findings);

    [Fact]
    public void Cases_raise_every_finding_in_each_of_its_severities() =>
        CatalogueCases.AreAllRaised(MatchingFindings.All, [.. MatchCases.All, .. FitCases.All]);

    [Fact]
    public void Catalogue_holds_every_definition_once_in_the_order_of_codes() =>
        CatalogueCases.AreCatalogued(MatchingFindings.All, typeof(MatchingFindings));

    [Fact]
    public void Code_that_two_rooms_raise_is_one_definition() => CatalogueCases.AreOneDefinition(MatchingFindings.All, PouringFindings.All);

    [Fact]
    public void Definition_says_what_it_means_what_to_do_and_where_it_comes_from() => CatalogueCases.SayWhatTheyMean(MatchingFindings.All);

    [Fact]
    public void Rule_from_memory_or_practice_alone_never_stops() =>
        CatalogueCases.NeverStopOnMemory(MatchingFindings.All, MatchCases.All.SelectMany(one => one.Match().Findings));
}
