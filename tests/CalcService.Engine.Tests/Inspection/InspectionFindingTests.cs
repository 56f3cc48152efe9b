using CalcService.Engine.Findings;
using CalcService.Engine.Inspection;
using CalcService.Engine.Matching;
using CalcService.Engine.Pouring;
using CalcService.Engine.Reuse;
using CalcService.Engine.Rules;
using CalcService.Engine.Tests.Findings;

namespace CalcService.Engine.Tests.Inspection;

public sealed class InspectionFindingTests
{
    public static TheoryData<int, string> Cases => CatalogueCases.Numbered(InspectionCases.All);

    public static TheoryData<string> RuleSets => [.. InspectionRules.RuleSets];

    [Theory]
    [MemberData(nameof(RuleSets))]
    public void End_with_nothing_wrong_serves_under_every_rule_set(string ruleSet)
    {
        var inspection = GoodInspection.Inspect(GoodInspection.Under(ruleSet));
        Assert.Empty(inspection.Findings);
        Assert.Equal(Decision.Proceed, inspection.Decision);
        Assert.Equal(ServiceDisposition.Serve, inspection.Result.Disposition);
        Assert.Null(inspection.Result.CutFromM);
        Assert.NotEmpty(inspection.SafetyNotes);
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void End_with_one_thing_wrong_has_that_finding(int index, string what) =>
        CatalogueCases.Raises(InspectionCases.All[index], what, InspectionCases.All[index].Inspect().Findings);

    [Theory]
    [MemberData(nameof(Cases))]
    public void Checks_show_what_the_finding_says_and_nothing_else(int index, string what)
    {
        var one = InspectionCases.All[index];
        var open = one.Inspect().Result.Checks.Where(check => check.Outcome is CheckOutcome.Fail or CheckOutcome.Undetermined).ToArray();
        var shown = string.Join(", ", open.Select(check => $"{check.Id} {Word(check)}"));
        Assert.True(one.Open == shown, $"{what}: {shown}");
        Assert.All(open, check => Assert.Equal(
            Word(check) switch { "elsewhere" => ["/ruleSet"], "sheet" => ["/compound"], "open" => [one.Pointer], _ => [] }, check.Missing));
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Decision_is_the_worst_severity_and_the_disposition_that_of_the_findings_on_the_end(int index, string what)
    {
        var inspection = InspectionCases.All[index].Inspect();
        CatalogueCases.DecidesByTheWorst(inspection.Decision, what, inspection.Findings);
        string[] beside = ["/inspection/drumTurnsLeft", "/inspection/drumDiameter", "/inspection/lengthLeft"];
        var onTheEnd = inspection.Findings.Where(finding => finding.Definition.Code != "compound-demonstration"
            && !beside.Contains(finding.Pointer)).Select(finding => finding.Severity).ToArray();
        Assert.Equal(
            (onTheEnd.Length == 0 ? Severity.Note : onTheEnd.Max()) switch
            {
                Severity.Stop => ServiceDisposition.Withdraw,
                Severity.Unknown => ServiceDisposition.Hold,
                Severity.Caution => ServiceDisposition.ServeWithCare,
                _ => ServiceDisposition.Serve,
            },
            inspection.Result.Disposition);
    }

    /// <summary>
    /// A sound end is sound where the drum has too few turns or the compound is invented; what is then done is another matter.
    /// </summary>
    [Fact]
    public void Sound_end_with_too_few_turns_on_the_drum_serves_and_stops_the_work()
    {
        var inspection = GoodInspection.Inspect(GoodInspection.Under(MatchingRules.MineHoist) with { DrumTurnsLeft = 2 });
        Assert.Equal((Decision.DoNotProceed, ServiceDisposition.Serve), (inspection.Decision, inspection.Result.Disposition));
    }

    /// <summary>Under a word that says go nothing may tell anybody to take the end out.</summary>
    [Fact]
    public void Finding_that_lets_the_end_serve_tells_nobody_to_take_it_out() => Assert.All(
        InspectionFindings.All.Where(definition => definition.Severities.Any(severity => severity <= Severity.Caution)),
        definition => Assert.DoesNotMatch("out of (service|use)|withdraw|replace|not used again", definition.Message + definition.Action));

    [Theory]
    [MemberData(nameof(Cases))]
    public void Finding_fills_every_word_of_its_message(int index, string what) =>
        CatalogueCases.FillTheirWords(what, InspectionCases.All[index].Inspect().Findings);

    private static string Word(InspectionCheck check) => check.Outcome == CheckOutcome.Fail ? check.Severity.ToString()
        : check.Missing is ["/ruleSet"] ? "elsewhere" : check.Missing is ["/compound"] ? "sheet" : "open";

    [Fact]
    public void Cases_raise_every_finding_in_each_of_its_severities() =>
        CatalogueCases.AreAllRaised(InspectionFindings.All, InspectionCases.All);

    [Fact]
    public void Catalogue_holds_every_definition_of_the_room_once_in_the_order_of_codes() =>
        CatalogueCases.AreCatalogued(InspectionFindings.All, typeof(InspectionFindings));

    [Fact]
    public void Code_that_two_rooms_raise_is_one_definition() =>
        CatalogueCases.AreOneDefinition(InspectionFindings.All, PouringFindings.All.Union(MatchingFindings.All).Union(ReuseFindings.All));

    [Fact]
    public void Definition_says_what_it_means_what_to_do_and_where_it_comes_from() =>
        CatalogueCases.SayWhatTheyMean(InspectionFindings.All);

    [Fact]
    public void Rule_from_memory_or_practice_alone_never_stops() =>
        CatalogueCases.NeverStopOnMemory(InspectionFindings.All, InspectionCases.All.SelectMany(one => one.Inspect().Findings));
}
