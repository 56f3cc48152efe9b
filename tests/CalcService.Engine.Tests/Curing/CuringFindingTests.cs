using CalcService.Engine.Compounds;
using CalcService.Engine.Cones.Heat;
using CalcService.Engine.Curing;
using CalcService.Engine.Findings;
using CalcService.Engine.Releases;
using CalcService.Engine.Tests.Findings;
using CalcService.Engine.Tests.Sockets;

namespace CalcService.Engine.Tests.Curing;

public sealed class CuringFindingTests
{
    public static TheoryData<int, string> Cases => CatalogueCases.Numbered(CureFindingCases.All);

    [Fact]
    public void Cure_with_nothing_wrong_proceeds_without_a_finding()
    {
        var schedule = GoodCure.Schedule(GoodCure.Input);
        Assert.Empty(schedule.Findings);
        Assert.Empty(schedule.Assumptions);
        Assert.Equal(Decision.Proceed, schedule.Decision);
        Assert.NotEmpty(schedule.SafetyNotes);
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Cure_with_one_thing_wrong_has_that_finding(int index, string what) =>
        CatalogueCases.Raises(CureFindingCases.All[index], what, CureFindingCases.All[index].Schedule().Findings);

    [Theory]
    [MemberData(nameof(Cases))]
    public void Decision_is_the_worst_severity(int index, string what)
    {
        var outcome = CureFindingCases.All[index].Schedule();
        CatalogueCases.DecidesByTheWorst(outcome.Decision, what, outcome.Findings);
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Finding_fills_every_word_of_its_message(int index, string what) =>
        CatalogueCases.FillTheirWords(what, CureFindingCases.All[index].Schedule().Findings);

    [Fact]
    public void Cases_raise_every_finding_in_each_of_its_severities() =>
        CatalogueCases.AreAllRaised(CuringFindings.All, [.. CureFindingCases.All, .. FitCases.All]);

    [Fact]
    public void Catalogue_holds_every_definition_once_in_the_order_of_codes() => 
        CatalogueCases.AreCatalogued(CuringFindings.All, typeof(CuringFindings), typeof(CompoundFindings), typeof(ReleaseFindings),
        typeof(HeatFindings));

    [Fact]
    public void Definition_says_what_it_means_what_to_do_and_where_it_comes_from() => CatalogueCases.SayWhatTheyMean(CuringFindings.All);

    [Fact]
    public void Rule_from_memory_or_practice_alone_never_stops() =>
        CatalogueCases.NeverStopOnMemory(CuringFindings.All, CureFindingCases.All.SelectMany(one => one.Schedule().Findings));
}
