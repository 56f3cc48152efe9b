using System.Globalization;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Tests.Pouring;

public sealed class DeterminismTests
{
    public static TheoryData<string> Cultures => ["", "de-DE", "ar-SA", "tr-TR"];

    [Theory]
    [MemberData(nameof(Cultures))]
    public void Culture_changes_nothing(string name)
    {
        var expected = In(CultureInfo.InvariantCulture, Everything);
        Assert.Equal(expected, In(new CultureInfo(name), Everything));
        Assert.Contains("2026-03-11", expected, StringComparison.Ordinal);
    }

    [Fact]
    public void Cultures_of_the_test_differ_where_a_careless_engine_would_show_it()
    {
        Assert.Equal("1,5", In(new CultureInfo("de-DE"), () => $"{1.5}"));
        Assert.NotEqual("2026-03-11",
            In(new CultureInfo("ar-SA"), () => new DateTime(2026, 3, 11).ToString("yyyy-MM-dd", CultureInfo.CurrentCulture)));
        Assert.NotEqual("I", In(new CultureInfo("tr-TR"), () => "i".ToUpper(CultureInfo.CurrentCulture)));
    }

    [Fact]
    public void Same_question_has_the_same_answer_again_and_side_by_side()
    {
        var expected = Everything();
        Assert.All(Enumerable.Range(0, 16).AsParallel().Select(_ => Everything()).ToArray(), answer => Assert.Equal(expected, answer));
    }

    [Fact]
    public void Trace_changes_no_number()
    {
        foreach (var one in FindingCases.All)
        {
            var input = one.Change(GoodPour.Input);
            var traced = GoodPour.Plan(input, one.Steps, trace: true);
            Assert.NotEmpty(traced.Trace);
            Assert.Equal(PlanText.Of(GoodPour.Plan(input, one.Steps)), PlanText.Of(traced with { Trace = [] }));
        }
    }

    private static string Everything() =>
        Editions.Known.Current.Digest() + string.Join('\n', FindingCases.All.Select(one =>
            PlanText.Of(GoodPour.Plan(one.Change(GoodPour.Input), one.Steps, trace: true))));

    private static string In(CultureInfo culture, Func<string> work)
    {
        var (before, beforeUi) = (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture);
        try
        {
            (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = (culture, culture);
            return work();
        }
        finally
        {
            (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = (before, beforeUi);
        }
    }
}
