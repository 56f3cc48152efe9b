using CalcService.Engine.Findings;
using CalcService.Engine.Tests.Findings;
using CalcService.Engine.Verifications;

namespace CalcService.Engine.Tests.Verifications;

public sealed class RecordVerificationTests
{
    private const string Place = "/answer/findings/0/message";

    private static readonly Comparison Match = new(VerificationOutcome.Match);

    private static readonly Comparison Differs = new(VerificationOutcome.Differs, "/answer/decision", "Computed again it is another");

    private static readonly Comparison CannotVerify = new(VerificationOutcome.CannotVerify, "/answer/provenance/engine", "Another engine");

    public static TheoryData<Comparison, Decision, int> Compared => new()
    {
        { Match, Decision.Proceed, 0 },
        { Differs, Decision.DoNotProceed, 1 },
        { CannotVerify, Decision.Undetermined, 1 },
        { Match with { OtherWords = [Place, Place] }, Decision.ProceedWithCare, 1 },
        { Match with { UnknownMembers = [Place] }, Decision.ProceedWithCare, 1 },
        { Match with { OtherWords = [Place], UnknownMembers = [Place] }, Decision.ProceedWithCare, 2 },
        // What could not be compared changes nothing by itself, and of an answer that differs no words are told.
        { Match with { NotCompared = [Place] }, Decision.Proceed, 0 },
        { Differs with { OtherWords = [Place], UnknownMembers = [Place] }, Decision.DoNotProceed, 1 },
    };

    [Theory]
    [MemberData(nameof(Compared), DisableDiscoveryEnumeration = true)]
    public void Comparison_gives_the_decision(Comparison compared, Decision decision, int findings)
    {
        var answer = RecordVerification.Of(compared, new Budget(1));
        Assert.Equal((decision, findings), (answer.Decision, answer.Findings.Count));
        CatalogueCases.FillTheirWords($"{compared}", answer.Findings);
    }

    [Fact]
    public void Unchecked_is_what_nobody_knows_and_what_could_not_be_compared() =>
        Assert.Equal(["/a", "/b"], (Match with { UnknownMembers = ["/a"], NotCompared = ["/b"], OtherWords = [Place] }).Unchecked);

    [Fact]
    public void Catalogue_holds_every_definition_of_the_room() =>
        CatalogueCases.AreExactlyCatalogued(VerificationFindings.All, typeof(VerificationFindings));

    [Fact]
    public void Definition_says_what_it_means_what_to_do_and_where_it_comes_from() =>
        CatalogueCases.SayWhatTheyMean(VerificationFindings.All);
}
