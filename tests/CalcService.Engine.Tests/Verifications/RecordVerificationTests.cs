using CalcService.Engine.Findings;
using CalcService.Engine.Tests.Findings;
using CalcService.Engine.Verifications;

namespace CalcService.Engine.Tests.Verifications;

public sealed class RecordVerificationTests
{
    [Theory]
    [InlineData(VerificationOutcome.Match, Decision.Proceed)]
    [InlineData(VerificationOutcome.Differs, Decision.DoNotProceed)]
    [InlineData(VerificationOutcome.CannotVerify, Decision.Undetermined)]
    public void Outcome_and_decision_are_one_to_one(VerificationOutcome outcome, Decision decision)
    {
        var answer = RecordVerification.Of(new(outcome, "/answer/decision", "Computed again it is another", null, null), new Budget(1));
        Assert.Equal(decision, answer.Decision);
        RoomFindings.FillTheirWords($"{outcome}", answer.Findings);
    }

    [Fact]
    public void Catalogue_holds_every_definition_of_the_room() => RoomFindings.AreExactlyCatalogued(VerificationFindings.All, typeof(VerificationFindings));

    [Fact]
    public void Definition_says_what_it_means_what_to_do_and_where_it_comes_from() => RoomFindings.SayWhatTheyMean(VerificationFindings.All);
}
