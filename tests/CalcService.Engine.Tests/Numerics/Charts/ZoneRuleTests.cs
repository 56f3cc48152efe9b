using CalcService.Engine.Numerics.Charts;
using CsCheck;

namespace CalcService.Engine.Tests.Numerics.Charts;

/// <summary>
/// The rules as NIST/SEMATECH 6.3.2 words them, each with a pattern that just is one and one that just isn't. Centre 0, sigma 1.
/// </summary>
public sealed class ZoneRuleTests
{
    public static TheoryData<string, int, double[]> Patterns => new()
    {
        { "one-beyond-three", 1, [0, 3.1] },
        { "one-beyond-three", 1, [0, -3.1] },
        { "two-of-three-beyond-two", 2, [2.1, 0, 2.1] },
        { "two-of-three-beyond-two", 1, [-2.1, -2.1] },
        { "four-of-five-beyond-one", 4, [1.1, 1.1, .5, 1.1, 1.1] },
        { "eight-on-one-side", 7, [.1, .2, .1, .2, .1, .2, .1, .2] },
        { "six-in-a-trend", 5, [-.3, -.2, -.1, .1, .2, .3] },
        { "fourteen-up-and-down", 13, [.1, -.1, .1, -.1, .1, -.1, .1, -.1, .1, -.1, .1, -.1, .1, -.1] },
    };

    [Theory]
    [MemberData(nameof(Patterns))]
    public void Pattern_signals_its_rule_where_it_is_complete(string rule, int index, double[] values) =>
        Assert.Equal([new ChartSignal(rule, index)], ZoneRules.Find(values, 0, 1));

    public static TheoryData<double[]> Quiet => new()
    {
        { [0, 3] },
        { [2.1, 0, 0, 2.1] },
        { [2.1, 0, -2.1] },
        { [1.1, 1.1, .5, .5, 1.1, 1.1] },
        { [.1, .2, .1, .2, .1, .2, .1, 0, .2] },
        { [-.3, -.2, -.1, .1, .2, .2] },
        { [.1, -.1, .1, -.1, .1, -.1, .1, -.1, .1, -.1, .1, -.1, .1] },
    };

    [Theory]
    [MemberData(nameof(Quiet))]
    public void Pattern_that_is_not_complete_signals_nothing(double[] values) => Assert.Empty(ZoneRules.Find(values, 0, 1));

    /// <summary>Every signal hangs on the last few values only, so a chart that goes on never takes one back.</summary>
    [Fact]
    public void Signal_stays_where_it_was_when_more_values_come() => Gen.Double[-4, 4].Array[2, 40].Sample(values =>
    {
        var some = values[..(values.Length / 2)];
        Assert.Equal(ZoneRules.Find(some, 0, 1), ZoneRules.Find(values, 0, 1).Where(signal => signal.Index < some.Length));
    });
}
