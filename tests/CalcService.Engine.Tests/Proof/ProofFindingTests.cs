using CalcService.Engine.Findings;
using CalcService.Engine.Inspection;
using CalcService.Engine.Matching;
using CalcService.Engine.Pouring;
using CalcService.Engine.Proof;
using CalcService.Engine.Reuse;
using CalcService.Engine.Tests.Findings;
using CalcService.Engine.Tests.Sockets;

namespace CalcService.Engine.Tests.Proof;

public sealed class ProofFindingTests
{
    public static TheoryData<int, string> Cases => CatalogueCases.Numbered(ProofCases.All);

    [Fact]
    public void Test_with_nothing_wrong_passes_before_and_after()
    {
        foreach (var input in new[] { GoodProof.Before, GoodProof.After })
        {
            var evaluation = GoodProof.Evaluate(input);
            Assert.Empty(evaluation.Findings);
            Assert.Equal((Decision.Proceed, ProofVerdict.Pass), (evaluation.Decision, evaluation.Result.Verdict));
            Assert.NotEmpty(evaluation.SafetyNotes);
        }
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Test_with_one_thing_wrong_has_that_finding(int index, string what) =>
        CatalogueCases.Raises(ProofCases.All[index], what, ProofCases.All[index].Evaluate().Findings);

    [Theory]
    [MemberData(nameof(Cases))]
    public void Check_shows_what_the_finding_says_and_no_other_check_does(int index, string what)
    {
        var one = ProofCases.All[index];
        var open = one.Evaluate().Result.Checks.Where(check => check.Outcome is CheckOutcome.Fail or CheckOutcome.Undetermined).ToArray();
        if (one.Check is null)
        {
            Assert.True(open.Length == 0, what);
            return;
        }

        var check = open.Single(check => check.Id == one.Check);
        // A seating that can't be compared is a caution about a fact that is missing; another caution leaves its check open too, since a
        // row that fails forbids.
        var isMissing = one.Severity == Severity.Unknown || one.Check == "seating" || one.Code == "facts-not-stated";
        Assert.True((one.Severity == Severity.Stop ? CheckOutcome.Fail : CheckOutcome.Undetermined) == check.Outcome, what);
        Assert.Equal(isMissing ? [one.Pointer] : [], check.Missing);
        if (!isMissing)
        {
            Assert.Equal(one.Code, check.Rule);
        }

        if (isMissing)
        {
            Assert.All(open, other => Assert.Equal([one.Pointer], other.Missing));
        }
        else if (one.Besides.Count == 0)
        {
            Assert.Single(open);
        }
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Row_fails_only_where_the_decision_is_no(int index, string what)
    {
        var evaluation = ProofCases.All[index].Evaluate();
        Assert.True(evaluation.Decision == Decision.DoNotProceed
            || evaluation.Result.Checks.All(check => check.Outcome != CheckOutcome.Fail), what);
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Decision_is_the_worst_severity_and_the_verdict_its_twin(int index, string what)
    {
        var evaluation = ProofCases.All[index].Evaluate();
        CatalogueCases.DecidesByTheWorst(evaluation.Decision, what, evaluation.Findings);
        Assert.Equal(
            evaluation.Decision switch
            {
                Decision.DoNotProceed => ProofVerdict.Reject,
                Decision.Undetermined => ProofVerdict.Hold,
                Decision.ProceedWithCare => ProofVerdict.PassWithCare,
                _ => ProofVerdict.Pass,
            },
            evaluation.Result.Verdict);
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Finding_fills_every_word_of_its_message(int index, string what) =>
        CatalogueCases.FillTheirWords(what, ProofCases.All[index].Evaluate().Findings);

    [Fact]
    public void Cases_raise_every_finding_in_each_of_its_severities() =>
        CatalogueCases.AreAllRaised(ProofFindings.All, [.. ProofCases.All, .. FitCases.OfRopeAndBasket]);

    [Fact]
    public void Catalogue_holds_every_definition_of_the_room_once_in_the_order_of_codes() =>
        CatalogueCases.AreCatalogued(ProofFindings.All, typeof(ProofFindings));

    [Fact]
    public void Code_that_two_rooms_raise_is_one_definition() =>
        CatalogueCases.AreOneDefinition(ProofFindings.All,
        PouringFindings.All.Union(MatchingFindings.All).Union(ReuseFindings.All).Union(InspectionFindings.All));

    [Fact]
    public void Definition_says_what_it_means_what_to_do_and_where_it_comes_from() => CatalogueCases.SayWhatTheyMean(ProofFindings.All);

    [Fact]
    public void Rule_from_memory_or_practice_alone_never_stops() =>
        CatalogueCases.NeverStopOnMemory(ProofFindings.All, ProofCases.All.SelectMany(one => one.Evaluate().Findings));
}
