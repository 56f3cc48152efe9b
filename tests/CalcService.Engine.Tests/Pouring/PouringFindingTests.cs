using CalcService.Engine.Findings;
using CalcService.Engine.Pouring;
using CalcService.Engine.Tests.Findings;

namespace CalcService.Engine.Tests.Pouring;

public sealed class PouringFindingTests
{
    public static TheoryData<int, string> Cases => CatalogueCases.Numbered(FindingCases.All);

    [Fact]
    public void Pour_with_nothing_wrong_proceeds_without_a_finding()
    {
        var plan = GoodPour.Plan(GoodPour.Input);
        Assert.Empty(plan.Findings);
        Assert.All(plan.Assumptions,
            assumption =>
            Assert.Matches("^(/ends/0/rope/.*|/conditions/(airSpeed|readAt|validFor)|/compound/sheet/vapour|/quote/.*)$",
            assumption.Pointer));
        Assert.Equal(Decision.Proceed, plan.Decision);
        Assert.NotEmpty(plan.SafetyNotes);
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Pour_with_one_thing_wrong_has_that_finding(int index, string what) =>
        CatalogueCases.Raises(FindingCases.All[index], what, FindingCases.All[index].Plan().Findings);

    [Theory]
    [MemberData(nameof(Cases))]
    public void Decision_is_the_worst_severity(int index, string what)
    {
        var outcome = FindingCases.All[index].Plan();
        CatalogueCases.DecidesByTheWorst(outcome.Decision, what, outcome.Findings);
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Finding_fills_every_word_of_its_message(int index, string what) =>
        CatalogueCases.FillTheirWords(what, FindingCases.All[index].Plan().Findings);

    [Fact]
    public void Cases_raise_every_finding_in_each_of_its_severities() => CatalogueCases.AreAllRaised(PouringFindings.All, FindingCases.All);

    [Fact]
    public void Catalogue_holds_every_definition_once_in_the_order_of_codes() => 
        CatalogueCases.AreCatalogued(PouringFindings.All, typeof(PouringFindings));

    [Fact]
    public void Definition_says_what_it_means_what_to_do_and_where_it_comes_from() => CatalogueCases.SayWhatTheyMean(PouringFindings.All);

    [Fact]
    public void Rule_from_memory_or_practice_alone_never_stops() =>
        CatalogueCases.NeverStopOnMemory(PouringFindings.All, FindingCases.All.SelectMany(one => one.Plan().Findings));
}
