using CalcService.Engine.Audits;
using CalcService.Engine.Curing;
using CalcService.Engine.Findings;
using CalcService.Engine.Matching;
using CalcService.Engine.Pouring;
using CalcService.Engine.Proof;
using CalcService.Engine.Tests.Findings;
using CalcService.Engine.Tests.Sockets;

namespace CalcService.Engine.Tests.Audits;

public sealed class AuditFindingTests
{
    public static TheoryData<int, string> Cases => CatalogueCases.Numbered(AuditCases.All);

    public static TheoryData<int, string> Gaps => CatalogueCases.Numbered(AuditGaps.All);

    [Theory]
    [MemberData(nameof(Cases))]
    public void Record_with_one_thing_wrong_has_that_finding_and_no_other(int index, string what) =>
        CatalogueCases.Raises(AuditCases.All[index], what, AuditCases.All[index].Audit().Findings);

    [Theory]
    [MemberData(nameof(Cases))]
    public void Check_shows_what_the_finding_says(int index, string what)
    {
        var one = AuditCases.All[index];
        if (one.Check.Length == 0)
        {
            // The finding is about how well something is known, not about whether it is in order.
            return;
        }

        var check = one.Audit().Result.Checks.Single(check => check.Id == one.Check);
        // No row forbids what the decision allows.
        var expected = one.Severity switch { Severity.Stop => CheckOutcome.Fail, Severity.Note => CheckOutcome.Pass,
            _ => CheckOutcome.Undetermined };
        Assert.True(expected == check.Outcome, $"{what}: {check}");
    }

    /// <summary>What was missing is never made good by what was not, and is named.</summary>
    [Theory]
    [MemberData(nameof(Gaps))]
    public void Item_that_is_missing_is_named_and_no_check_that_needs_it_passes(int index, string what)
    {
        var one = AuditGaps.All[index];
        var result = one.Audit().Result;
        Assert.Contains(one.Pointer, result.Missing);
        Assert.NotEqual(RecordStanding.Accepted, result.Standing);
        Assert.All(result.Checks.Where(check => check.Missing.Contains(one.Pointer)),
            check => Assert.True(check.Outcome is CheckOutcome.Undetermined or CheckOutcome.Fail, $"{what}: {check}"));
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Finding_fills_every_word_of_its_message(int index, string what) =>
        CatalogueCases.FillTheirWords(what, AuditCases.All[index].Audit().Findings);

    [Theory]
    [MemberData(nameof(Cases))]
    public void Decision_is_that_of_the_worst_finding(int index, string what)
    {
        var audit = AuditCases.All[index].Audit();
        CatalogueCases.DecidesByTheWorst(audit.Decision, what, audit.Findings);
    }

    [Fact]
    public void Cases_raise_every_finding_in_each_of_its_severities() =>
        CatalogueCases.AreAllRaised(AuditFindings.All, [.. AuditCases.All, .. FitCases.OfRopeAndBasket]);

    [Fact]
    public void Catalogue_holds_every_definition_of_the_room_once_in_the_order_of_codes() =>
        CatalogueCases.AreCatalogued(AuditFindings.All, typeof(AuditFindings));

    [Fact]
    public void Code_that_two_rooms_raise_is_one_definition() =>
        CatalogueCases.AreOneDefinition(AuditFindings.All,
        PouringFindings.All.Union(CuringFindings.All).Union(MatchingFindings.All).Union(ProofFindings.All));

    [Fact]
    public void Definition_says_what_it_means_what_to_do_and_where_it_comes_from() => CatalogueCases.SayWhatTheyMean(AuditFindings.All);

    [Fact]
    public void Rule_from_memory_or_practice_alone_never_stops() =>
        CatalogueCases.NeverStopOnMemory(AuditFindings.All, AuditCases.All.SelectMany(one => one.Audit().Findings));
}
