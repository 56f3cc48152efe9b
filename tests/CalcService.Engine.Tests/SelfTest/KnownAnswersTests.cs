using CalcService.Engine.Provenance;
using CalcService.Engine.SelfTest;

namespace CalcService.Engine.Tests.SelfTest;

public sealed class KnownAnswersTests
{
    [Fact]
    public void Known_answers_all_come_out() =>
        Assert.All(KnownAnswers.Run(),
        answer => Assert.True(answer.Passed, $"{answer.Id}: {answer.Actual} {answer.Unit} is not {answer.Expected}"));

    [Fact]
    public void Known_answer_that_is_wrong_or_no_number_fails()
    {
        var answer = new KnownAnswer("x", "x", 1, .1, 1.2, "1", Source.CommonPractice);
        Assert.False(answer.Passed);
        Assert.False((answer with { Actual = double.NaN }).Passed);
        Assert.True((answer with { Actual = 1.05 }).Passed);
    }
}
