using CalcService.Api.Hosting;

namespace CalcService.Api.Tests.Hosting;

public sealed class CalculationTimeTests
{
    [Fact]
    public void Time_for_a_calculation_is_half_a_minute_where_nobody_sets_it() => Assert.Equal(TimeSpan.FromSeconds(30), CalculationTime.From(null).Longest);

    [Theory]
    [InlineData("1", 1)]
    [InlineData("3600", 3600)]
    public void Time_for_a_calculation_can_be_set(string setting, int seconds) => Assert.Equal(TimeSpan.FromSeconds(seconds), CalculationTime.From(setting).Longest);

    [Theory]
    [InlineData("")]
    [InlineData("0")]
    [InlineData("3601")]
    [InlineData("-5")]
    [InlineData("1.5")]
    [InlineData("a minute")]
    public void Setting_that_is_no_time_refuses_the_start_and_says_which(string setting) =>
        Assert.Contains(CalculationTime.Key, Assert.Throws<StartRefusedException>(() => CalculationTime.From(setting)).Message, StringComparison.Ordinal);
}
