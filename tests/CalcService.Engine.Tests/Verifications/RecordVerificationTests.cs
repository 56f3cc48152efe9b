using CalcService.Engine.Findings;
using CalcService.Engine.Tests.Findings;
using CalcService.Engine.Verifications;

namespace CalcService.Engine.Tests.Verifications;

public sealed class RecordVerificationTests
{
    private const string Place = "/answer/findings/0/message";

    [Theory]
    [InlineData(VerificationOutcome.Match, Decision.Proceed)]
    [InlineData(VerificationOutcome.Differs, Decision.DoNotProceed)]
    [InlineData(VerificationOutcome.CannotVerify, Decision.Undetermined)]
    public void Outcome_gives_the_decision(VerificationOutcome outcome, Decision decision) =>
        Says(outcome == VerificationOutcome.Match ? new(outcome) : new(outcome, "/answer/decision", "Computed again it is another"), decision, findings: outcome == VerificationOutcome.Match ? 0 : 1);

    [Fact]
    public void Words_that_differ_are_a_caution() => Says(new(VerificationOutcome.Match) { OtherWords = [Place, Place] }, Decision.ProceedWithCare, findings: 1);

    [Fact]
    public void Members_that_nobody_knows_are_a_caution() => Says(new(VerificationOutcome.Match) { UnknownMembers = [Place] }, Decision.ProceedWithCare, findings: 1);

    [Fact]
    public void Words_that_could_not_be_compared_change_nothing() => Says(new(VerificationOutcome.Match) { NotCompared = [Place] }, Decision.Proceed, findings: 0);

    [Fact]
    public void Answer_that_differs_says_nothing_of_its_words() =>
        Says(new(VerificationOutcome.Differs, "/answer/decision", "Computed again it is another") { OtherWords = [Place], UnknownMembers = [Place] }, Decision.DoNotProceed, findings: 1);

    [Fact]
    public void Unchecked_is_what_nobody_knows_and_what_could_not_be_compared() =>
        Assert.Equal(["/a", "/b"], new Comparison(VerificationOutcome.Match) { UnknownMembers = ["/a"], NotCompared = ["/b"], OtherWords = [Place] }.Unchecked);

    [Fact]
    public void Catalogue_holds_every_definition_of_the_room() => RoomFindings.AreExactlyCatalogued(VerificationFindings.All, typeof(VerificationFindings));

    [Fact]
    public void Definition_says_what_it_means_what_to_do_and_where_it_comes_from() => RoomFindings.SayWhatTheyMean(VerificationFindings.All);

    private static void Says(Comparison compared, Decision decision, int findings)
    {
        var answer = RecordVerification.Of(compared, new Budget(1));
        Assert.Equal((decision, findings), (answer.Decision, answer.Findings.Count));
        RoomFindings.FillTheirWords($"{compared}", answer.Findings);
    }
}
